package lastinch.solver.network;

import java.util.List;
import lastinch.solver.casting.PourCase;
import lastinch.solver.filling.Filling;
import lastinch.solver.filling.FillingSolver;
import lastinch.solver.filling.Need;
import lastinch.solver.network.layout.NetworkScope;

/** Fills a network of channels: plugs, pools and falling metal with real front positions. */
public final class NetworkSolver implements FillingSolver {
  @Override
  public List<Need> needs(PourCase job) {
    return NetworkScope.missing(job);
  }

  @Override
  public Filling begin(PourCase job) {
    return new NetworkRun(job);
  }
}
