package lastinch.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import lastinch.ui.chart.paper.Labels;
import lastinch.ui.chart.paper.Look;
import org.junit.jupiter.api.Test;

/** Exact: labels lie over no other label, no line, nothing to keep off, and inside their area. */
class LabelsTest {
  private static final Rectangle2D AREA = new Rectangle2D.Double(10.0, 10.0, 400.0, 200.0);

  private static Graphics2D paper() {
    return new BufferedImage(420, 220, BufferedImage.TYPE_INT_RGB).createGraphics();
  }

  @Test
  void labelsOfOnePlaceLieBesideEachOther() {
    Labels labels = new Labels(AREA);
    for (int i = 0; i < 4; i++) {
      labels.write(paper(), "ends at 162 mm", Look.LABEL_SMALL, Look.INK, 200.0, 100.0, 0.0, -1.0);
    }
    List<Rectangle2D> boxes = labels.written();
    assertThat(boxes).hasSize(4).allMatch(AREA::contains);
    for (int i = 0; i < boxes.size(); i++) {
      for (int k = 0; k < i; k++) {
        assertThat(boxes.get(i).intersects(boxes.get(k))).isFalse();
      }
    }
  }

  @Test
  void noLineRunsThroughALabel() {
    Labels labels = new Labels(AREA);
    Line2D line = new Line2D.Double(10.0, 200.0, 410.0, 20.0);
    labels.keepOffLine(line);
    labels.write(paper(), "metal gets there", Look.LABEL, Look.INK, 210.0, 110.0, 1.0, 0.0);
    assertThat(labels.written())
        .singleElement()
        .satisfies(b -> assertThat(b.intersectsLine(line)).isFalse());
  }

  @Test
  void aLabelAlongALineGoesWhereThereIsRoom() {
    Labels labels = new Labels(AREA);
    Rectangle2D full = new Rectangle2D.Double(10.0, 10.0, 250.0, 200.0);
    labels.keepOff(full);
    List<Point2D> line = new ArrayList<>();
    for (double x = 10.0; x <= 410.0; x += 10.0) {
      line.add(new Point2D.Double(x, 110.0));
    }
    labels.along(paper(), "turns to mush", Look.LABEL, Look.INK, line, 0.3, 1.0);
    assertThat(labels.written())
        .singleElement()
        .satisfies(b -> assertThat(b.intersects(full)).isFalse());
  }

  @Test
  void aLabelWithoutRoomIsLeftOut() {
    Labels labels = new Labels(AREA);
    labels.keepOff(AREA);
    labels.write(paper(), "piece", Look.NAME, Look.INK, 200.0, 100.0, 0.0, -1.0);
    assertThat(labels.written()).isEmpty();
  }
}
