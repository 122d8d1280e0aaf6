package lastinch.ui;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lastinch.solver.result.FillHistory;
import lastinch.solver.result.PassageRecord;

/** A course made by hand: metal stands where it has arrived and cools evenly from then on. */
public final class HandMadeCourse {
  private static final int MOMENTS = 6;
  private static final double FREEZES_AT = 1200.0;
  private static final double RANGE = 150.0;
  private static final double COOLING = 40.0;

  private HandMadeCourse() {}

  public static FillHistory of(List<PassageRecord> passages) {
    double end = 0.1;
    for (PassageRecord p : passages) {
      for (int i = 0; i < p.size(); i++) {
        end = p.reached(i) ? Math.max(end, p.arrivalTime(i)) : end;
      }
    }
    double[] time = new double[MOMENTS];
    double[] full = new double[MOMENTS];
    double[] warm = new double[MOMENTS];
    for (int k = 0; k < MOMENTS; k++) {
      time[k] = end * (k + 1) / MOMENTS;
      full[k] = 0.5;
      warm[k] = 1350.0;
    }
    Map<String, FillHistory.Held> held = new LinkedHashMap<>();
    List<String> gates = new ArrayList<>();
    List<double[]> passed = new ArrayList<>();
    for (PassageRecord p : passages) {
      held.put(p.name(), held(p, time));
      if (p.role() == PassageRecord.Role.GATE) {
        gates.add(p.name());
        double open = p.arrivalTime(p.size() - 1);
        double[] mass = new double[MOMENTS];
        for (int k = 0; k < MOMENTS; k++) {
          mass[k] = Double.isFinite(open) ? 0.2 * Math.max(0.0, time[k] - open) : 0.0;
        }
        passed.add(mass);
      }
    }
    return new FillHistory(
        time,
        full,
        warm,
        held,
        new FillHistory.Gates(gates, time, passed.toArray(double[][]::new)));
  }

  private static FillHistory.Held held(PassageRecord p, double[] time) {
    float[][] fill = new float[MOMENTS][p.size()];
    float[][] temperature = new float[MOMENTS][p.size()];
    float[][] solid = new float[MOMENTS][p.size()];
    for (int k = 0; k < MOMENTS; k++) {
      for (int i = 0; i < p.size(); i++) {
        if (p.arrivalTime(i) <= time[k]) {
          double kelvin = p.arrivalTemperature(i) - COOLING * (time[k] - p.arrivalTime(i));
          fill[k][i] = 1.0f;
          temperature[k][i] = (float) kelvin;
          solid[k][i] = (float) Math.max(0.0, Math.min(1.0, (FREEZES_AT - kelvin) / RANGE));
        }
      }
    }
    return new FillHistory.Held(fill, temperature, solid);
  }
}
