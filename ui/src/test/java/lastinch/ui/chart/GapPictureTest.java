package lastinch.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.cases.format.Problems;
import lastinch.cases.mesh.Mesh;
import lastinch.cases.mesh.MeshFile;
import lastinch.cases.mesh.MeshUnit;
import lastinch.cases.mesh.ModelLook;
import lastinch.cases.units.DisplayUnits;
import lastinch.solver.geometry.solid.PartOrientation;
import lastinch.ui.chart.paper.Look;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Sentences;
import org.junit.jupiter.api.Test;

/** The map of a model: darker where it is thicker, its figures a person's own. */
class GapPictureTest {
  private static final Sentences SENTENCES = Sentences.english();

  private static ChartFiles feather(DisplayUnits units) {
    return feather(units, PartOrientation.Wish.NONE);
  }

  private static ChartFiles feather(DisplayUnits units, PartOrientation.Wish wish) {
    Problems problems = new Problems();
    Mesh mesh = MeshFile.read(Path.of("../cases/demo/models/feather.stl"), problems).orElseThrow();
    ModelLook look =
        ModelLook.of(
                mesh,
                MeshUnit.MILLIMETRE,
                1.0,
                wish,
                OptionalDouble.empty(),
                "feather.stl",
                problems)
            .orElseThrow();
    return ChartFiles.ofModel("feather.stl", look, SENTENCES, new Figures(units));
  }

  /** Lightness of the darkest tone of a map in a strip of the paper, from 0 to 255. */
  private static double lightness(BufferedImage image, double from, double to) {
    double sum = 0.0;
    int count = 0;
    for (int x = (int) (from * image.getWidth()); x < to * image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight() / 2; y++) {
        Color c = new Color(image.getRGB(x, y));
        boolean tone = c.getRed() - c.getBlue() > 12 && !c.equals(Look.PAPER);
        if (tone) {
          sum += c.getRed();
          count++;
        }
      }
    }
    return sum / count;
  }

  @Test
  void theThickEndIsDarkerThanTheTip() {
    BufferedImage image = feather(DisplayUnits.METRIC).image("thickness");
    // 6 mm at the thick end, 1.2 mm at the tip: far apart on the scale of ink
    assertThat(lightness(image, 0.1, 0.3)).isLessThan(lightness(image, 0.8, 0.95) - 40.0);
  }

  @Test
  void figuresAlongItsEdgesAreThePersonsOwn() throws IOException {
    StringWriter metric = new StringWriter();
    feather(DisplayUnits.METRIC).svg("thickness", metric);
    assertThat(metric.toString()).contains("along the piece, mm").contains(">300<");
    StringWriter inches = new StringWriter();
    feather(DisplayUnits.INCH).svg("thickness", inches);
    assertThat(inches.toString()).contains("along the piece, in").doesNotContain(">300<");
  }

  /** Dots of plain ink in the upper part of the paper. */
  private static int ink(BufferedImage image) {
    int count = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = image.getHeight() / 5; y < image.getHeight() / 2; y++) {
        count += image.getRGB(x, y) == Look.INK.getRGB() ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void whatLeansOverTheFlatPartingIsHatchedAndToldOnlyWhenThereIsAny() {
    ChartFiles plain = feather(DisplayUnits.METRIC);
    assertThat(plain.caption("thickness")).doesNotContain("Lines one way");
    PartOrientation.Wish low =
        new PartOrientation.Wish(
            Optional.empty(), Optional.empty(), false, OptionalDouble.of(1e-3));
    ChartFiles hatched = feather(DisplayUnits.METRIC, low);
    assertThat(hatched.caption("thickness"))
        .contains("Lines one way: metal leans over")
        .doesNotContain("Crossed lines");
    // the dashed middle line and the figures are ink too
    assertThat(ink(hatched.image("thickness"))).isGreaterThan(2 * ink(plain.image("thickness")));
  }

  @Test
  void bothMapsAreMadeAndSayWhatToSee() {
    ChartFiles charts = feather(DisplayUnits.METRIC);
    assertThat(charts.names()).containsExactly("thickness", "freezes-last");
    assertThat(charts.caption("thickness")).contains("ring").contains("middle");
    assertThat(charts.caption("freezes-last")).isNotEqualTo(charts.caption("thickness"));
  }
}
