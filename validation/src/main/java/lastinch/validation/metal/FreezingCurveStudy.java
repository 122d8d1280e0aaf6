package lastinch.validation.metal;

import java.util.Optional;
import lastinch.cases.catalogue.Catalogue;
import lastinch.solver.material.FreezingCurve;
import lastinch.validation.Rows;
import lastinch.validation.Study;
import lastinch.validation.StudyCurve;
import lastinch.validation.StudyKind;

/** How much of an alloy is solid at a temperature. */
public final class FreezingCurveStudy implements Study {
  private final boolean straight;

  /** The study as it should be. */
  public FreezingCurveStudy() {
    this(false);
  }

  private FreezingCurveStudy(boolean straight) {
    this.straight = straight;
  }

  @Override
  public String title() {
    return "Freezing curves of the catalogue";
  }

  @Override
  public StudyKind kind() {
    return StudyKind.EXACT;
  }

  @Override
  public String source() {
    return "Copper-tin: Scheil 1942 along a line fitted through CDA figures at 11, 13 and 19 % tin;"
        + " sterling: computed from SGTE silver-copper data (Dinsdale 1991, Hayes 1986);"
        + " A356: Scheil, 7 % silicon";
  }

  @Override
  public String setting() {
    return "Alloys as shipped; temperatures below their own start of freezing";
  }

  @Override
  public String note() {
    return "Half of the last figure given. The curves were chosen for these figures, so this checks"
        + " that they are read and computed right, not that nature follows them. A straight line"
        + " between start and end is 0.08 to 0.14 off.";
  }

  @Override
  public void compare(Rows rows) {
    double[] below = {20.0, 30.0, 50.0, 200.9999};
    double[] bronze = {0.23, 0.31, 0.43, 0.75};
    StudyCurve first = rows.curve("Tin bronze", "below the start [K]", "solid share [-]");
    for (int i = 0; i < below.length; i++) {
      first.point(below[i], bronze[i], row(rows, "tin bronze", below[i], bronze[i]));
    }
    double[] degrees = {9.0, 19.0, 29.0, 49.0};
    double[] silver = {0.22, 0.39, 0.51, 0.66};
    StudyCurve second = rows.curve("Sterling silver", "below the start [K]", "solid share [-]");
    for (int i = 0; i < degrees.length; i++) {
      second.point(degrees[i], silver[i], row(rows, "sterling silver", degrees[i], silver[i]));
    }
    row(rows, "A356", 35.9999, 0.49);
  }

  private double row(Rows rows, String alloy, double below, double expected) {
    FreezingCurve own = Catalogue.builtIn().alloy(alloy).freezing();
    FreezingCurve curve =
        straight ? new FreezingCurve.Straight(own.liquidus(), own.endOfFreezing()) : own;
    double got = curve.solidFraction(own.liquidus() - below);
    String what = String.format(java.util.Locale.ROOT, "%s, %.0f K below", alloy, below);
    rows.within(what, "", expected, got, 0.005);
    return got;
  }

  @Override
  public Optional<Study> spoiled() {
    return Optional.of(new FreezingCurveStudy(true));
  }
}
