package lastinch.solver.network.layout;

import java.util.List;

/**
 * Channels between joints. Joint 0 is the floor of the pouring cup. A channel end without a joint
 * is closed.
 *
 * @param channels geometry, in the order of the way
 * @param links where each channel's ends hang
 * @param joints number of joints
 * @param vents open holes
 */
public record ChannelGraph(
    List<ChannelShape> channels, List<Link> links, int joints, List<VentPoint> vents) {
  /** Stands for the joint of a closed end. */
  public static final int CLOSED = -1;

  /** Joint at the floor of the pouring cup. */
  public static final int CUP = 0;

  /**
   * Ends of a channel.
   *
   * @param jointA joint at face 0, {@link #CLOSED} for a closed end
   * @param jointB joint at the last face
   * @param losses loss coefficients of both ends
   */
  public record Link(int jointA, int jointB, EndLosses losses) {}

  /**
   * Loss coefficients on the velocity head in the channel's own end [-].
   *
   * @param intoA metal entering at face 0
   * @param outOfA metal leaving at face 0
   * @param intoB metal entering at the last face
   * @param outOfB metal leaving at the last face
   */
  public record EndLosses(double intoA, double outOfA, double intoB, double outOfB) {
    /** The same with what is lost on the way in times a factor [-]; leaving is Borda's, exact. */
    public EndLosses entering(double factor) {
      return new EndLosses(factor * intoA, outOfA, factor * intoB, outOfB);
    }
  }

  /**
   * A vent.
   *
   * @param channel index
   * @param at distance along it [m]
   * @param area [m2]
   */
  public record VentPoint(int channel, double at, double area) {}

  public int size() {
    return channels.size();
  }
}
