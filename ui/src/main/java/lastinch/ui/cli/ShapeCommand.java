package lastinch.ui.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.catalogue.CatalogueMaterials;
import lastinch.cases.format.Problems;
import lastinch.cases.mesh.Mesh;
import lastinch.cases.mesh.MeshFile;
import lastinch.cases.mesh.MeshUnit;
import lastinch.cases.mesh.ModelLook;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.DisplayUnits;
import lastinch.cases.units.Quantity;
import lastinch.cases.units.QuantityText;
import lastinch.solver.geometry.solid.PartOrientation;
import lastinch.solver.geometry.solid.UndercutAnalysis;
import lastinch.solver.material.Alloy;
import lastinch.ui.chart.ChartFiles;
import lastinch.ui.cli.draft.UnitQuestion;
import lastinch.ui.json.ProblemsJson;
import lastinch.ui.json.ShapeJson;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;
import lastinch.ui.words.ShapeText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lastinch shape FILE}. */
@Command(name = "shape")
final class ShapeCommand extends AnsweringCommand {
  private static final String OTHER = "other";

  @Parameters(paramLabel = "FILE", descriptionKey = "file")
  private Path file;

  @Option(names = "--unit", paramLabel = "mm|cm|m|in", descriptionKey = "unit")
  private Optional<String> unit = Optional.empty();

  @Option(names = "--up", paramLabel = "z|-z|y|-y|x|-x", descriptionKey = "up")
  private Optional<String> up = Optional.empty();

  @Option(names = "--thick-end", paramLabel = "other|-x|x...", descriptionKey = "end")
  private Optional<String> end = Optional.empty();

  @Option(names = "--parting-at", paramLabel = "HEIGHT", descriptionKey = "parting")
  private Optional<String> parting = Optional.empty();

  @Option(names = "--square", paramLabel = "SIZE", descriptionKey = "square")
  private Optional<String> cell = Optional.empty();

  @Option(names = "--alloy", paramLabel = "NAME", descriptionKey = "alloy")
  private String alloy = "tin bronze";

  ShapeCommand(Console surroundings, Workshop workshop, Sentences sentences) {
    super(surroundings, workshop, sentences);
  }

  @Override
  public Integer call() {
    Optional<DisplayUnits> chosen = DisplayUnits.named(wanted.units());
    if (chosen.isEmpty()) {
      return refuse("cli.units", "word", wanted.units());
    }
    Optional<List<String>> wrong = wrongWord();
    if (wrong.isPresent()) {
      return refuse(wrong.get());
    }
    Workshop.Shelf shelf = workshop.shelf(wanted.materials());
    Optional<Alloy> metal = new CatalogueMaterials(shelf.catalogue()).alloy(alloy);
    if (metal.isEmpty()) {
      return refuse("material.unknown", "name", alloy, "command", "alloys");
    }
    Problems problems = new Problems();
    Optional<ModelLook> look = look(problems);
    if (look.isEmpty()) {
      return problems.isEmpty() ? Exit.BAD_INPUT : bad(problems);
    }
    Figures figures = new Figures(chosen.get());
    if (look.get().isPartedOutside()) {
      String height = figures.calipers(look.get().pose().height());
      return refuse("shape.wrong.above", "word", parting.orElse(""), "height", height);
    }
    try {
      return answer(look.get(), metal.get(), figures);
    } catch (OutFolder.Unwritable e) {
      return refuse(e.lines(problemText));
    }
  }

  private Optional<List<String>> wrongWord() {
    if (unit.isPresent() && MeshUnit.of(unit.get()).isEmpty()) {
      return Optional.of(problemText.sentence("shape.wrong.unit", "word", unit.get()));
    }
    if (up.isPresent() && !PartOrientation.DIRECTIONS.contains(up.get())) {
      return Optional.of(problemText.sentence("shape.wrong.up", "word", up.get()));
    }
    if (end.isPresent()
        && !end.get().equals(OTHER)
        && !PartOrientation.DIRECTIONS.contains(end.get())) {
      return Optional.of(problemText.sentence("shape.wrong.end", "word", end.get()));
    }
    if (parting.isPresent() && partingHeight().isEmpty()) {
      return Optional.of(problemText.sentence("shape.wrong.parting", "word", parting.get()));
    }
    if (cell.isPresent() && cellSize().isEmpty()) {
      return Optional.of(problemText.sentence("shape.wrong.cell", "word", cell.get()));
    }
    return Optional.empty();
  }

  private OptionalDouble cellSize() {
    return length(cell, 1e-4, 0.05);
  }

  private OptionalDouble partingHeight() {
    return length(parting, 0.0, 0.5);
  }

  /** A typed length with its unit, when it lies within a range [m]. */
  private static OptionalDouble length(Optional<String> typed, double least, double most) {
    Optional<Quantity> value =
        typed.flatMap(t -> QuantityText.quantity(t, Dimension.LENGTH).value());
    double si = value.map(Quantity::si).orElse(-1.0);
    return si >= least && si <= most ? OptionalDouble.of(si) : OptionalDouble.empty();
  }

  private Optional<ModelLook> look(Problems problems) {
    Optional<Mesh> mesh = MeshFile.read(file, problems);
    if (mesh.isEmpty()) {
      return Optional.empty();
    }
    Optional<MeshUnit> of = mesh.get().unit();
    Optional<MeshUnit> typed = unit.flatMap(MeshUnit::of);
    if (of.isPresent() && typed.isPresent() && !of.equals(typed)) {
      surroundings.complain(problemText.sentence("shape.wrong.other", "unit", of.get().word()));
      return Optional.empty();
    }
    Optional<MeshUnit> taken = of.or(() -> typed).or(() -> asked(mesh.get()));
    if (taken.isEmpty()) {
      return Optional.empty();
    }
    return ModelLook.of(
        mesh.get(),
        taken.get(),
        1.0,
        new PartOrientation.Wish(
            up,
            end.filter(e -> !e.equals(OTHER)),
            end.filter(OTHER::equals).isPresent(),
            partingHeight()),
        cellSize(),
        file.toString(),
        problems);
  }

  /** Asks for the unit at a terminal; elsewhere says which word is missing. */
  private Optional<MeshUnit> asked(Mesh mesh) {
    UnitQuestion question = new UnitQuestion(surroundings, problemText, wanted.json());
    if (!question.mayAsk()) {
      surroundings.complain(
          problemText.sentence(
              "shape.unit.missing",
              "size",
              UnitQuestion.sizes(mesh),
              "likely",
              UnitQuestion.likely(mesh)));
    }
    return question.of(file, mesh);
  }

  private int answer(ModelLook look, Alloy metal, Figures figures) {
    ShapeText text = new ShapeText(sentences, figures);
    UndercutAnalysis locking = look.locking();
    List<String> full = text.full(file.toString(), look, locking, metal);
    String answer =
        ShapeJson.of(file.toString(), look, locking, metal, text.matters(look, locking));
    List<String> lines =
        wanted.quiet() ? problemText.sentence("shape.only", "text", text.headline(look)) : full;
    Optional<OutFolder> folder = wanted.out().map(OutFolder::prepare);
    if (wanted.json()) {
      surroundings.out().println(answer);
    } else {
      surroundings.print(lines);
    }
    if (folder.isPresent()) {
      try (OutFolder open = folder.get()) {
        write(open, look, figures, answer, full);
      }
    }
    if (surroundings.out().checkError()) {
      return refuse("cli.cannot.print");
    }
    return look.isTorn() ? Exit.BAD_INPUT : Exit.SOLVED;
  }

  private void write(
      OutFolder folder, ModelLook look, Figures figures, String answer, List<String> lines) {
    add(
        folder,
        lines,
        answer,
        ChartFiles.ofModel(file.toString(), look, sentences, figures),
        () -> false);
    finish(folder);
  }

  private int bad(Problems problems) {
    if (wanted.json()) {
      surroundings
          .out()
          .println(ProblemsJson.of(sentences, file.toString(), problems.errors(), List.of()));
      return Exit.BAD_INPUT;
    }
    return refuse(problemText.problems(file.toString(), problems.errors()));
  }
}
