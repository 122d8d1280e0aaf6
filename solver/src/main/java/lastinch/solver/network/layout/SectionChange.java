package lastinch.solver.network.layout;

import lastinch.solver.physics.Losses;

/** Where a channel of one section goes over into one of another. */
final class SectionChange {
  private SectionChange() {}

  /** Losses on entering a section from another one, both ways. */
  static ChannelGraph.EndLosses losses(double before, double after, double bend) {
    double forward =
        after < before
            ? Losses.suddenContraction(before, after)
            : square(after / before) * Losses.suddenExpansion(before, after);
    double backward =
        after < before
            ? Losses.suddenExpansion(after, before)
            : square(after / before) * Losses.suddenContraction(after, before);
    return new ChannelGraph.EndLosses(forward + bend, backward + bend, 0.0, 0.0);
  }

  static double square(double x) {
    return x * x;
  }
}
