package lastinch.solver.casting;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The piece to be cast, as the cavity it leaves in the mould.
 *
 * @param limbs at least one
 * @param boss thick block before the first station of the first limb, if any
 * @param model the drawn shape that the limbs were cut from, if there is one
 */
public record Piece(List<Limb> limbs, Optional<Boss> boss, Optional<Model> model) {
  public Piece {
    Objects.requireNonNull(boss, "boss");
    Objects.requireNonNull(model, "model");
    limbs = List.copyOf(limbs);
    if (limbs.isEmpty()) {
      throw new IllegalArgumentException("a piece needs at least one limb");
    }
  }

  /** A piece that was measured with calipers. */
  public Piece(List<Limb> limbs, Optional<Boss> boss) {
    this(limbs, boss, Optional.empty());
  }

  /** The stations of every limb changed; what was drawn no longer fits them. */
  public Piece withStations(UnaryOperator<List<Station>> change) {
    return new Piece(
        limbs.stream().map(l -> l.withStations(change.apply(l.stations()))).toList(), boss);
  }
}
