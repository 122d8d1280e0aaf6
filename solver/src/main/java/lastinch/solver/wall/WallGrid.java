package lastinch.solver.wall;

import java.util.Arrays;
import lastinch.solver.material.Checks;

/**
 * Node thicknesses of a column, from the face outwards into the mould and from the wall inwards
 * through the metal of a thick place. Immutable.
 */
public final class WallGrid {
  /**
   * Thickness of the node at the face [m]; chosen so that heat taken is right to 1 % after 50 ms:
   * halved stops move by 1.4 mm, 0.3 % at most.
   */
  public static final double FIRST = 0.05e-3;

  /** Growth from node to node [-]; chosen: with half the growth stops move by 0.3 mm. */
  public static final double RATIO = 1.35;

  /** Fewest nodes of a usual grid [-]; chosen. */
  private static final int FEWEST = 14;

  /** Most nodes of a grid, whatever the depth [-]; chosen, for the room they take. */
  private static final int MOST = 400;

  /** Usual number of even metal nodes through the half gap [-]; chosen. */
  private static final int METAL_NODES = 8;

  /**
   * How far inwards of its middle a growing node carries its temperature, per excess of the ratio
   * over 1, as a share of its thickness. With nodes in the middle a half-space under a suddenly
   * heated face takes 0.6 % too little heat at ratio 1.35 for all time, with faces midway between
   * nodes 0.8 % too much; 0.11 keeps it within 0.1 % for ratios from 1.2 to 1.5. Even nodes are not
   * moved.
   */
  private static final double INWARDS = 0.11;

  private final double[] thickness;
  private final double shift;
  private final double[] metalShare;

  private WallGrid(double[] thickness, double shift, double[] metalShare) {
    this.thickness = thickness;
    this.shift = shift;
    this.metalShare = metalShare;
  }

  /**
   * The usual grid: first node 0.05 mm, ratio 1.35, at least as deep as heat reaches, {@code 4
   * sqrt(a t)}, 14 nodes or more; 8 even metal nodes.
   *
   * @param diffusivity of the mould [m2/s]
   * @param seconds how long heat is followed [s]
   */
  public static WallGrid usual(double diffusivity, double seconds) {
    double depth = reach(diffusivity, seconds);
    return graded(FIRST, RATIO, Math.max(depth, depthOf(FIRST, RATIO, FEWEST)));
  }

  /** How deep heat reaches in a time [s] through a mould of a diffusivity [m2/s]; [m]. */
  static double reach(double diffusivity, double seconds) {
    return 4.0 * Math.sqrt(diffusivity * seconds);
  }

  /**
   * Nodes growing by a fixed ratio, as many as are needed to reach a depth.
   *
   * @param first thickness at the face [m]
   * @param ratio growth [-], 1 for even nodes
   * @param depth to be reached at least [m]
   */
  public static WallGrid graded(double first, double ratio, double depth) {
    Checks.within("first", first, 1e-9, 1.0, "m");
    Checks.within("ratio", ratio, 1.0, 3.0, "-");
    Checks.within("depth", depth, first, 1e3, "m");
    int n = 1;
    while (n < MOST && depthOf(first, ratio, n) < depth * (1.0 - 1e-9)) {
      n++;
    }
    return new WallGrid(grow(first, ratio, n), INWARDS * (ratio - 1.0), even(METAL_NODES));
  }

  /**
   * The same nodes with more behind them, growing as the last ones do, to a depth.
   *
   * @param depth to be reached at least [m]
   */
  public WallGrid deeper(double depth) {
    int n = thickness.length;
    double ratio = n > 1 ? thickness[n - 1] / thickness[n - 2] : 1.0;
    double reached = 0.0;
    for (double d : thickness) {
      reached += d;
    }
    double[] more = thickness;
    while (reached < depth * (1.0 - 1e-9) && more.length < MOST) {
      more = Arrays.copyOf(more, more.length + 1);
      more[more.length - 1] = more[more.length - 2] * ratio;
      reached += more[more.length - 1];
    }
    return new WallGrid(more, shift, metalShare);
  }

  /** The same mould nodes with another number of even metal nodes across the half gap. */
  public WallGrid withMetalNodes(int nodes) {
    Checks.within("nodes", nodes, 1, 10000, "-");
    return new WallGrid(thickness, shift, even(nodes));
  }

  /** The same mould nodes with metal nodes growing by a ratio from the wall to the middle. */
  public WallGrid withMetalNodes(int nodes, double ratio) {
    Checks.within("nodes", nodes, 1, 10000, "-");
    Checks.within("ratio", ratio, 1.0, 3.0, "-");
    double[] share = grow(1.0, ratio, nodes);
    double sum = 0.0;
    for (double s : share) {
      sum += s;
    }
    for (int i = 0; i < nodes; i++) {
      share[i] /= sum;
    }
    return new WallGrid(thickness, shift, share);
  }

  /** Number of mould nodes. */
  public int nodes() {
    return thickness.length;
  }

  /** Number of metal nodes of a thick place. */
  public int metalNodes() {
    return metalShare.length;
  }

  /** Thickness of a mould node, 0 at the face [m]. */
  public double thickness(int node) {
    return thickness[node];
  }

  /** Share of a node's thickness that lies between its inner side and its temperature [-]. */
  public double innerShare() {
    return 0.5 - shift;
  }

  /** Depth under the face at which a mould node carries its temperature [m]. */
  public double depth(int node) {
    double depth = innerShare() * thickness[node];
    for (int i = 0; i < node; i++) {
      depth += thickness[i];
    }
    return depth;
  }

  /** Thickness of a metal node as a share of the half gap, 0 at the wall [-]. */
  public double metalShare(int node) {
    return metalShare[node];
  }

  private static double depthOf(double first, double ratio, int n) {
    double depth = 0.0;
    double d = first;
    for (int i = 0; i < n; i++) {
      depth += d;
      d *= ratio;
    }
    return depth;
  }

  private static double[] grow(double first, double ratio, int n) {
    double[] d = new double[n];
    d[0] = first;
    for (int i = 1; i < n; i++) {
      d[i] = d[i - 1] * ratio;
    }
    return d;
  }

  private static double[] even(int n) {
    double[] share = new double[n];
    Arrays.fill(share, 1.0 / n);
    return share;
  }
}
