package lastinch.solver.numerics;

/**
 * Symmetric positive definite system of cells in rows, each coupled to the one before it in its row
 * and to one in the row below, plus a few unknowns that touch many cells; all couplings are
 * negative off the diagonal.
 *
 * <p>Conjugate gradients with an incomplete factorisation ({@link TwistedFactorisation}) for the
 * cells and the diagonal for the others; what cells of a patch of the grid have in common is solved
 * apart ({@link DeflationPreconditioner}), so that iterations hardly grow with the number of cells.
 * Everything is done in two halves of the cells, each in one fixed order, whether by one thread or
 * by two. Nothing is allocated after construction but for a small system of patches that has
 * outgrown its room. An instance belongs to one run.
 */
public final class FivePointMatrix {
  private final int capacity;
  private final int others;
  private final DeflationPreconditioner patches;
  private final TwistedFactorisation factor;
  private final WorkerPair team;
  final double[] diagonal;
  final double[] right;
  final double[] above;
  final double[] below;
  final int[] belowIndex;
  final int[] aboveIndex;
  private final double[] rhs;
  private final double[] weight;
  private final double[] x;
  private final double[] r;
  private final double[] z;
  private final double[] p;
  private final double[] q;
  final double[] otherDiagonal;
  private int cells;
  private int rest;
  private int links;
  final int[] linkCell;
  final int[] linkOther;
  final double[] linkSize;
  private double residual;

  /** First cell of the upper half. */
  private int half;

  private double step;
  private double[] in;
  private double[] out;
  private double lowerSum;
  private double upperSum;
  private final WorkerPair.Work products = this::product;
  private final WorkerPair.Work residuals = this::subtract;
  private final WorkerPair.Work advances = this::advance;
  private final WorkerPair.Work turns = this::turn;

  /**
   * Room for a system that is solved by one thread.
   *
   * @param capacity most cells
   * @param others most other unknowns
   * @param links most couplings between both
   * @param patches how many patches the grid is cut into
   */
  public FivePointMatrix(int capacity, int others, int links, int patches) {
    this(capacity, others, links, patches, WorkerPair.alone());
  }

  /**
   * Room for a system.
   *
   * @param capacity most cells
   * @param others most other unknowns
   * @param links most couplings between both
   * @param patches how many patches the grid is cut into
   * @param team who solves it
   */
  public FivePointMatrix(int capacity, int others, int links, int patches, WorkerPair team) {
    this.capacity = capacity;
    this.team = team;
    this.patches = new DeflationPreconditioner(capacity, others, patches, team);
    factor = new TwistedFactorisation(this, capacity);
    this.others = others;
    int n = capacity + others + 1;
    diagonal = new double[n];
    right = new double[n];
    above = new double[n];
    below = new double[n];
    belowIndex = new int[n];
    aboveIndex = new int[n];
    rhs = new double[n];
    weight = new double[n];
    x = new double[n];
    r = new double[n];
    z = new double[n];
    p = new double[n];
    q = new double[n];
    in = x;
    out = q;
    otherDiagonal = new double[others + 1];
    linkCell = new int[links];
    linkOther = new int[links];
    linkSize = new double[links];
  }

  /** Starts a new system without cells. */
  public void clear() {
    cells = 0;
    rest = 0;
    links = 0;
    patches.clear();
  }

  /**
   * Adds the next cell of the present row.
   *
   * @param diag diagonal, its couplings included
   * @param before size of the coupling to the cell added last, 0 for none
   * @param under size of the coupling to an earlier cell, 0 for none
   * @param belowCell that cell, any when there is none
   * @param value right-hand side
   * @param scale what a residual is multiplied by before it is compared with the tolerance
   * @param guess where the search starts
   * @param patch patch of the grid that the cell lies in; neighbouring patches should have near
   *     numbers
   */
  public void add(
      double diag,
      double before,
      double under,
      int belowCell,
      double value,
      double scale,
      double guess,
      int patch) {
    int k = cells;
    if (k >= capacity) {
      throw new IllegalArgumentException("more than " + capacity + " cells");
    }
    diagonal[k] = diag;
    right[k] = 0.0;
    above[k] = 0.0;
    below[k] = under;
    aboveIndex[k] = k;
    belowIndex[k] = k;
    if (before != 0.0) {
      right[k - 1] = before;
    }
    if (under != 0.0) {
      belowIndex[k] = belowCell;
      above[belowCell] = under;
      aboveIndex[belowCell] = k;
    }
    rhs[k] = value;
    weight[k] = scale;
    x[k] = guess;
    patches.add(k, patch, before == 0.0 ? k : k - 1, belowIndex[k]);
    cells++;
  }

  /**
   * Adds an unknown that touches many cells, after all cells.
   *
   * @param diag diagonal, its couplings included
   * @return its number among the others
   */
  public int addOther(double diag, double value, double scale, double guess) {
    if (rest >= others) {
      throw new IllegalArgumentException("more than " + others + " other unknowns");
    }
    int k = cells + rest;
    otherDiagonal[rest] = diag;
    rhs[k] = value;
    weight[k] = scale;
    x[k] = guess;
    return rest++;
  }

  /** Couples a cell and another unknown. */
  public void link(int cell, int other, double size) {
    linkCell[links] = cell;
    linkOther[links] = other;
    linkSize[links] = size;
    links++;
  }

  /** Number of cells added. */
  public int cells() {
    return cells;
  }

  /** Number of other unknowns added. */
  int others() {
    return rest;
  }

  int links() {
    return links;
  }

  /** Solution of a cell. */
  public double cell(int k) {
    return x[k];
  }

  /** Solution of another unknown. */
  public double other(int k) {
    return x[cells + k];
  }

  /** Largest scaled residual at the end. */
  public double residual() {
    return residual;
  }

  /**
   * Solves until no scaled residual is larger than the tolerance.
   *
   * @return iterations made; {@code most} when it did not get there
   */
  public int solve(double tolerance, int most) {
    half = factor.split();
    findResidual();
    if (residual <= tolerance) {
      return 0;
    }
    factor.factorise(team);
    patches.assemble(this, half);
    patches.begin(cells, r, x);
    findResidual();
    if (residual <= tolerance) {
      return 1;
    }
    double rz = precondition();
    System.arraycopy(z, 0, p, 0, cells + rest);
    for (int it = 1; it <= most; it++) {
      double pq = multiply(p, q);
      if (!(pq > 0.0)) {
        return residual <= tolerance ? it : most;
      }
      step = rz / pq;
      team.run(advances);
      residual = Math.max(lowerSum, upperSum);
      if (residual <= tolerance) {
        return it;
      }
      double next = precondition();
      step = next / rz;
      rz = next;
      team.run(turns);
    }
    return most;
  }

  private int from(int part) {
    return part == 0 ? 0 : half;
  }

  /** End of a half; the other unknowns belong to the upper one. */
  private int to(int part) {
    return part == 0 ? half : cells + rest;
  }

  private void take(int part, double value) {
    if (part == 0) {
      lowerSum = value;
    } else {
      upperSum = value;
    }
  }

  private void findResidual() {
    multiply(x, q);
    team.run(residuals);
    residual = Math.max(lowerSum, upperSum);
  }

  private void subtract(int part) {
    double largest = 0.0;
    int end = to(part);
    for (int k = from(part); k < end; k++) {
      double left = rhs[k] - q[k];
      r[k] = left;
      largest = Math.max(largest, Math.abs(left) * weight[k]);
    }
    take(part, largest);
  }

  /** A step along the direction. */
  private void advance(int part) {
    double[] value = x;
    double[] left = r;
    double[] along = p;
    double[] lost = q;
    double[] scale = weight;
    double a = step;
    double largest = 0.0;
    int end = to(part);
    for (int k = from(part); k < end; k++) {
      value[k] += a * along[k];
      double after = left[k] - a * lost[k];
      left[k] = after;
      double size = Math.abs(after) * scale[k];
      // a size that is no number is taken too, and no later one is larger
      largest = size <= largest || Double.isNaN(largest) ? largest : size;
    }
    take(part, largest);
  }

  /** The next direction. */
  private void turn(int part) {
    double[] along = p;
    double[] own = z;
    double b = step;
    int end = to(part);
    for (int k = from(part); k < end; k++) {
      along[k] = own[k] + b * along[k];
    }
  }

  /** Applies the preconditioner to the residual; returns the product of both. */
  private double precondition() {
    factor.apply(team, r, z);
    for (int o = 0; o < rest; o++) {
      int k = cells + o;
      z[k] = r[k] / otherDiagonal[o];
    }
    return patches.project(this, z, r);
  }

  /** Product with the matrix; returns the scalar product of both vectors. */
  private double multiply(double[] vector, double[] result) {
    in = vector;
    out = result;
    team.run(products);
    double product = lowerSum + upperSum;
    for (int o = 0; o < rest; o++) {
      double there = vector[cells + o];
      result[cells + o] = otherDiagonal[o] * there;
      product += result[cells + o] * there;
    }
    for (int i = 0; i < links; i++) {
      int k = linkCell[i];
      int o = cells + linkOther[i];
      double size = linkSize[i];
      result[k] -= size * vector[o];
      result[o] -= size * vector[k];
      product -= 2.0 * size * vector[o] * vector[k];
    }
    return product;
  }

  private void product(int part) {
    int start = from(part);
    int end = part == 0 ? half : cells;
    double[] from = in;
    double[] to = out;
    double[] own = diagonal;
    double[] east = right;
    double[] north = above;
    double[] south = below;
    int[] up = aboveIndex;
    int[] down = belowIndex;
    double before = start > 0 ? from[start - 1] : 0.0;
    double west = start > 0 ? east[start - 1] : 0.0;
    double product = 0.0;
    for (int k = start; k < end; k++) {
      double here = from[k];
      double ahead = east[k];
      double side = Math.fma(ahead, from[k + 1], west * before);
      double across = Math.fma(north[k], from[up[k]], south[k] * from[down[k]]);
      double t = own[k] * here - (side + across);
      to[k] = t;
      product = Math.fma(t, here, product);
      before = here;
      west = ahead;
    }
    take(part, product);
  }
}
