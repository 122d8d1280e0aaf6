package lastinch.solver.network.flow;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Pressures at joints that hold metal and in closed pockets of air, from the legs as they stand
 * linearised: what flows into a joint flows out of it, a pocket gives way by its stiffness.
 */
final class NodePressures {
  private final NetworkState state;
  private final AirPockets air;
  private final LiquidColumns legs;
  private final int joints;

  /** By joint, then pocket: row of its pressure in the system, -1 when no leg moves there. */
  private final int[] row;

  /** By node: what flows into a pocket now [m3/s]. */
  private final double[] inflow;

  private final DMatrixRMaj matrix;
  private final DMatrixRMaj right;
  private final DMatrixRMaj unknown;
  private final LinearSolverDense<DMatrixRMaj> solver;
  private double dt;
  private int rows;

  NodePressures(NetworkState state, AirPockets air, LiquidColumns legs) {
    this.state = state;
    this.air = air;
    this.legs = legs;
    joints = state.wet.length;
    int nodes = state.nodePressure.length;
    row = new int[nodes];
    inflow = new double[nodes];
    matrix = new DMatrixRMaj(nodes, nodes);
    right = new DMatrixRMaj(nodes, 1);
    unknown = new DMatrixRMaj(nodes, 1);
    solver = LinearSolverFactory_DDRM.chol(nodes);
    // its own room is made by the largest matrix so far: made here, none is made in the time loop
    solver.setA(CommonOps_DDRM.identity(nodes));
  }

  /** Whether a node's pressure is one of those solved for. */
  boolean isNumbered(int node) {
    return row[node] >= 0;
  }

  void forgetInflow() {
    for (int i = joints; i < inflow.length; i++) {
      inflow[i] = 0.0;
    }
  }

  /** Adds a leg's present flow to the pockets at its ends. */
  void noteInflow(LiquidColumn leg) {
    if (leg.from >= joints) {
      inflow[leg.from] -= leg.flow;
    }
    if (leg.to >= joints) {
      inflow[leg.to] += leg.flow;
    }
  }

  /** Numbers all nodes at which some leg moves. */
  void number() {
    rows = 0;
    for (int j = 0; j < row.length; j++) {
      row[j] = -1;
    }
    for (int i = 0; i < legs.count(); i++) {
      LiquidColumn leg = legs.get(i);
      if (leg.stands()) {
        continue;
      }
      if (leg.from != LiquidColumn.KNOWN && row[leg.from] < 0) {
        row[leg.from] = rows++;
      }
      if (leg.to != LiquidColumn.KNOWN && row[leg.to] < 0) {
        row[leg.to] = rows++;
      }
    }
  }

  /** Solves for the pressures of a step [s] and leaves them in the state. */
  void solve(double step) {
    dt = step;
    if (rows == 0) {
      return;
    }
    matrix.reshape(rows, rows);
    right.reshape(rows, 1);
    unknown.reshape(rows, 1);
    matrix.zero();
    right.zero();
    double largest = 1e-30;
    for (int i = 0; i < legs.count(); i++) {
      if (!legs.get(i).stands()) {
        assemble(legs.get(i));
        largest = Math.max(largest, legs.get(i).beta);
      }
    }
    for (int j = 0; j < row.length; j++) {
      if (row[j] < 0) {
        continue;
      }
      if (j >= joints) {
        givePocket(j);
      } else {
        matrix.add(row[j], row[j], 1e-13 * largest);
      }
    }
    if (!solver.setA(matrix)) {
      throw new NetworkBreakdown(
          state.time, "joints", "pressure", "the pressure system has no solution");
    }
    solver.solve(right, unknown);
    for (int j = 0; j < row.length; j++) {
      if (row[j] >= 0) {
        state.nodePressure[j] = unknown.get(row[j], 0);
      }
    }
  }

  /** A closed pocket's pressure rises with what flows into it, about the present inflow. */
  private void givePocket(int node) {
    int pocket = node - joints;
    double pressure = air.pressureWith(pocket, inflow[node], dt);
    double softness = 1.0 / air.stiffness(pocket);
    matrix.add(row[node], row[node], softness);
    right.add(row[node], 0, softness * pressure - inflow[node]);
  }

  private void assemble(LiquidColumn leg) {
    int a = leg.from == LiquidColumn.KNOWN ? -1 : row[leg.from];
    int b = leg.to == LiquidColumn.KNOWN ? -1 : row[leg.to];
    if (a >= 0) {
      matrix.add(a, a, leg.beta);
      right.add(a, 0, -leg.alpha);
    }
    if (b >= 0) {
      matrix.add(b, b, leg.beta);
      right.add(b, 0, leg.alpha);
    }
    if (a >= 0 && b >= 0) {
      matrix.add(a, b, -leg.beta);
      matrix.add(b, a, -leg.beta);
    }
  }
}
