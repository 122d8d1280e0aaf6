package lastinch.validation.pour;

/**
 * A length that somebody measured or reports, with the set-up it can be poured in here.
 *
 * @param name as on the page
 * @param alloy of the catalogue
 * @param celsius at which the metal goes in [degC]
 * @param medium of the catalogue
 * @param mould its temperature [degC]
 * @param width of the channel [m]
 * @param thickness of the channel [m]
 * @param leastHead least head that may have driven it [m]
 * @param mostHead greatest head [m]
 * @param from least length reported [mm]
 * @param to greatest length reported [mm]
 */
record MeasuredLength(
    String name,
    String alloy,
    double celsius,
    String medium,
    double mould,
    double width,
    double thickness,
    double leastHead,
    double mostHead,
    double from,
    double to) {
  /** Middle of what is reported, by ratio [mm]. */
  double measured() {
    return Math.sqrt(from * to);
  }
}
