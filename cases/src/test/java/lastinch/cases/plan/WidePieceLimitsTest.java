package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import lastinch.solver.filling.RunObserver;
import lastinch.solver.result.Finding;
import lastinch.solver.run.DryPour;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A side gate narrower than a third of the piece is told of: its jet is not seen. */
class WidePieceLimitsTest {
  @TempDir Path folder;

  private List<String> wideAt(String gateWidth) {
    String plan = Bench.demo("feather-sand-upright.yaml");
    String changed =
        plan.replace(
            "middle gate, at: 150 mm, wide: 25 mm", "middle gate, at: 150 mm, " + gateWidth);
    assertThat(changed.equals(plan)).isEqualTo(gateWidth.equals("wide: 25 mm"));
    Bench bench = new Bench(folder);
    bench.write("feather-sand-flat.yaml", Bench.flat());
    Plan read = Bench.plan(bench.read(changed));
    return DryPour.run(read.pourCase(), RunObserver.NONE, () -> false).findings().stream()
        .filter(f -> f.kind() == Finding.Kind.WIDE_PIECE)
        .map(f -> f.where().orElseThrow().passage())
        .toList();
  }

  @Test
  void theNarrowGateIsNamed() {
    // 23.7 mm wide there
    assertThat(wideAt("wide: 7.5 mm")).containsExactly("middle gate");
    assertThat(wideAt("wide: 8.5 mm")).isEmpty();
    assertThat(wideAt("wide: 25 mm")).isEmpty();
  }

  @Test
  void aPieceMoreThanHalfAsWideAsLongIsBroadWhereverItsGateIs() throws IOException {
    assertThat(broadAt(61)).containsExactly("end gate");
    assertThat(broadAt(59)).isEmpty();
  }

  /** A plate 120 mm long and so wide [mm], from a gate 40 mm wide at its end. */
  private List<String> broadAt(int wide) throws IOException {
    Bench bench = new Bench(folder);
    bench.write("shop.yaml", Bench.demo("shop.yaml"));
    bench.write("strip-2mm.yaml", Bench.demo("strip-2mm.yaml"));
    String plate =
        Bench.demo("strip-4mm.yaml")
            .replace("[0,   12, 4]", "[0,   " + wide + ", 4]")
            .replace("[900, 12, 4]", "[120, " + wide + ", 4]")
            .replace("thick: 4 mm}", "wide: 40 mm, thick: 4 mm}");
    Plan read = Bench.plan(bench.read(plate));
    return DryPour.run(read.pourCase(), RunObserver.NONE, () -> false).findings().stream()
        .filter(f -> f.kind() == Finding.Kind.WIDE_PIECE)
        .map(f -> f.where().orElseThrow().passage())
        .toList();
  }
}
