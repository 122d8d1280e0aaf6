package lastinch.validation.lengths;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.levers.JobParameter;
import lastinch.solver.material.Band;
import lastinch.solver.material.MouldFamily;
import lastinch.solver.study.RunCache;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The one open calibration: contact of liquid metal with sand and losses on entry and in turns,
 * both as factors inside the ranges that were derived for them, by least squares on the logarithm
 * of computed over measured of every row. Nothing else is moved.
 */
final class LengthCalibration {
  /** What contact of bronze with sand was derived to lie between, and its middle [W/(m2 K)]. */
  private static final double[] DERIVED = {1150.0, 3250.0};

  private static final double MIDDLE = 1900.0;

  /**
   * Ends of the factor on losses [-]: handbooks' lower figures, and a sum of 8 speed heads, the
   * most that was assumed for spirals, over the 2 of a basin and a bend.
   */
  private static final double[] TURNS = {0.7, 4.0};

  /** Step in the logarithm for slopes [-]; numerical: stops move by several millimetres. */
  private static final double STEP = 0.1;

  /** Gauss and Newton's steps [-]; chosen, the fourth moves nothing by 1 %. */
  private static final int STEPS = 5;

  /**
   * What a calibration comes to.
   *
   * @param contact of liquid bronze with sand over the middle of its derived range [-]; other
   *     metals with sand in proportion
   * @param turns factor on losses on entry and in turns [-]
   * @param residual logarithm of computed over measured, row by row [-]
   * @param covariance of the logarithms of both factors [-], 2 x 2
   */
  record Fitted(double contact, double turns, RealVector residual, RealMatrix covariance) {}

  private final RunCache runs;
  private final List<MeasuredLength> rows;

  LengthCalibration(RunCache runs, List<MeasuredLength> rows) {
    this.runs = runs;
    this.rows = rows;
  }

  /** A job with both factors at values. */
  static PourCase with(PourCase job, double contact, double turns) {
    PourCase changed = job;
    if (job.mould().medium().family() == MouldFamily.SAND) {
      Band usual = JobParameter.CONTACT_LIQUID.in(job).orElseThrow();
      double factor = contact * MIDDLE / MeasuredLengths.contactWithSand();
      changed = JobParameter.CONTACT_LIQUID.put(job, usual.at(factor * usual.value()));
    }
    return JobParameter.TURNS.put(changed, job.laws().turns().at(turns));
  }

  private double[] residual(double logContact, double logTurns) {
    double contact = StrictMath.exp(logContact);
    double turns = StrictMath.exp(logTurns);
    double[] best = new LengthPour(runs, job -> with(job, contact, turns)).best(rows);
    double[] logs = new double[best.length];
    for (int i = 0; i < best.length; i++) {
      logs[i] = StrictMath.log(best[i] / rows.get(i).measured());
    }
    return logs;
  }

  Fitted fit() {
    double[] at = {0.0, 0.0};
    double[][] ends = {logs(new double[] {DERIVED[0] / MIDDLE, DERIVED[1] / MIDDLE}), logs(TURNS)};
    double[] r = residual(at[0], at[1]);
    RealMatrix normal = null;
    for (int step = 0; step < STEPS; step++) {
      RealMatrix slopes = slopes(at, r, ends);
      normal = slopes.transpose().multiply(slopes);
      RealVector gradient = slopes.transpose().operate(new ArrayRealVector(r));
      RealVector move = new LUDecomposition(normal).getSolver().solve(gradient);
      for (int k = 0; k < 2; k++) {
        at[k] = Math.max(ends[k][0], Math.min(ends[k][1], at[k] - move.getEntry(k)));
      }
      r = residual(at[0], at[1]);
    }
    double squares = 0.0;
    for (double x : r) {
      squares += x * x;
    }
    RealMatrix inverse = new LUDecomposition(normal).getSolver().getInverse();
    RealMatrix covariance = inverse.scalarMultiply(squares / (r.length - 2));
    return new Fitted(
        StrictMath.exp(at[0]), StrictMath.exp(at[1]), new ArrayRealVector(r), covariance);
  }

  private RealMatrix slopes(double[] at, double[] r, double[][] ends) {
    RealMatrix slopes = new Array2DRowRealMatrix(r.length, 2);
    for (int k = 0; k < 2; k++) {
      double step = at[k] + STEP > ends[k][1] ? -STEP : STEP;
      double[] moved = residual(at[0] + (k == 0 ? step : 0.0), at[1] + (k == 1 ? step : 0.0));
      for (int i = 0; i < r.length; i++) {
        slopes.setEntry(i, k, (moved[i] - r[i]) / step);
      }
    }
    return slopes;
  }

  private static double[] logs(double[] ends) {
    return new double[] {StrictMath.log(ends[0]), StrictMath.log(ends[1])};
  }
}
