package lastinch.solver.network.record;

import java.util.Arrays;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.result.FrontTrack;
import lastinch.solver.result.PassageRecord;

/** The path of the leading metal, sampled. */
final class FrontTrail {
  /** Time from one sample to the next [s]; chosen. */
  static final double EVERY = 2e-3;

  /** Most samples [-]; chosen, 16 s of them. */
  private static final int SAMPLES = 8192;

  private final NetworkState state;
  private final int[] trackChannel = new int[SAMPLES];
  private final double[] trackTime = new double[SAMPLES];
  private final double[] trackAt = new double[SAMPLES];
  private final double[] trackSpeed = new double[SAMPLES];
  private final double[] trackEnthalpy = new double[SAMPLES];
  private int samples;
  private double lastSample = Double.NEGATIVE_INFINITY;
  private int lastChannel = -1;

  FrontTrail(NetworkState state) {
    this.state = state;
  }

  /** Notes the leading metal when a sample is due. */
  void sample() {
    int leading = -1;
    double at = 0.0;
    double speed = 0.0;
    double enthalpy = 0.0;
    for (Channel c : state.channels) {
      if (c.shape.role == PassageRecord.Role.WELL) {
        continue;
      }
      if (c.stream.firstInFlight && c.stream.size() > 0) {
        leading = c.index;
        double fallen = Math.min(c.shape.length, c.stream.fallen(0));
        at = c.fallsTowardsB() ? fallen : c.shape.length - fallen;
        speed = c.stream.speed(0);
        enthalpy = c.stream.first.enthalpy;
      } else if (c.hasPlugB() && c.volumeB > 0.0) {
        leading = c.index;
        at = c.positionB();
        speed = c.frontB.speed;
        enthalpy = c.frontB.enthalpy;
      } else if (!c.full && c.hasPlugA() && c.volumeA > 0.0) {
        leading = c.index;
        at = c.positionA();
        speed = c.frontA.speed;
        enthalpy = c.frontA.enthalpy;
      }
    }
    boolean due = leading != lastChannel || state.time - lastSample >= EVERY;
    if (leading < 0 || !due || samples >= SAMPLES) {
      return;
    }
    trackChannel[samples] = leading;
    trackTime[samples] = state.time;
    trackAt[samples] = at;
    trackSpeed[samples] = speed;
    trackEnthalpy[samples] = enthalpy;
    samples++;
    lastSample = state.time;
    lastChannel = leading;
  }

  /**
   * The path up to now.
   *
   * @param offset by channel: its start on the ruler of its limb [m]
   */
  FrontTrack track(double[] offset) {
    String[] names = new String[samples];
    double[] temperature = new double[samples];
    double[] at = new double[samples];
    for (int i = 0; i < samples; i++) {
      Channel c = state.channels[trackChannel[i]];
      names[i] = c.shape.limb;
      at[i] = trackAt[i] + offset[c.index];
      temperature[i] = state.melt.table.temperature(trackEnthalpy[i]);
    }
    return new FrontTrack(
        names,
        Arrays.copyOf(trackTime, samples),
        at,
        Arrays.copyOf(trackSpeed, samples),
        temperature);
  }
}
