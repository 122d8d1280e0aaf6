package lastinch.solver.network.record;

import java.util.ArrayList;
import java.util.List;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.layout.ChannelShape;
import lastinch.solver.result.PassageRecord;

/** Channels of one limb, boss or other passage, put back together as one record. */
final class PassageParts {
  private final FrontRecorder recorder;
  private final String name;
  private final List<Channel> channels = new ArrayList<>();

  PassageParts(FrontRecorder recorder, String name) {
    this.recorder = recorder;
    this.name = name;
  }

  void add(Channel c) {
    channels.add(c);
  }

  /** Column of figures of the record. */
  @FunctionalInterface
  private interface Figure {
    double of(Channel c, int i);
  }

  private double[] column(Figure figure) {
    int n = 0;
    for (Channel c : channels) {
      n += c.shape.cells;
    }
    double[] values = new double[n];
    int k = 0;
    for (Channel c : channels) {
      for (int i = 0; i < c.shape.cells; i++) {
        values[k++] = figure.of(c, i);
      }
    }
    return values;
  }

  /**
   * The record.
   *
   * @param lowest height of the lowest point [m]
   * @param stopTime end of the run [s]
   */
  PassageRecord join(double lowest, double stopTime) {
    FrontRecorder r = recorder;
    MeltProperties melt = r.state.melt;
    double length = 0.0;
    for (Channel c : channels) {
      length += c.shape.length;
    }
    ChannelShape first = channels.get(0).shape;
    return new PassageRecord(
        name,
        first.role,
        length,
        first.start,
        column((c, i) -> r.offset(c) + (i + 0.5) * c.shape.dx),
        column((c, i) -> c.shape.width[i]),
        column((c, i) -> c.shape.thickness[i]),
        column((c, i) -> c.shape.heightAt((i + 0.5) * c.shape.dx) - lowest),
        column((c, i) -> r.arrivalTime[c.firstCell + i]),
        column((c, i) -> reached(c, i) ? melt.table.temperature(enthalpy(c, i)) : 0.0),
        column((c, i) -> reached(c, i) ? melt.table.solid(enthalpy(c, i)) : 0.0),
        column((c, i) -> r.arrivalSpeed[c.firstCell + i]),
        column((c, i) -> reached(c, i) ? r.freezeTime[c.firstCell + i] : stopTime),
        column((c, i) -> wet(c, i) ? melt.table.temperature(now(c, i)) : mould(c, i)),
        column((c, i) -> wet(c, i) ? melt.table.solid(now(c, i)) : 0.0),
        column((c, i) -> r.lapIndex[c.firstCell + i]),
        gates());
  }

  private List<String> gates() {
    List<String> gates = new ArrayList<>();
    for (Channel c : channels) {
      for (int i = 0; i < c.shape.cells; i++) {
        gates.add(reached(c, i) ? recorder.gate(recorder.origin[c.firstCell + i]) : "");
      }
    }
    return gates;
  }

  private boolean reached(Channel c, int i) {
    return Double.isFinite(recorder.arrivalTime[c.firstCell + i]);
  }

  private double enthalpy(Channel c, int i) {
    return recorder.arrivalEnthalpy[c.firstCell + i];
  }

  private static boolean wet(Channel c, int i) {
    return c.wet[i] > 0.0;
  }

  private double now(Channel c, int i) {
    return c.enthalpy(i, recorder.state.melt.density);
  }

  private static double mould(Channel c, int i) {
    return c.shape.mouldTemperature[i];
  }
}
