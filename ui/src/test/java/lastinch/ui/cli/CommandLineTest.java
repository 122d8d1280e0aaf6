package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import lastinch.cases.catalogue.Catalogue;
import lastinch.cases.catalogue.MaterialSheet;
import lastinch.cases.format.Problem;
import lastinch.cases.plan.Plan;
import lastinch.cases.plan.ReadResult;
import lastinch.cases.plan.Want;
import lastinch.cases.units.Saying;
import lastinch.solver.casting.Checking;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Need;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.PourResult;
import lastinch.solver.run.UnsupportedCase;
import lastinch.ui.HandMade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What each command prints, writes and ends with. */
class CommandLineTest {
  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  /** A workshop whose answers are made beforehand. */
  private static final class Ready implements Workshop {
    private final ReadResult read;
    private final Supplier<PourResult> result;

    Ready(ReadResult read, Supplier<PourResult> result) {
      this.read = read;
      this.result = result;
    }

    @Override
    public ReadResult read(Path file, Optional<Path> ownMaterials) {
      return read;
    }

    @Override
    public Shelf shelf(Optional<Path> ownMaterials) {
      return new Shop().shelf(ownMaterials);
    }

    @Override
    public PourResult pour(PourCase pourCase, RunObserver observer, BooleanSupplier stop) {
      observer.onStep(0.1, 0.5);
      return result.get();
    }
  }

  private static ReadResult sound() {
    return new ReadResult.Sound(
        new Plan(
            "Tail feather",
            Path.of("feather.yaml"),
            "0f".repeat(32),
            HandMade.pourCase(Checking.NONE),
            Want.NOTHING,
            List.of(),
            "bonded sand",
            Map.of(),
            Optional.empty()),
        List.of(
            new Problem(
                "feather.yaml",
                3,
                5,
                "width",
                Saying.of("wrong.asWritten", "width is read as wide"),
                Optional.empty())));
  }

  private static ReadResult unsound() {
    return new ReadResult.Unsound(
        List.of(
            new Problem(
                "feather.yaml",
                12,
                20,
                "reads: 1150 degF",
                Saying.of("wrong.solidBelow", "Tin bronze", "831 degC (1528 degF)"),
                Optional.of("degC")),
            new Problem(
                "feather.yaml",
                17,
                5,
                "tickness: 4.8 mm",
                Saying.of("wrong.unknownWord"),
                Optional.of("thick")),
            new Problem(
                "base.yaml",
                23,
                14,
                "wide: 20",
                Saying.of("wrong.asWritten", "Millimetres or inches? Write 20 mm or 20 in."),
                Optional.empty())),
        List.of());
  }

  private int run(Workshop workshop, String... args) {
    return run(new PrintStream(out, true, StandardCharsets.US_ASCII), workshop, args);
  }

  private int run(PrintStream answers, Workshop workshop, String... args) {
    PrintStream complaints = new PrintStream(err, true, StandardCharsets.US_ASCII);
    return new Main(new Console(answers, complaints, false, folder), workshop).run(args);
  }

  private String printed() {
    return out.toString(StandardCharsets.US_ASCII);
  }

  private String complained() {
    return err.toString(StandardCharsets.US_ASCII);
  }

  private List<String> left() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(Files::isRegularFile)
          .map(f -> folder.relativize(f).toString())
          .sorted()
          .toList();
    }
  }

  @Test
  void aMisrunIsAnAnswerAndEndsWithZero() {
    assertThat(run(new Ready(sound(), HandMade::slush), "pour", "feather.yaml")).isZero();
    assertThat(printed())
        .startsWith("DRY POUR (computed)  ")
        .contains("IT STOPS SHORT. The metal reaches 214 mm of 320 mm;")
        .contains("Noted      feather.yaml 3:5: width is read as wide.");
    assertThat(complained()).isEmpty();
  }

  @Test
  void quietPrintsTheVerdictAlone() {
    assertThat(run(new Ready(sound(), HandMade::slush), "pour", "feather.yaml", "--quiet"))
        .isZero();
    assertThat(printed().lines())
        .containsExactly(
            "IT STOPS SHORT. The metal reaches 214 mm of 320 mm; the last 106 mm does not",
            "fill (a misrun).");
  }

  @Test
  void inchesArePrintedByTheSixteenth() {
    run(new Ready(sound(), HandMade::slush), "pour", "feather.yaml", "--quiet", "--units", "in");
    assertThat(printed()).contains("The metal reaches 8 7/16 in of 12 5/8 in;");
  }

  @Test
  void anUnknownUnitIsExplained() {
    assertThat(run(new Ready(sound(), HandMade::slush), "pour", "f.yaml", "--units", "cubits"))
        .isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("--units takes mm or in, not \"cubits\".");
  }

  @Test
  void allProblemsAreListedAtOnceAndNothingIsPoured() {
    Workshop workshop =
        new Ready(
            unsound(),
            () -> {
              throw new AssertionError("poured");
            });
    assertThat(run(workshop, "pour", "feather.yaml")).isEqualTo(Exit.BAD_INPUT);
    assertThat(printed()).isEmpty();
    assertThat(complained().lines())
        .containsExactly(
            "3 things to correct in feather.yaml. Nothing was run, nothing was written.",
            " 12:20  reads: 1150 degF          Tin bronze is solid below 831 degC",
            "                                  (1528 degF). Did you mean: degC",
            " 17:5   tickness: 4.8 mm          Unknown word. Did you mean: thick",
            "in base.yaml:",
            " 23:14  wide: 20                  Millimetres or inches? Write 20 mm or 20 in.");
  }

  @Test
  void problemsAreGivenToProgramsToo() {
    assertThat(run(new Ready(unsound(), HandMade::slush), "pour", "feather.yaml", "--json"))
        .isEqualTo(Exit.BAD_INPUT);
    assertThat(printed())
        .contains("\"format\": \"last inch problems 2\"")
        .contains("\"line\": 12,")
        .contains("\"suggestion\": \"thick\"")
        .contains("\"suggestion\": null");
    assertThat(complained()).isEmpty();
  }

  @Test
  void aPlanBeyondWhatThereIsSaysWhatItNeeds() {
    Workshop workshop =
        new Ready(
            sound(),
            () -> {
              throw new UnsupportedCase(List.of(Need.MODEL_TOO_WIDE));
            });
    assertThat(run(workshop, "pour", "feather.yaml")).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("feather.yaml needs --solver plane");
  }

  @Test
  void expectingItToFillAcceptsJustFilling() {
    assertThat(
            run(
                new Ready(sound(), () -> HandMade.filled(0.05, List.of())),
                "pour",
                "f.yaml",
                "--expect",
                "fills"))
        .isZero();
    assertThat(printed()).contains("IT ONLY JUST FILLS, with 5 % of the heat to spare.");
  }

  @Test
  void anExpectationNotMetEndsWithThree() {
    assertThat(run(new Ready(sound(), HandMade::slush), "pour", "f.yaml", "--expect", "fills"))
        .isEqualTo(Exit.EXPECTATION_NOT_MET);
    assertThat(
            run(new Ready(sound(), HandMade::roundedEdges), "pour", "f.yaml", "--expect", "fills"))
        .isEqualTo(Exit.EXPECTATION_NOT_MET);
  }

  @Test
  void aBreakdownPrintsWhatThereIsAndEndsWithFour() {
    assertThat(run(new Ready(sound(), HandMade::brokeDown), "pour", "feather.yaml"))
        .isEqualTo(Exit.BROKE_DOWN);
    assertThat(printed()).contains("NO VERDICT. The calculation failed at 1.6 s");
  }

  @Test
  void aCancelledRunWritesNothingAndEndsWith130() throws IOException {
    String target = folder.resolve("pictures").toString();
    assertThat(run(new Ready(sound(), HandMade::cancelled), "pour", "f.yaml", "--out", target))
        .isEqualTo(Exit.CANCELLED);
    assertThat(printed()).contains("STOPPED BY YOU at 1.6 s.");
    assertThat(left()).isEmpty();
  }

  @Test
  void ourOwnFaultLeavesAReportAndNoTraceOnTheScreen() throws IOException {
    Workshop workshop =
        new Ready(
            sound(),
            () -> {
              throw new IllegalStateException("planted");
            });
    assertThat(run(workshop, "pour", "feather.yaml")).isEqualTo(Exit.OUR_FAULT);
    assertThat(left()).hasSize(1);
    Path report = folder.resolve(left().get(0));
    assertThat(Files.readString(report)).contains("planted").contains("at lastinch.ui");
    assertThat(complained().replaceAll("\\s+", ""))
        .contains(report.toString())
        .doesNotContain("IllegalState");
  }

  @Test
  void allFilesShowUpInAFolderThatWasNotThere() throws IOException {
    Path target = folder.resolve("a/b");
    assertThat(
            run(new Ready(sound(), HandMade::slush), "pour", "f.yaml", "--out", target.toString()))
        .isZero();
    assertThat(left()).contains("a/b/answer.txt", "a/b/answer.json");
    assertThat(left()).noneMatch(name -> name.contains(".lastinch-"));
  }

  @Test
  void aFileInTheWayOfTheFolderIsTold() throws IOException {
    Path file = Files.createFile(folder.resolve("pictures"));
    assertThat(run(new Ready(sound(), HandMade::slush), "pour", "f.yaml", "--out", file.toString()))
        .isEqualTo(Exit.BAD_INPUT);
    assertThat(complained().replaceAll("\\s+", " ")).contains(": a file is in the way there.");
    assertThat(left()).containsExactly("pictures");
  }

  @Test
  void anAnswerThatCannotBePrintedIsNotSilent() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("No space left on device");
          }
        };
    PrintStream answers = new PrintStream(full, true, StandardCharsets.US_ASCII);
    assertThat(run(answers, new Ready(sound(), HandMade::slush), "pour", "feather.yaml"))
        .isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("could not be printed to the end");
  }

  @Test
  void aMistypedOptionGetsTheNearestRightOne() {
    assertThat(run(new Ready(sound(), HandMade::slush), "pour", "f.yaml", "--quite"))
        .isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("\"--quite\" is not understood here. Did you mean: --quiet");
  }

  @Test
  void aMissingCaseIsNamed() {
    assertThat(run(new Ready(sound(), HandMade::slush), "pour")).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained().replaceAll("\\s+", " "))
        .contains("Which plan? Name its case file, for example: lastinch pour f");
  }

  @Test
  void helpOfACommandHasAnExampleAndItsEndings() {
    assertThat(run(new Ready(sound(), HandMade::slush), "help", "pour")).isZero();
    assertThat(printed())
        .contains("Use: lastinch pour")
        .contains("lastinch pour feather.yaml --out pictures")
        .contains("stopped by Ctrl-C");
  }

  @Test
  void completionKnowsTheOptions() {
    assertThat(run(new Ready(sound(), HandMade::slush), "completion")).isZero();
    assertThat(printed()).contains("--expect").contains("lastinch");
  }

  @Test
  void aMetalIsFoundByAnyOfItsNamesAndShownWithItsSources() {
    assertThat(run(new Ready(sound(), HandMade::slush), "alloys", "show", "c90700")).isZero();
    assertThat(printed())
        .startsWith("TIN BRONZE")
        .contains("starts to freeze          999 degC         995 to 1011")
        .contains("Sources");
  }

  @Test
  void figuresOfAMetalCanBeHadInDegreesFahrenheit() {
    run(new Ready(sound(), HandMade::slush), "alloys", "show", "tin", "bronze", "--units", "in");
    assertThat(printed()).contains("starts to freeze          1830 degF");
  }

  @Test
  void everyMetalAndMouldCanBeShown() {
    Workshop workshop = new Ready(sound(), HandMade::slush);
    for (MaterialsCommand.Kind kind : MaterialsCommand.Kind.values()) {
      for (MaterialSheet sheet : kind.all(Catalogue.builtIn())) {
        out.reset();
        assertThat(run(workshop, kind.command(), "show", sheet.name())).as(sheet.name()).isZero();
        assertThat(printed()).contains("where from");
        assertThat(run(workshop, kind.command(), "show", sheet.name(), "--json")).isZero();
      }
    }
  }

  @Test
  void anUnknownMetalGetsTheNearestOnes() {
    assertThat(run(new Ready(sound(), HandMade::slush), "alloys", "show", "tin bronce"))
        .isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("There is no \"tin bronce\" here. Did you mean: tin bronze");
  }

  @Test
  void listsOfMetalsAndMouldsNameAll() {
    assertThat(run(new Ready(sound(), HandMade::slush), "alloys")).isZero();
    assertThat(printed()).contains("silicon bronze").contains("pewter").contains("pure zinc");
    assertThat(run(new Ready(sound(), HandMade::slush), "moulds", "--json")).isZero();
    assertThat(printed()).contains("\"gypsum investment\"").contains("\"stainless 304\"");
  }

  @Test
  void faultsInAnOwnMaterialsFileAreListed() throws IOException {
    Path own = folder.resolve("metals.yaml");
    Files.writeString(own, "format: last inch materials 1\nallos: []\n");
    assertThat(run(new Ready(sound(), HandMade::slush), "alloys", "--materials", own.toString()))
        .isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("1 thing to correct in").contains("2:1");
  }
}
