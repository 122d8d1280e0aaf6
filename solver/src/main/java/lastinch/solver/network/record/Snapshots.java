package lastinch.solver.network.record;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.result.FillHistory;
import lastinch.solver.result.PassageRecord.Role;

/**
 * Notes the course of a run into room set aside before it: whenever the room is full every second
 * entry is dropped and the pace halved, so that the entries left are spread evenly over the run.
 */
public final class Snapshots {
  /** Moments that are kept of all cells [-]; chosen, for the room they take. */
  private static final int SLOTS = 32;

  /** Samples that are kept of what passed the gates [-]; chosen, for the room they take. */
  private static final int SAMPLES = 512;

  /**
   * First time from one moment or sample to the next, doubled when all are taken [s]; chosen, the
   * longest step.
   */
  private static final double FIRST_PACE = 5e-3;

  private final NetworkState state;
  private final double cupVolume;
  private final int cells;
  private final double[] time = new double[SLOTS + 1];
  private final double[] cupFill = new double[SLOTS + 1];
  private final double[] cupEnthalpy = new double[SLOTS + 1];
  private final float[] fill;
  private final double[] enthalpy;
  private final Channel[] gates;
  private final double[] sampleTime = new double[SAMPLES];
  private final double[] passed;
  private int slots;
  private int samples;
  private boolean told;
  private double pace = FIRST_PACE;
  private double samplePace = FIRST_PACE;

  public Snapshots(NetworkState state, double cupVolume) {
    this.state = state;
    this.cupVolume = cupVolume;
    cells = state.allCells;
    fill = new float[(SLOTS + 1) * cells];
    enthalpy = new double[(SLOTS + 1) * cells];
    List<Channel> found = new ArrayList<>();
    for (Channel c : state.channels) {
      if (c.shape.role == Role.GATE) {
        found.add(c);
      }
    }
    gates = found.toArray(Channel[]::new);
    passed = new double[SAMPLES * gates.length];
  }

  /** Notes what is due after a step; nothing more once the course was told. */
  public void endStep() {
    if (told) {
      return;
    }
    if (slots == 0 || state.time >= time[slots - 1] + pace) {
      if (slots == SLOTS) {
        thinOut();
      }
      note();
    }
    if (samples == 0 || state.time >= sampleTime[samples - 1] + samplePace) {
      if (samples == SAMPLES) {
        thinOutSamples();
      }
      sample();
    }
  }

  private void note() {
    time[slots] = state.time;
    cupFill[slots] = state.cupIsHeld ? 0.0 : Math.min(1.0, state.cup.volume() / cupVolume);
    cupEnthalpy[slots] = state.cupEnthalpy;
    int at = slots * cells;
    for (Channel c : state.channels) {
      for (int i = 0; i < c.shape.cells; i++) {
        fill[at + c.firstCell + i] = (float) c.fill(i);
        enthalpy[at + c.firstCell + i] = c.enthalpy(i, state.melt.density);
      }
    }
    slots++;
  }

  private void sample() {
    sampleTime[samples] = state.time;
    for (int g = 0; g < gates.length; g++) {
      passed[g * SAMPLES + samples] = gates[g].passed;
    }
    samples++;
  }

  private void thinOut() {
    int kept = 0;
    for (int k = 1; k < slots; k += 2) {
      time[kept] = time[k];
      cupFill[kept] = cupFill[k];
      cupEnthalpy[kept] = cupEnthalpy[k];
      System.arraycopy(fill, k * cells, fill, kept * cells, cells);
      System.arraycopy(enthalpy, k * cells, enthalpy, kept * cells, cells);
      kept++;
    }
    slots = kept;
    pace *= 2.0;
  }

  private void thinOutSamples() {
    int kept = 0;
    for (int k = 1; k < samples; k += 2) {
      sampleTime[kept] = sampleTime[k];
      for (int g = 0; g < gates.length; g++) {
        passed[g * SAMPLES + kept] = passed[g * SAMPLES + k];
      }
      kept++;
    }
    samples = kept;
    samplePace *= 2.0;
  }

  /** The course up to now, which is its last moment. */
  public FillHistory course() {
    told = true;
    if (slots == 0 || state.time > time[slots - 1]) {
      note();
    }
    double[] cupTemperature = new double[slots];
    for (int k = 0; k < slots; k++) {
      cupTemperature[k] = state.melt.table.temperature(cupEnthalpy[k]);
    }
    Map<String, List<Channel>> parts = new LinkedHashMap<>();
    for (Channel c : state.channels) {
      parts.computeIfAbsent(c.shape.limb, n -> new ArrayList<>()).add(c);
    }
    Map<String, FillHistory.Held> held = new LinkedHashMap<>();
    parts.forEach((name, channels) -> held.put(name, held(channels)));
    return new FillHistory(
        Arrays.copyOf(time, slots),
        Arrays.copyOf(cupFill, slots),
        cupTemperature,
        held,
        gatesSoFar());
  }

  private FillHistory.Held held(List<Channel> channels) {
    int count = 0;
    for (Channel c : channels) {
      count += c.shape.cells;
    }
    float[][] filled = new float[slots][count];
    float[][] temperature = new float[slots][count];
    float[][] solid = new float[slots][count];
    for (int k = 0; k < slots; k++) {
      int to = 0;
      for (Channel c : channels) {
        for (int i = 0; i < c.shape.cells; i++, to++) {
          int from = k * cells + c.firstCell + i;
          filled[k][to] = fill[from];
          if (fill[from] > 0.0f) {
            temperature[k][to] = (float) state.melt.table.temperature(enthalpy[from]);
            solid[k][to] = (float) state.melt.table.solid(enthalpy[from]);
          }
        }
      }
    }
    return new FillHistory.Held(filled, temperature, solid);
  }

  private FillHistory.Gates gatesSoFar() {
    List<String> names = new ArrayList<>();
    double[][] mass = new double[gates.length][samples];
    for (int g = 0; g < gates.length; g++) {
      names.add(gates[g].shape.name);
      for (int k = 0; k < samples; k++) {
        mass[g][k] = passed[g * SAMPLES + k] * state.melt.density;
      }
    }
    return new FillHistory.Gates(names, Arrays.copyOf(sampleTime, samples), mass);
  }
}
