package lastinch.cases.plan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastinch.cases.format.CaseText;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.format.SourceText;
import lastinch.cases.format.Span;
import lastinch.cases.schema.PartCheck;
import lastinch.cases.schema.Values;
import lastinch.cases.schema.Vocabulary;

/**
 * A case file with all the files it is based on, each checked by itself.
 *
 * @param links the file itself first, what it is based on after it
 */
record Chain(List<Link> links) {
  private static final int MOST_LINKS = 8;

  Chain {
    links = List.copyOf(links);
  }

  /** One file. */
  record Link(SourceText source, Node.Entries map) {}

  /** Reads a file and all it is based on; empty when the file itself cannot be judged. */
  static Optional<Chain> read(Path file, PartCheck check, Problems problems) {
    List<Link> links = new ArrayList<>();
    List<Path> seen = new ArrayList<>();
    Optional<Path> next = Optional.of(file);
    Optional<Span> asked = Optional.empty();
    while (next.isPresent()) {
      Path path = next.get();
      seen.add(path.toAbsolutePath().normalize());
      Optional<Link> link = link(path, asked, check, problems);
      if (link.isEmpty()) {
        break;
      }
      links.add(link.get());
      Optional<Node> base = link.get().map().get("based on");
      asked = base.map(Node::span);
      next = base.flatMap(n -> Values.text(n, new Problems())).flatMap(t -> Beside.of(path, t));
      if (next.isPresent() && !goesOn(next.get(), seen, asked.orElseThrow(), problems)) {
        break;
      }
    }
    return links.isEmpty() ? Optional.empty() : Optional.of(new Chain(links));
  }

  private static boolean goesOn(Path next, List<Path> seen, Span asked, Problems problems) {
    int before = seen.indexOf(next.toAbsolutePath().normalize());
    if (before >= 0) {
      List<String> names = new ArrayList<>();
      seen.subList(before, seen.size()).forEach(p -> names.add(p.getFileName().toString()));
      names.add(next.getFileName().toString());
      problems.add(asked, "wrong.theseFilesBasedEach", String.join(", ", names));
      return false;
    }
    if (seen.size() >= MOST_LINKS) {
      problems.add(asked, "wrong.moreThan8Files");
      return false;
    }
    return true;
  }

  private static Optional<Link> link(
      Path path, Optional<Span> asked, PartCheck check, Problems problems) {
    Optional<SourceText> source =
        asked.isPresent() ? Beside.read(path, asked.get(), problems) : Beside.read(path, problems);
    if (source.isEmpty()) {
      return Optional.empty();
    }
    Optional<Node.Entries> map = CaseText.parse(source.get(), problems);
    if (map.isEmpty() || !Format.accepts(map.get(), "case", Vocabulary.CASE_FORMAT, problems)) {
      return Optional.empty();
    }
    return Optional.of(new Link(source.get(), check.check(Vocabulary.CASE, map.get())));
  }

  /** Whether everything it is based on could be read. */
  boolean isWhole() {
    return links.get(links.size() - 1).map().get("based on").isEmpty();
  }

  /** The file that was asked for. */
  Link top() {
    return links.get(0);
  }
}
