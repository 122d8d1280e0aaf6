package lastinch.solver.network.layout;

import java.util.Arrays;
import java.util.function.DoubleFunction;
import lastinch.solver.result.PassageRecord;

/**
 * Geometry of one straight channel on a grid of equal cells. Faces are numbered 0 to {@code cells},
 * cell {@code i} lies between faces {@code i} and {@code i + 1}. Area is straight between faces.
 */
public final class ChannelShape {
  /** Between the name of a limb or boss and the number of its part. */
  static final String PART = " part ";

  public final String name;

  /** Limb, boss or other passage that the channel belongs to. */
  public final String limb;

  public final PassageRecord.Role role;
  public final double length;
  public final int cells;
  public final double dx;

  /** Distance of face 0 on the piece's ruler [m]. */
  public final double start;

  /** Height of face 0 and of the last face [m]. */
  public final double heightA;

  public final double heightB;

  /** Area at faces [m2], [cells + 1]. */
  public final double[] faceArea;

  /** Volume from face 0 to each face [m3], [cells + 1]. */
  public final double[] volumeTo;

  /** Integral of ds/A from face 0 to each face [1/m], [cells + 1]. */
  public final double[] inertiaTo;

  /** Integral of s A ds from face 0 to each face [m4], [cells + 1]. */
  final double[] momentTo;

  /** By cell: volume [m3], wall area [m2], perimeter [m], width, thickness [m]. */
  public final double[] volume;

  public final double[] wall;
  public final double[] perimeter;
  public final double[] width;
  public final double[] thickness;
  public final double[] hydraulicDiameter;
  public final double[] laminarProduct;

  /** By cell: rims of its section. */
  private final SectionRims[] rims;

  private final double[] sectionArea;
  private final boolean parted;

  /** By cell: mean of the areas of its faces [m2]. */
  public final double[] meanArea;

  /** Mould temperature before metal, by cell [K]. */
  public final double[] mouldTemperature;

  private final double rise;
  private final double wholeHeightMoment;

  /**
   * Builds the grid.
   *
   * @param longest longest cell allowed [m]
   * @param sectionAt section at a distance from face 0 [m]
   * @param mouldAt mould temperature at a distance from face 0 [K]
   */
  public ChannelShape(
      String name,
      PassageRecord.Role role,
      double length,
      double start,
      double heightA,
      double heightB,
      double longest,
      DoubleFunction<SectionShape> sectionAt,
      DoubleFunction<Double> mouldAt) {
    this.name = name;
    int part = name.lastIndexOf(PART);
    limb = part < 0 ? name : name.substring(0, part);
    this.role = role;
    this.length = length;
    this.start = start;
    this.heightA = heightA;
    this.heightB = heightB;
    cells = Math.max(2, (int) Math.ceil(length / longest - 1e-9));
    dx = length / cells;
    faceArea = new double[cells + 1];
    volumeTo = new double[cells + 1];
    inertiaTo = new double[cells + 1];
    momentTo = new double[cells + 1];
    volume = new double[cells];
    wall = new double[cells];
    perimeter = new double[cells];
    width = new double[cells];
    thickness = new double[cells];
    hydraulicDiameter = new double[cells];
    laminarProduct = new double[cells];
    meanArea = new double[cells];
    rims = new SectionRims[cells];
    sectionArea = new double[cells];
    mouldTemperature = new double[cells];
    for (int f = 0; f <= cells; f++) {
      faceArea[f] = sectionAt.apply(f * dx).area();
    }
    double flatness = 0.0;
    boolean thereEverywhere = true;
    for (int i = 0; i < cells; i++) {
      SectionShape middle = sectionAt.apply((i + 0.5) * dx);
      meanArea[i] = 0.5 * (faceArea[i] + faceArea[i + 1]);
      volume[i] = meanArea[i] * dx;
      volumeTo[i + 1] = volumeTo[i] + volume[i];
      inertiaTo[i + 1] = inertiaTo[i] + inertiaWithin(faceArea[i], faceArea[i + 1], dx);
      momentTo[i + 1] = momentTo[i] + momentWithin(i, dx);
      perimeter[i] = middle.perimeter();
      wall[i] = middle.perimeter() * dx;
      width[i] = middle.width();
      thickness[i] = middle.thickness();
      hydraulicDiameter[i] = middle.hydraulicDiameter();
      laminarProduct[i] = middle.laminarProduct();
      rims[i] = middle.rims();
      sectionArea[i] = middle.area();
      thereEverywhere &= rims[i].areThere();
      flatness += width[i] / thickness[i] / cells;
      mouldTemperature[i] = mouldAt.apply((i + 0.5) * dx);
    }
    parted = thereEverywhere && flatness > SectionRims.FLAT;
    rise = (heightB - heightA) / length;
    wholeHeightMoment = heightMoment(length);
  }

  /** Integral of ds/A over a stretch with straight area, Simpson. */
  private static double inertiaWithin(double a, double b, double stretch) {
    return stretch / 6.0 * (1.0 / a + 8.0 / (a + b) + 1.0 / b);
  }

  /** Integral of s A ds over the first stretch [m] of a cell [m4]. */
  private double momentWithin(int i, double stretch) {
    double a = faceArea[i];
    double slope = (faceArea[i + 1] - a) / dx;
    double volumeIn = stretch * (a + 0.5 * slope * stretch);
    return i * dx * volumeIn + stretch * stretch * (0.5 * a + slope * stretch / 3.0);
  }

  /** Integral of the height over the volume between face 0 and a distance [m4]. */
  public double heightMoment(double s) {
    int i = cellAt(s);
    double moment = momentTo[i] + momentWithin(i, s - i * dx);
    return heightA * volumeBelow(s) + rise() * moment;
  }

  /** Integral of the height over the whole volume [m4]. */
  public double heightMoment() {
    return wholeHeightMoment;
  }

  public double totalVolume() {
    return volumeTo[cells];
  }

  /** Height gained per length towards the far end [-]. */
  public double rise() {
    return rise;
  }

  public double heightAt(double s) {
    return heightA + (heightB - heightA) * s / length;
  }

  /** Cell that holds a distance; the ends belong to the first and last cell. */
  public int cellAt(double s) {
    return Math.max(0, Math.min(cells - 1, (int) (s / dx)));
  }

  public double areaAt(double s) {
    double place = s / dx;
    int i = (int) place;
    i = i < 0 ? 0 : i < cells ? i : cells - 1;
    double within = place - i;
    double share = within <= 0.0 ? 0.0 : within < 1.0 ? within : 1.0;
    return faceArea[i] + share * (faceArea[i + 1] - faceArea[i]);
  }

  /** Straight between cell middles, level beyond. */
  public double interpolate(double[] byCell, double s) {
    double x = s / dx - 0.5;
    int i = (int) Math.floor(x);
    if (i < 0) {
      return byCell[0];
    }
    if (i >= cells - 1) {
      return byCell[cells - 1];
    }
    return byCell[i] + (x - i) * (byCell[i + 1] - byCell[i]);
  }

  /** Wetted perimeter at a true position [m], with the end slopes carried on to the ends. */
  public double carriedTo(double[] byCell, double s) {
    double x = s / dx - 0.5;
    int i = Math.max(0, Math.min(cells - 2, (int) Math.floor(x)));
    double value = byCell[i] + (x - i) * (byCell[i + 1] - byCell[i]);
    return Math.max(value, 0.25 * Math.min(byCell[i], byCell[i + 1]));
  }

  public double inertiaAt(double s) {
    int i = cellAt(s);
    return inertiaTo[i] + inertiaWithin(faceArea[i], areaAt(s), s - i * dx);
  }

  /** Integral of ds/A from a distance to the far end [1/m]. */
  public double inertiaFrom(double s) {
    return Math.max(0.0, inertiaTo[cells] - inertiaAt(s));
  }

  /** Distance from face 0 below which a volume lies [m]. */
  public double positionOf(double volumeBelow) {
    if (volumeBelow <= 0.0) {
      return 0.0;
    }
    if (volumeBelow >= volumeTo[cells]) {
      return length;
    }
    int found = Arrays.binarySearch(volumeTo, volumeBelow);
    if (found >= 0) {
      return found * dx;
    }
    int i = -found - 2;
    double rest = volumeBelow - volumeTo[i];
    double a = faceArea[i];
    double slope = (faceArea[i + 1] - a) / dx;
    double root = Math.sqrt(Math.max(0.0, a * a + 2.0 * slope * rest));
    return Math.min((i + 1) * dx, i * dx + 2.0 * rest / (a + root));
  }

  /** Whether its section is flat enough to be parted into a middle and rims. */
  public boolean hasRims() {
    return parted;
  }

  /** Rims of the section at the middle of a cell. */
  public SectionRims rims(int i) {
    return rims[i];
  }

  /** Share of the section at the middle of a cell that its rims take [-]. */
  public double rimShare(int i) {
    return rims[i].area() / sectionArea[i];
  }

  /** Volume between face 0 and a distance [m3]. */
  public double volumeBelow(double s) {
    int i = cellAt(s);
    double within = s - i * dx;
    return volumeTo[i] + 0.5 * (faceArea[i] + areaAt(s)) * within;
  }

  /** Whether it is part of the piece, the boss included. */
  public boolean isPiece() {
    return role == PassageRecord.Role.PIECE || role == PassageRecord.Role.BOSS;
  }
}
