package lastinch.ui.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import lastinch.cases.plan.ReadResult;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.PlaneSettings;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.levers.Owned;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Poured;
import lastinch.solver.search.NextStep;
import lastinch.solver.uncertainty.BandStudy;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The answer of every shipped plan fits one screen, in millimetres and in inches. */
class OneScreenTest {
  private static final int LINES = 24;
  private static final Path CASES = Path.of("../cases/demo");

  @TempDir Path folder;

  /** The real thing, each pour made once. */
  private static final class Once implements Workshop {
    private final Shop shop = new Shop();
    private final Map<PourCase, PourResult> poured = new HashMap<>();
    private final Map<PourCase, Poured> along = new HashMap<>();
    private final Map<PourCase, Poured> planes = new HashMap<>();
    private final Map<PourCase, Optional<BandStudy>> studied = new HashMap<>();

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
      return poured.computeIfAbsent(job, j -> shop.pour(j, observer, stop));
    }

    @Override
    public Poured toTheEnd(
        PourCase job, PlaneSettings settings, RunObserver observer, BooleanSupplier stop) {
      return planes.computeIfAbsent(job, j -> shop.toTheEnd(j, settings, observer, stop));
    }

    @Override
    public Poured toTheEnd(PourCase job, RunObserver observer, BooleanSupplier stop) {
      return along.computeIfAbsent(job, j -> shop.toTheEnd(j, observer, stop));
    }

    @Override
    public Optional<BandStudy> bands(PourCase job, PourResult best, BooleanSupplier stop) {
      return studied.computeIfAbsent(job, j -> shop.bands(j, best, stop));
    }

    @Override
    public Optional<NextStep> next(
        PourCase job, BandStudy bands, Owned owned, double wanted, BooleanSupplier stop) {
      return shop.next(job, bands, owned, wanted, stop);
    }
  }

  static List<Path> plans() throws IOException {
    List<Path> plans = new ArrayList<>();
    for (Path place : List.of(CASES, CASES.resolve("teaching"))) {
      try (Stream<Path> files = Files.list(place)) {
        files
            .filter(f -> f.toString().endsWith(".yaml") && !f.endsWith("shop.yaml"))
            .sorted()
            .forEach(plans::add);
      }
    }
    assertThat(plans).hasSizeGreaterThan(20);
    return plans;
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyAnswerFitsOneScreen(Path plan) {
    Workshop workshop = new Once();
    for (String units : List.of("mm", "in")) {
      List<String> lines = answer(workshop, "pour", plan.toString(), "--units", units);
      if (lines.isEmpty()) {
        lines =
            answer(
                workshop,
                "pour",
                plan.toString(),
                "--solver",
                "plane",
                "--square",
                "4 mm",
                "--units",
                units);
      }
      assertThat(lines).as("%s in %s", plan, units).hasSizeBetween(10, LINES);
      assertThat(lines).allMatch(line -> line.length() <= 78);
      assertThat(lines).anyMatch(line -> line.startsWith("Next"));
      assertThat(lines).anyMatch(line -> line.startsWith("Care"));
      assertThat(lines.get(lines.size() - 1)).contains("--all").contains("--out");
    }
  }

  /** What is printed; nothing when the plan is not poured that way. */
  private List<String> answer(Workshop workshop, String... typed) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream answers = new PrintStream(out, true, StandardCharsets.US_ASCII);
    PrintStream complaints =
        new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.US_ASCII);
    int code = new Main(new Console(answers, complaints, false, folder), workshop).run(typed);
    assertThat(code).isIn(Exit.SOLVED, Exit.BAD_INPUT);
    return out.toString(StandardCharsets.US_ASCII).lines().toList();
  }
}
