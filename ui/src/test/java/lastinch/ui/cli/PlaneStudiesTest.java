package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lastinch.cases.plan.ReadResult;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.StopReason;
import lastinch.solver.study.Pourer;
import lastinch.ui.HandMade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Commands that make many runs over the plane; the runs are invented where nothing else is said.
 */
class PlaneStudiesTest {
  private static final String DEMO = "../cases/demo/";
  private static final String FLAT = DEMO + "feather-sand-flat.yaml";
  private static final String LEAF = DEMO + "ginkgo-leaf.yaml";

  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  /** Reads real files; over the plane pours under 4 s fill and others stop. */
  private static final class Invented implements Workshop {
    private final Shop shop = new Shop();
    private final List<PourCase> poured = Collections.synchronizedList(new ArrayList<>());
    private final List<Double> squares = Collections.synchronizedList(new ArrayList<>());

    @Override
    public ReadResult read(Path file, Optional<Path> ownMaterials) {
      return shop.read(file, ownMaterials);
    }

    @Override
    public Shelf shelf(Optional<Path> ownMaterials) {
      return shop.shelf(ownMaterials);
    }

    @Override
    public PourResult pour(PourCase job, RunObserver observer, BooleanSupplier stop) {
      throw new AssertionError("poured along the channels");
    }

    @Override
    public Pourer.Run overPlane(double square) {
      squares.add(square);
      return (job, stop) -> {
        poured.add(job);
        double seconds = ((Pour.Empties) job.pour()).seconds().value();
        return seconds < 4.0
            ? HandMade.filled(0.3, List.of())
            : HandMade.stopped(StopReason.SLUSH, 0.2);
      };
    }
  }

  private final Invented workshop = new Invented();

  private int run(String... args) {
    PrintStream answers = new PrintStream(out, true, StandardCharsets.US_ASCII);
    PrintStream complaints = new PrintStream(err, true, StandardCharsets.US_ASCII);
    return new Main(new Console(answers, complaints, false, folder), workshop).run(args);
  }

  private String printed() {
    return out.toString(StandardCharsets.US_ASCII).replaceAll("\\s+", " ");
  }

  private String complained() {
    return err.toString(StandardCharsets.US_ASCII).replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "compare " + FLAT + " " + DEMO + "feather-sand-tilted.yaml",
        "least " + FLAT + " --only pour",
        "room " + FLAT + " --across pour --up gate_wide --steps 3",
        "why " + FLAT,
        "why " + FLAT + " --stopped 200mm",
        "sure " + FLAT + " --pours 16",
        "gates " + FLAT + " --most 1"
      })
  void everyStudyPoursOverThePlaneAndSaysSo(String typed) {
    List<String> words = new ArrayList<>();
    for (String word : (typed + " --solver plane --square 3mm").split(" ", -1)) {
      words.add(word.replace('_', ' '));
    }
    assertThat(run(words.toArray(String[]::new))).as(complained()).isZero();
    assertThat(printed())
        .contains("Calculated on a grid of 3 mm squares")
        .doesNotContainPattern(
            "lastinch (least|why|room|sure) \\S+\\.yaml (?!--solver plane --square 3mm)");
    assertThat(complained()).contains("computed pours on a grid of 3 mm squares");
    assertThat(complained()).contains("The first took");
    assertThat(workshop.squares).containsExactly(3e-3);
    out.reset();
    words.add("--json");
    assertThat(run(words.toArray(String[]::new))).as(complained()).isZero();
    assertThat(printed()).contains("\"solver\": \"plane\"").contains("\"square_mm\": 3");
  }

  @Test
  void eachPlanIsPouredOnce() {
    run("why", FLAT, "--solver", "plane");
    assertThat(workshop.poured).doesNotHaveDuplicates();
    workshop.poured.clear();
    run("compare", FLAT, DEMO + "feather-sand-tilted.yaml", "--solver", "plane");
    assertThat(workshop.poured).doesNotHaveDuplicates();
    assertThat(workshop.squares).containsExactly(4e-3, 4e-3);
  }

  @Test
  void quietAndJsonForetellNothing() {
    run("least", FLAT, "--only", "pour", "--solver", "plane", "--quiet");
    assertThat(printed()).startsWith("My pick for next time: pour faster");
    run("least", FLAT, "--only", "pour", "--solver", "plane", "--json");
    assertThat(complained()).isEmpty();
  }

  @Test
  void thePageSaysHowItWasPoured() throws IOException {
    Path pages = folder.resolve("pages");
    run("least", FLAT, "--only", "pour", "--solver", "plane", "--out", pages.toString());
    assertThat(Files.readString(pages.resolve("report.html")))
        .contains("on a grid of 4 mm squares")
        .contains("Calculated on a grid");
  }

  @Test
  void wordsOfThePlaneAreRefusedWithAllOtherWrongWords() {
    assertThat(run("least", FLAT, "--solver", "plain", "--square", "9 mm", "--spare", "lots"))
        .isEqualTo(Exit.BAD_INPUT);
    assertThat(complained())
        .contains("network or plane, not \"plain\"")
        .contains("not \"9 mm\"")
        .contains("lots");
    assertThat(run("sure", FLAT, "--square", "2 mm")).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("--square belongs to --solver plane");
    assertThat(workshop.poured).isEmpty();
  }

  @Test
  void plansThatThePlaneCannotPourAreAllNamed() throws IOException {
    List<String> plans = new ArrayList<>(List.of("compare"));
    for (String name : List.of("first", "second")) {
      String begun =
          Files.readString(Path.of(DEMO + "teaching/air-holds.yaml"))
              + "for checking:\n  starts wet: [{channel: sprue, from: 0 mm, to: 50 mm}]\n";
      plans.add(Files.writeString(folder.resolve(name + ".yaml"), begun).toString());
    }
    plans.addAll(List.of("--solver", "plane"));
    assertThat(run(plans.toArray(String[]::new))).isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("first.yaml needs").contains("second.yaml needs");
    assertThat(workshop.poured).isEmpty();
  }

  @Test
  void aDrawnPieceIsPouredAsItIsDrawn() {
    assertThat(run("least", LEAF, "--only", "thicker", "--solver", "plane"))
        .isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("There is no lever \"thicker\"");
    assertThat(run("least", LEAF, "--only", "pour", "--solver", "plane")).isZero();
    assertThat(printed()).contains("a model is poured as it was drawn");
    assertThat(run("gates", LEAF, "--solver", "plane")).isEqualTo(Exit.BAD_INPUT);
    assertThat(run("why", LEAF, "--stopped", "50mm", "--solver", "plane"))
        .isEqualTo(Exit.BAD_INPUT);
    assertThat(complained()).contains("cannot be given by a length along it");
  }
}
