package lastinch.validation.pour;

import lastinch.solver.filling.FilledState;

/**
 * The smallest phase that can follow a filling: metal that stands still gives heat to its columns
 * of mould through one contact and conducts it from cell to cell, explicitly.
 */
final class StillMetal {
  /** Contact between metal and mould [W/(m2 K)]; any figure does for an account of heat. */
  private static final double CONTACT = 500.0;

  private static final double STEP = 0.05;

  /** Share of a cell's heat per degree that a face may move in a step [-], for stability. */
  private static final double MOST = 0.1;

  /** Heat capacity for that limit [J/(kg K)]; less than any metal of the catalogue has. */
  private static final double LEAST_CAPACITY = 150.0;

  private final FilledState state;
  private final double[] gained;

  StillMetal(FilledState state) {
    this.state = state;
    gained = new double[state.size];
  }

  void cool(double seconds) {
    int steps = (int) Math.rint(seconds / STEP);
    for (int k = 0; k < steps; k++) {
      conduct();
      for (int c = 0; c < state.size; c++) {
        double mass = state.density * state.volume[c];
        double h = state.enthalpy[c] + gained[c] / mass;
        gained[c] = 0.0;
        state.enthalpy[c] =
            state.bank[c].exchange(
                state.column[c], STEP, CONTACT * state.touched[c], mass / state.wall[c], h);
      }
    }
  }

  private void conduct() {
    for (int f = 0; f < state.faces; f++) {
      int a = state.from[f];
      int b = state.to[f];
      double k =
          0.5
              * (state.metal.conductivity(state.enthalpy[a])
                  + state.metal.conductivity(state.enthalpy[b]));
      double lighter = state.density * Math.min(state.volume[a], state.volume[b]);
      double conductance =
          Math.min(k * state.area[f] / state.way[f], MOST * LEAST_CAPACITY * lighter / STEP);
      double heat =
          STEP
              * conductance
              * (state.metal.temperature(state.enthalpy[a])
                  - state.metal.temperature(state.enthalpy[b]));
      gained[a] -= heat;
      gained[b] += heat;
    }
  }
}
