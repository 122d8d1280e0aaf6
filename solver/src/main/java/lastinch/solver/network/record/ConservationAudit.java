package lastinch.solver.network.record;

import lastinch.solver.network.flow.AirPockets;
import lastinch.solver.network.flow.Channel;
import lastinch.solver.network.flow.Lane;
import lastinch.solver.network.flow.NetworkState;
import lastinch.solver.network.heat.CellHeat;
import lastinch.solver.result.ConservationFigures;

/**
 * Books of a run, drawn from what is stored where, never from the flows that the solver used: metal
 * in crucible, cup, channels and in flight; heat in metal and in the mould's profiles; air in the
 * pockets.
 */
public final class ConservationAudit {
  private final NetworkState state;
  private final CellHeat heat;
  private final AirPockets air;
  private final double melted;

  public ConservationAudit(NetworkState state, CellHeat heat, AirPockets air, double melted) {
    this.state = state;
    this.heat = heat;
    this.air = air;
    this.melted = melted;
  }

  /** Metal in cup, channels, joints and in flight [m3]. */
  public double metalVolume() {
    double volume = state.cup.volume();
    for (Channel c : state.channels) {
      for (double w : c.wet) {
        volume += w;
      }
      volume += c.stream.totalVolume();
    }
    for (double landed : state.landedVolume) {
      volume += landed;
    }
    return volume;
  }

  /** Heat content of that metal [J], 0 for liquid at the liquidus. */
  double metalHeat() {
    double density = state.melt.density;
    double sum = density * state.cup.volume() * state.cupEnthalpy;
    for (Channel c : state.channels) {
      for (Lane lane : c.lanes) {
        for (double e : lane.heat) {
          sum += e;
        }
      }
      sum += density * c.stream.totalHeat();
    }
    for (double landed : state.landedHeat) {
      sum += density * landed;
    }
    return sum;
  }

  /**
   * Closes the books.
   *
   * @param extraMass metal that came in without passing the cup [kg]
   * @param workError of the mechanical account [-]
   */
  public ConservationFigures close(double extraMass, double workError) {
    double left = state.cup.left();
    double spilled = state.cup.spilled();
    double poured = melted - left + extraMass;
    double inMould = metalVolume() * state.melt.density;
    double metalError = poured > 0.0 ? (poured - inMould - spilled) / poured : 0.0;
    double carriedIn = poured * state.melt.enthalpyIn - state.spilledHeat;
    double inMetal = metalHeat();
    double inMould2 = heat.heldInMould();
    double toAir = heat.lostToAir();
    double reference = state.melt.table.latentHeat() + Math.abs(state.melt.enthalpyIn);
    double scale = Math.max(1e-12, poured) * reference;
    double heatError = state.melt.water ? 0.0 : (carriedIn - inMetal - inMould2 - toAir) / scale;
    double airError =
        air.initial() > 0.0 ? (air.initial() - air.held() - air.leaked()) / air.initial() : 0.0;
    return new ConservationFigures(
        metalError,
        heatError,
        air.isOn() ? airError : 0.0,
        workError,
        poured,
        spilled,
        left,
        carriedIn,
        inMetal,
        inMould2,
        toAir);
  }
}
