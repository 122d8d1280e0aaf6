package lastinch.solver.levers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lastinch.solver.casting.PourCase;

/** The one list of levers. */
public final class Levers {
  /** All entries, in the order in which a caster thinks of them. */
  public static final List<LeverEntry> ALL =
      Stream.of(
              PourLevers.ENTRIES,
              MouldLevers.ENTRIES,
              GatingLevers.ENTRIES,
              GateLevers.ENTRIES,
              RunnerLevers.ENTRIES,
              PieceLevers.ENTRIES)
          .flatMap(List::stream)
          .toList();

  private Levers() {}

  /** Levers that a job has. */
  public static List<Lever> of(PourCase job, Owned owned) {
    List<Lever> levers = new ArrayList<>();
    for (LeverEntry entry : ALL) {
      levers.addAll(entry.maker().apply(job, owned));
    }
    return List.copyOf(levers);
  }

  /**
   * Those of a list that leave the piece as it is: where its model is poured as it was drawn,
   * stations that are thicker or thinner change nothing.
   */
  public static List<Lever> besidesThePiece(List<Lever> levers) {
    List<String> piece = PieceLevers.ENTRIES.stream().map(LeverEntry::key).toList();
    return levers.stream().filter(l -> !piece.contains(l.key())).toList();
  }

  /**
   * The lever of a name and a part that a job has; the first of that name when no part is asked.
   */
  public static Optional<Lever> find(List<Lever> levers, String key, String part) {
    return levers.stream()
        .filter(l -> l.key().equals(key) && (part.isEmpty() || l.part().equals(part)))
        .findFirst();
  }
}
