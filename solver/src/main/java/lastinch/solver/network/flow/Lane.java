package lastinch.solver.network.flow;

import java.util.Arrays;
import lastinch.solver.network.layout.ChannelShape;
import lastinch.solver.network.layout.SectionRims;

/**
 * Metal of one part of a section all along a channel: its middle, its rims, or the whole where it
 * is not parted. All lanes of a channel are filled to the same place; each has its own heat, walls
 * and share of the flow.
 */
public final class Lane {
  /** Number of the middle among the lanes of a channel. */
  public static final int MIDDLE = 0;

  /** Number of the rims. */
  public static final int RIMS = 1;

  /** Number of its first column of mould. */
  public final int firstColumn;

  /**
   * By cell: share of the section [-], its wall's perimeter [m] and area [m2], volume over the area
   * of one face [m].
   */
  public final double[] share;

  public final double[] perimeter;

  public final double[] wall;
  public final double[] gap;

  /** By cell: growth of the mould's area with depth at its wall [1/m]. */
  public final double[] curvature;

  /** By cell: heat content [J], skin on the walls [kg]. */
  public final double[] heat;

  public final double[] skin;

  /** By cell: largest solid share so far [-]. */
  public final double[] mostSolid;

  /** By cell: slurry solid share [-] and enthalpy of what moves [J/kg], kept by the heat step. */
  public final double[] slurry;

  public final double[] mobile;

  /** By cell: what carried solid multiplies the viscosity by [-], kept by the heat step. */
  public final double[] thickening;

  /** By cell: share of the gap that skin leaves open [-], kept by the heat step. */
  public final double[] openShare;

  /** By face: volume that crosses in the step [m3] and enthalpy it carries [J/kg]. */
  final double[] crossing;

  final double[] carried;

  private Lane(int cells, int firstColumn) {
    this.firstColumn = firstColumn;
    share = new double[cells];
    perimeter = new double[cells];
    wall = new double[cells];
    gap = new double[cells];
    curvature = new double[cells];
    heat = new double[cells];
    skin = new double[cells];
    mostSolid = new double[cells];
    slurry = new double[cells];
    mobile = new double[cells];
    thickening = new double[cells];
    Arrays.fill(thickening, 1.0);
    openShare = new double[cells];
    Arrays.fill(openShare, 1.0);
    crossing = new double[cells + 1];
    carried = new double[cells + 1];
  }

  /** The whole section of a channel. */
  static Lane whole(ChannelShape shape, int firstColumn) {
    Lane lane = new Lane(shape.cells, firstColumn);
    for (int i = 0; i < shape.cells; i++) {
      lane.measure(i, shape, 1.0, shape.perimeter[i]);
      lane.curvature[i] = 2.0 * Math.PI / shape.perimeter[i];
    }
    return lane;
  }

  /** The middle of a parted section: two faces, and mould that does not open out. */
  static Lane middle(ChannelShape shape, int firstColumn) {
    Lane lane = new Lane(shape.cells, firstColumn);
    for (int i = 0; i < shape.cells; i++) {
      double faces = shape.perimeter[i] - shape.rims(i).perimeter();
      lane.measure(i, shape, 1.0 - shape.rimShare(i), faces);
    }
    return lane;
  }

  /** Both rims of a parted section, round whose ends the mould opens out. */
  static Lane rims(ChannelShape shape, int firstColumn) {
    Lane lane = new Lane(shape.cells, firstColumn);
    for (int i = 0; i < shape.cells; i++) {
      SectionRims rims = shape.rims(i);
      lane.measure(i, shape, shape.rimShare(i), rims.perimeter());
      lane.curvature[i] = 2.0 * Math.PI / rims.perimeter();
    }
    return lane;
  }

  private void measure(int i, ChannelShape shape, double part, double faces) {
    share[i] = part;
    perimeter[i] = faces;
    wall[i] = faces * shape.dx;
    gap[i] = 2.0 * (part * shape.volume[i]) / wall[i];
  }

  /** Share of a mass or volume of it that is skin [-]. */
  double skinShare(int i, double mass) {
    if (mass <= 0.0 || skin[i] == 0.0) {
      return 0.0;
    }
    double part = skin[i] / mass;
    return part < 1.0 ? part : 1.0;
  }
}
