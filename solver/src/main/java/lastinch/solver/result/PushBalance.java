package lastinch.solver.result;

/**
 * What pushes and holds at a front [Pa], all positive as named.
 *
 * @param head weight of the metal standing above it
 * @param friction lost on the way
 * @param capillary needed to enter the gap
 * @param air pressure of the air ahead above that outside
 */
public record PushBalance(double head, double friction, double capillary, double air) {
  /** What is left over [Pa]; negative when it falls short. */
  public double spare() {
    return head - friction - capillary - air;
  }
}
