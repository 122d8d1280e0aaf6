package lastinch.solver.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lastinch.solver.filling.FilledState;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.Lane;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.heat.CellHeat;
import lastinch.solver.network.layout.ChannelGraph;
import lastinch.solver.network.layout.ChannelShape;
import lastinch.solver.network.layout.SectionRims;
import lastinch.solver.result.PassageRecord.Role;
import lastinch.solver.wall.WallColumns;

/** Lays what stands in the channels out as cells, the cup first. */
final class NetworkHandover {
  /** Less metal than this share of a cell is not handed over [-]; numerical, over rounding. */
  private static final double TRACE = 1e-9;

  /** Number of a cell that is not handed over. */
  private static final int NONE = -1;

  private final NetworkState state;
  private final CellHeat heat;
  private final WallColumns columns;
  private final FilledState.Builder cells;

  /** By thermal cell of the network: its number in the state, or {@link #NONE}. */
  private final int[] number;

  private int cup = NONE;

  NetworkHandover(NetworkRun run, double seconds) {
    state = run.state;
    heat = run.heat;
    columns = heat.columns(seconds);
    List<FilledState.Part> parts = new ArrayList<>();
    parts.add(new FilledState.Part("cup", Role.CUP));
    for (Channel c : state.channels) {
      parts.add(new FilledState.Part(c.shape.name, c.shape.role));
    }
    cells = new FilledState.Builder(state.time, state.melt.table, state.melt.density, parts);
    number = new int[state.columns];
    Arrays.fill(number, NONE);
  }

  FilledState state() {
    addCup();
    for (Channel c : state.channels) {
      for (int i = 0; i < c.shape.cells; i++) {
        if (c.wet[i] > TRACE * c.shape.volume[i] && c.wettedShare[i] > 0.0) {
          for (Lane lane : c.lanes) {
            addCell(c, lane, i);
          }
        }
      }
    }
    for (Channel c : state.channels) {
      for (Lane lane : c.lanes) {
        joinAlong(c, lane);
      }
      if (c.hasRims()) {
        joinAcross(c);
      }
    }
    for (int j = 0; j < state.ends.length; j++) {
      joinAt(j);
    }
    return cells.build();
  }

  private void addCup() {
    double volume = state.cup.volume();
    double wetted = heat.cupWall();
    if (volume <= 0.0 || wetted <= 0.0) {
      return;
    }
    double touched = state.cup.wettedShare() * state.cup.wall() / wetted;
    double height = state.jointHeight[ChannelGraph.CUP] + 0.5 * state.cup.level();
    cup = cells.cell(0, volume, state.cup.room(), height, 2.0 * volume / wetted, true);
    cells
        .heat(state.cupEnthalpy, 0.0, 0.0)
        .faces(wetted, touched, false, columns, heat.cupColumn());
  }

  private void addCell(Channel c, Lane lane, int i) {
    ChannelShape shape = c.shape;
    int column = lane.firstColumn + i;
    double height = shape.heightAt((i + 0.5) * shape.dx);
    double mass = c.mass(lane, i, state.melt.density);
    double volume = lane.share[i] * c.wet[i];
    double room = lane.share[i] * shape.volume[i];
    number[column] = cells.cell(1 + c.index, volume, room, height, lane.gap[i], isSurface(c, i));
    cells
        .heat(lane.heat[i] / mass, c.skinShare(lane, i, state.melt.density), lane.mostSolid[i])
        .faces(
            c.wettedShare[i] * lane.wall[i],
            c.fill(i) / c.wettedShare[i],
            heat.isThick(column),
            columns,
            column);
  }

  private void joinAlong(Channel c, Lane lane) {
    for (int i = 1; i < c.shape.cells; i++) {
      double area = 0.5 * (lane.share[i - 1] + lane.share[i]) * c.shape.faceArea[i];
      join(number[lane.firstColumn + i - 1], number[lane.firstColumn + i], area, c.shape.dx);
    }
  }

  /** Rims touch the middle at both sides. */
  private void joinAcross(Channel c) {
    Lane rims = c.lanes[Lane.RIMS];
    for (int i = 0; i < c.shape.cells; i++) {
      SectionRims section = c.shape.rims(i);
      double area = 2.0 * section.join() * c.shape.dx * c.fill(i);
      int one = number[c.middle.firstColumn + i];
      join(one, number[rims.firstColumn + i], area, section.breadth());
    }
  }

  /** Whether a front stands in a cell; a full feeder has one at its end. */
  private static boolean isSurface(Channel c, int i) {
    if (c.full) {
      return c.shape.role == Role.FEEDER && i == c.shape.cells - 1;
    }
    boolean a = c.hasPlugA() && c.shape.cellAt(c.positionA()) == i;
    return a || (c.hasPlugB() && c.shape.cellAt(c.positionB()) == i);
  }

  /**
   * Joins all ends at a joint to the widest of them, and the cup to the sprue; what has landed on a
   * joint without a way on belongs to that end.
   */
  private void joinAt(int joint) {
    int widest = NONE;
    for (int end : state.ends[joint]) {
      if (cellAt(end) != NONE && (widest == NONE || areaAt(end) > areaAt(widest))) {
        widest = end;
      }
    }
    for (int end : state.ends[joint]) {
      if (end != widest && widest != NONE) {
        double way = 0.5 * (state.channelOf(end).shape.dx + state.channelOf(widest).shape.dx);
        join(cellAt(end), cellAt(widest), Math.min(areaAt(end), areaAt(widest)), way);
      }
    }
    double landed = state.landedVolume[joint];
    if (landed > 0.0 && widest != NONE) {
      cells.add(cellAt(widest), landed, state.landedHeat[joint] / landed);
    }
    if (joint == ChannelGraph.CUP && widest != NONE) {
      double way = 0.5 * (state.channelOf(widest).shape.dx + state.cup.level());
      join(cup, cellAt(widest), areaAt(widest), way);
    }
  }

  private int cellAt(int end) {
    Channel c = state.channelOf(end);
    return number[c.firstCell + (NetworkState.isEndA(end) ? 0 : c.shape.cells - 1)];
  }

  private double areaAt(int end) {
    ChannelShape shape = state.channelOf(end).shape;
    return shape.faceArea[NetworkState.isEndA(end) ? 0 : shape.cells];
  }

  private void join(int one, int other, double area, double way) {
    if (one != NONE && other != NONE) {
      cells.join(one, other, area, way);
    }
  }
}
