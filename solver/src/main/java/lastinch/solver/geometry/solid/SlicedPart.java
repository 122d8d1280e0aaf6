package lastinch.solver.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastinch.solver.casting.Centreline;
import lastinch.solver.casting.GapGrid;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Model;
import lastinch.solver.casting.SectionForm;
import lastinch.solver.casting.Solid;
import lastinch.solver.casting.Station;
import lastinch.solver.geometry.cavity.PlanBox;
import lastinch.solver.geometry.cavity.SolidRegion;

/**
 * A drawn piece with stations cut through it, square to its curved middle line. One that is too
 * wide or branched for that gets slices straight across instead, good for its volume only.
 *
 * @param limbs at least one
 * @param model the piece
 */
public record SlicedPart(List<Limb> limbs, Model model) {
  /** A piece shorter than this many widths is no channel; our choice. */
  private static final double SLENDER = 1.6;

  /** Points of the middle line so many widths apart: closer ones follow every slip of a chord. */
  private static final double APART = 0.25;

  /** Its direction is taken over so many widths on either side, for the same reason. */
  private static final double REACH = 0.5;

  /** Small stretches across a chord [-]; chosen: sections of a feather come within 1 %. */
  private static final int SAMPLES = 160;

  /** Times that the line is drawn into the middle of its chords [-]; chosen. */
  private static final int PASSES = 6;

  /** Straight slices of a piece without a middle line [-]; chosen. */
  private static final int SLICES = 24;

  /** How far in from the rim its edge is measured [m], as with calipers; chosen. */
  private static final double SKIN = 2e-3;

  public SlicedPart {
    limbs = List.copyOf(limbs);
  }

  /**
   * Cuts stations.
   *
   * @param solid the piece
   * @param cell size of the cells in which its outline is followed [m]
   */
  public static SlicedPart of(Solid solid, double cell) {
    return of(new SolidRegion(solid, List.of()), cell);
  }

  static SlicedPart of(SolidRegion region, double cell) {
    Solid solid = region.solid();
    PlanBox box = region.box();
    GapGrid grid = GapGrid.covering(box.lowX(), box.lowY(), box.highX(), box.highY(), cell);
    BandCentreline spine = BandCentreline.of(new PlanOutline(region, grid));
    if (spine.isBranched()) {
      return sliced(solid, region, Model.Form.TOO_BRANCHED);
    }
    Optional<Centreline> line = centred(region, spine, cell);
    if (line.isEmpty()) {
      return sliced(solid, region, Model.Form.TOO_WIDE);
    }
    List<Station> stations = stations(region, line.get(), cell);
    double widest = stations.stream().mapToDouble(Station::width).max().orElse(0.0);
    if (line.get().length() < SLENDER * widest) {
      return sliced(solid, region, Model.Form.TOO_WIDE);
    }
    return new SlicedPart(
        List.of(limb(stations)), new Model(solid, List.of(line.get()), Model.Form.LONG));
  }

  /** How long the piece is along its middle line, or straight through where it has none [m]. */
  public double length() {
    return limbs.get(0).length();
  }

  /** Greatest width [m]. */
  public double widest() {
    return limbs.get(0).stations().stream().mapToDouble(Station::width).max().orElseThrow();
  }

  private static Limb limb(List<Station> stations) {
    return new Limb(Limb.ONLY, stations, form(stations), "", "", 0.0);
  }

  /** Straight slices across. */
  private static SlicedPart sliced(Solid solid, SolidRegion region, Model.Form form) {
    PlanBox box = region.box();
    double length = box.highX() - box.lowX();
    double across = box.highY() - box.lowY();
    List<Station> all = new ArrayList<>();
    for (int i = 0; i <= SLICES; i++) {
      double s = length * i / SLICES;
      double x = box.lowX() + Math.max(0.002 * length, Math.min(0.998 * length, s));
      double step = across / SAMPLES;
      double area = 0.0;
      double open = 0.0;
      double thickest = 1e-4;
      for (int k = 0; k < SAMPLES; k++) {
        double gap = region.gapAt(x, box.lowY() + (k + 0.5) * step);
        area += gap * step;
        open += gap > 0.0 ? step : 0.0;
        thickest = Math.min(Station.MOST_THICK, Math.max(thickest, gap));
      }
      double width = Math.max(open, 1e-3);
      Station.Cut cut = new Station.Cut(Math.max(area, 1e-9), 2.0 * (width + thickest));
      all.add(new Station(s, width, thickest, OptionalDouble.empty(), Optional.of(cut)));
    }
    return new SlicedPart(List.of(limb(all)), new Model(solid, List.of(), form));
  }

  /** The form that is nearest to how full the sections are. */
  private static SectionForm form(List<Station> stations) {
    double area = 0.0;
    double boxes = 0.0;
    for (Station s : stations) {
      area += s.cut().orElseThrow().area();
      boxes += s.width() * s.thickness();
    }
    double full = area / boxes;
    return full > 0.9 ? SectionForm.FLAT : full > 0.73 ? SectionForm.ROUND : SectionForm.LENS;
  }

  /** Draws the line into the middle of chords square to it, and on to both ends. */
  private static Optional<Centreline> centred(
      SolidRegion region, BandCentreline spine, double cell) {
    double[] x = spine.x();
    double[] y = spine.y();
    if (x.length < 3) {
      return Optional.empty();
    }
    Centreline line = new Centreline(Limb.ONLY, x, y);
    for (int pass = 0; pass < PASSES; pass++) {
      line = toEnds(region, inner(region, line, cell), cell);
    }
    return Optional.of(line);
  }

  /** The line without its ends, each point in the middle of its chord, smoothed. */
  private static Centreline inner(SolidRegion region, Centreline line, double cell) {
    double length = line.length();
    double first = Chord.at(region, line, 0.25 * length, 3.0 * cell).width();
    double last = Chord.at(region, line, 0.75 * length, 3.0 * cell).width();
    double from = Math.min(0.5 * first, 0.25 * length);
    double to = length - Math.min(0.5 * last, 0.25 * length);
    double width = Math.max(first, last);
    double apart = Math.max(2.0 * cell, APART * width);
    int n = (int) Math.max(8, Math.min(120, Math.round((to - from) / apart)));
    double[] x = new double[n + 1];
    double[] y = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      double at = from + (to - from) * i / n;
      Chord chord = Chord.at(region, line, at, Math.max(3.0 * cell, REACH * width));
      x[i] = chord.middleX();
      y[i] = chord.middleY();
    }
    return new Centreline(Limb.ONLY, smooth(smooth(x)), smooth(smooth(y)));
  }

  /** Quarter, half, quarter; the ends stay. */
  private static double[] smooth(double[] v) {
    double[] out = v.clone();
    for (int i = 1; i + 1 < v.length; i++) {
      out[i] = 0.25 * v[i - 1] + 0.5 * v[i] + 0.25 * v[i + 1];
    }
    return out;
  }

  /** Carries the line on straight to where the piece ends. */
  private static Centreline toEnds(SolidRegion region, Centreline line, double cell) {
    int n = line.size();
    double length = line.length();
    double reach = Math.min(0.2 * length, 12.0 * cell);
    double[] head = beyond(region, line, reach, 0.0);
    double[] tail = beyond(region, line, length - reach, length);
    double[] x = new double[n + 2];
    double[] y = new double[n + 2];
    x[0] = head[0];
    y[0] = head[1];
    for (int i = 0; i < n; i++) {
      double s = length * i / (n - 1);
      x[i + 1] = line.xAt(s);
      y[i + 1] = line.yAt(s);
    }
    x[n + 1] = tail[0];
    y[n + 1] = tail[1];
    return new Centreline(Limb.ONLY, x, y);
  }

  /** The last place inside on the way from one place of the line through its end. */
  private static double[] beyond(SolidRegion region, Centreline line, double from, double end) {
    double ex = line.xAt(end);
    double ey = line.yAt(end);
    double dx = ex - line.xAt(from);
    double dy = ey - line.yAt(from);
    double norm = Math.sqrt(dx * dx + dy * dy);
    double exit = Chord.exit(region, ex, ey, dx / norm, dy / norm);
    double step = Math.max(exit, 1e-5);
    return new double[] {ex + dx / norm * step, ey + dy / norm * step};
  }

  private static List<Station> stations(SolidRegion region, Centreline line, double cell) {
    double length = line.length();
    int n = (int) Math.max(12, Math.min(80, Math.round(length / (4.0 * cell))));
    double inset = Math.min(0.5 * cell, length / 400.0);
    List<Station> all = new ArrayList<>();
    for (int i = 0; i <= n; i++) {
      double s = length * i / n;
      double inside = Math.max(inset, Math.min(length - inset, s));
      all.add(station(region, Chord.at(region, line, inside, 3.0 * cell), s));
    }
    return all;
  }

  /** Measures along a chord: mean over many small stretches. */
  private static Station station(SolidRegion region, Chord chord, double at) {
    double width = Math.max(chord.width(), 2e-4);
    double step = width / SAMPLES;
    double[] gap = new double[SAMPLES];
    double area = 0.0;
    double thickest = 0.0;
    for (int k = 0; k < SAMPLES; k++) {
      double t = (k + 0.5) * step - 0.5 * width;
      gap[k] = region.gapAt(chord.xAt(t), chord.yAt(t));
      area += gap[k] * step;
      thickest = Math.max(thickest, gap[k]);
    }
    double rims = rim(gap) + rim(reversed(gap));
    double perimeter = rims;
    for (int k = 0; k < SAMPLES; k++) {
      double rise = (gap[Math.min(k + 1, SAMPLES - 1)] - gap[Math.max(k - 1, 0)]) / (2.0 * step);
      perimeter += Math.sqrt(4.0 + rise * rise) * step;
    }
    double thickness = Math.min(Station.MOST_THICK, Math.max(thickest, 1e-4));
    int in = (int) Math.min(SAMPLES / 2 - 1, SKIN / step);
    double edge = 0.5 * (gap[in] + gap[SAMPLES - 1 - in]);
    Station.Cut cut = new Station.Cut(Math.max(area, 1e-9), Math.max(perimeter, 2.0 * width));
    return new Station(
        at,
        width,
        thickness,
        edge > 1e-5 ? OptionalDouble.of(Math.min(edge, thickness)) : OptionalDouble.empty(),
        Optional.of(cut));
  }

  /** Upright wall at the first sample: the gap carried on to the rim. */
  private static double rim(double[] gap) {
    return Math.max(0.0, 1.5 * gap[0] - 0.5 * gap[1]);
  }

  private static double[] reversed(double[] v) {
    double[] out = new double[v.length];
    for (int i = 0; i < v.length; i++) {
      out[i] = v[v.length - 1 - i];
    }
    return out;
  }
}
