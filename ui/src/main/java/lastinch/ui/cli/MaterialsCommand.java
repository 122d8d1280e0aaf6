package lastinch.ui.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.MaterialSheet;
import lastinch.cases.units.DisplayUnits;
import lastinch.ui.json.MaterialJson;
import lastinch.ui.json.ProblemsJson;
import lastinch.ui.words.Figures;
import lastinch.ui.words.MaterialText;
import lastinch.ui.words.ProblemText;
import lastinch.ui.words.Sentences;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lastinch alloys} and {@code lastinch moulds}: all of them, or {@code show NAME}. */
@Command
final class MaterialsCommand implements Callable<Integer> {
  private static final String SHOW = "show";

  private final Console surroundings;
  private final Workshop workshop;
  private final Sentences sentences;
  private final ProblemText problemText;
  private final Kind kind;

  @Parameters(paramLabel = "show NAME", arity = "0..*", descriptionKey = "show")
  private List<String> words = new ArrayList<>();

  @Option(names = "--json", descriptionKey = "json")
  private boolean json;

  @Option(names = "--units", paramLabel = "mm|in", descriptionKey = "units")
  private String units = "mm";

  @Option(names = "--materials", paramLabel = "FILE", descriptionKey = "materials")
  private Optional<Path> materials = Optional.empty();

  /** What is listed. */
  enum Kind {
    ALLOYS("alloys") {
      @Override
      List<MaterialSheet> all(Catalogue catalogue) {
        return catalogue.alloyNames().stream().map(catalogue::alloySheet).toList();
      }

      @Override
      Optional<MaterialSheet> find(Catalogue catalogue, String name) {
        return catalogue.findAlloy(name).map(catalogue::alloySheet);
      }

      @Override
      List<String> nearest(Catalogue catalogue, String name) {
        return catalogue.nearestAlloys(name);
      }
    },
    MOULDS("moulds") {
      @Override
      List<MaterialSheet> all(Catalogue catalogue) {
        List<MaterialSheet> sheets = new ArrayList<>();
        catalogue.mediumNames().forEach(n -> sheets.add(catalogue.mediumSheet(n)));
        catalogue.steelNames().forEach(n -> sheets.add(catalogue.steelSheet(n)));
        sheets.add(catalogue.commonSheet());
        return sheets;
      }

      @Override
      Optional<MaterialSheet> find(Catalogue catalogue, String name) {
        if (catalogue.commonSheet().name().equalsIgnoreCase(name)) {
          return Optional.of(catalogue.commonSheet());
        }
        return catalogue
            .findMedium(name)
            .map(catalogue::mediumSheet)
            .or(() -> catalogue.findSteel(name).map(catalogue::steelSheet));
      }

      @Override
      List<String> nearest(Catalogue catalogue, String name) {
        List<String> media = catalogue.nearestMedia(name);
        return media.isEmpty() ? catalogue.nearestSteels(name) : media;
      }
    };

    private final String command;

    Kind(String command) {
      this.command = command;
    }

    String command() {
      return command;
    }

    abstract List<MaterialSheet> all(Catalogue catalogue);

    abstract Optional<MaterialSheet> find(Catalogue catalogue, String name);

    abstract List<String> nearest(Catalogue catalogue, String name);
  }

  MaterialsCommand(Console surroundings, Workshop workshop, Sentences sentences, Kind kind) {
    this.surroundings = surroundings;
    this.workshop = workshop;
    this.sentences = sentences;
    this.problemText = new ProblemText(sentences);
    this.kind = kind;
  }

  @Override
  public Integer call() {
    Optional<DisplayUnits> chosen = DisplayUnits.named(units);
    if (chosen.isEmpty()) {
      return refuse(problemText.sentence("cli.units", "word", units));
    }
    Workshop.Shelf shelf = workshop.shelf(materials);
    if (!shelf.problems().isEmpty()) {
      String file = materials.map(Path::toString).orElse("");
      if (json) {
        surroundings.out().println(ProblemsJson.of(sentences, file, shelf.problems(), List.of()));
        return Exit.BAD_INPUT;
      }
      return refuse(problemText.problems(file, shelf.problems()));
    }
    MaterialText text = new MaterialText(sentences, new Figures(chosen.get()));
    int code = words.isEmpty() ? list(shelf.catalogue(), text) : show(shelf.catalogue(), text);
    return surroundings.out().checkError()
        ? refuse(problemText.sentence("cli.cannot.print"))
        : code;
  }

  private int list(Catalogue catalogue, MaterialText text) {
    List<MaterialSheet> all = kind.all(catalogue);
    if (json) {
      surroundings
          .out()
          .println(MaterialJson.names(all.stream().map(MaterialSheet::name).toList()));
    } else {
      surroundings.print(text.list(all, kind.command()));
    }
    return Exit.SOLVED;
  }

  private int show(Catalogue catalogue, MaterialText text) {
    boolean asked = words.get(0).equals(SHOW);
    List<String> parts = asked ? words.subList(1, words.size()) : words;
    if (parts.isEmpty()) {
      return refuse(problemText.sentence("cli.missing.NAME", "command", kind.command()));
    }
    String name = String.join(" ", parts);
    Optional<MaterialSheet> sheet = kind.find(catalogue, name);
    if (sheet.isEmpty()) {
      List<String> near = kind.nearest(catalogue, name);
      return refuse(
          near.isEmpty()
              ? problemText.sentence("material.unknown", "name", name, "command", kind.command())
              : problemText.sentence(
                  "material.unknown.nearest", "name", name, "nearest", String.join(", ", near)));
    }
    if (json) {
      surroundings.out().println(MaterialJson.sheet(sheet.get()));
    } else {
      surroundings.print(text.sheet(sheet.get()));
    }
    return Exit.SOLVED;
  }

  private int refuse(List<String> lines) {
    surroundings.complain(lines);
    return Exit.BAD_INPUT;
  }
}
