package lastinch.solver.numerics;

/**
 * Value carried over a face by a flow: upwind with a van Leer limited slope and the Courant
 * correction, second order on smooth profiles, no new extremes for Courant numbers up to 1.
 *
 * <p>Source: B. van Leer, J. Comput. Phys. 14 (1974) 361-370 (limiter); P. K. Sweby, SIAM J. Numer.
 * Anal. 21 (1984) 995-1011 (flux form).
 */
public final class VanLeerFlux {
  private VanLeerFlux() {}

  /**
   * Value at the face between {@code up} and {@code down}.
   *
   * @param upup value two cells upstream
   * @param up value in the cell upstream
   * @param down value in the cell downstream
   * @param courant share of the upstream cell that crosses in the step [-], 0 to 1
   */
  public static double face(double upup, double up, double down, double courant) {
    double behind = up - upup;
    double ahead = down - up;
    double product = behind * ahead;
    if (!(product > 0.0)) {
      return up;
    }
    return up + (1.0 - courant) * product / (behind + ahead);
  }
}
