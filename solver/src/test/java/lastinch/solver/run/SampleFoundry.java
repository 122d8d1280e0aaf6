package lastinch.solver.run;

import lastinch.solver.material.Alloy;
import lastinch.solver.material.Band;
import lastinch.solver.material.Curve;
import lastinch.solver.material.FilmForming;
import lastinch.solver.material.FreezingCurve;
import lastinch.solver.material.MouldFamily;
import lastinch.solver.material.MouldMedium;

/** Metals and moulds with round figures for checks of whole pours; not recommended data. */
public final class SampleFoundry {
  private static final double ZERO = SampleJob.ZERO;

  private SampleFoundry() {}

  /** Round bronze of the checks: 8000 kg/m3, 450 J/(kg K), 190 kJ/kg straight over 1000 to 850. */
  public static Alloy roundBronze() {
    return lumped(new FreezingCurve.Straight(1000.0 + ZERO, 850.0 + ZERO), 1.2);
  }

  /** The same metal, but liquid down to 350 degC. */
  public static Alloy neverFreezes() {
    return lumped(new FreezingCurve.Isothermal(350.0 + ZERO), 1.2);
  }

  /** Liquid down to 350 degC and without surface tension. */
  public static Alloy neverFreezesNorHolds() {
    return lumped(new FreezingCurve.Isothermal(350.0 + ZERO), 0.0);
  }

  private static Alloy lumped(FreezingCurve freezing, double tension) {
    return new Alloy(
        "round metal",
        freezing,
        Band.typed(190e3),
        Band.typed(450.0),
        Band.typed(450.0),
        Band.typed(1e9),
        Band.typed(1e9),
        Band.typed(8000.0),
        0.0,
        Band.typed(8000.0),
        Band.typed(0.003),
        Band.typed(tension),
        Band.typed(Math.PI),
        Band.typed(1.0),
        FilmForming.NO,
        Band.typed(0.3),
        Band.typed(0.05),
        Band.typed(1423.0));
  }

  /** Much like tin bronze. */
  public static Alloy tinBronze() {
    FreezingCurve curve =
        new FreezingCurve.Scheil(999.0 + ZERO, 798.0 + ZERO, 1084.6 + ZERO, 4.06, 0.328, 0.45);
    return bronzeLike(curve, 75.0, 0.3);
  }

  /** Much like copper: freezes at one temperature. */
  public static Alloy pureMetal() {
    return bronzeLike(new FreezingCurve.Isothermal(1000.0 + ZERO), 75.0, 0.9);
  }

  private static Alloy bronzeLike(FreezingCurve curve, double conductivity, double flowStop) {
    return new Alloy(
        "bronze",
        curve,
        Band.typed(190e3),
        Band.typed(480.0),
        Band.typed(430.0),
        Band.typed(conductivity),
        Band.typed(95.0),
        Band.typed(7880.0),
        -0.82,
        Band.typed(8770.0),
        Band.typed(0.005),
        Band.typed(1.1),
        Band.typed(Math.toRadians(160.0)),
        Band.typed(1.0),
        FilmForming.NO,
        Band.typed(flowStop),
        Band.typed(0.055),
        Band.typed(1423.0));
  }

  /**
   * 0.6 W/(m K), 1500 kg/m3, 1000 J/(kg K) and a contact [W/(m2 K)] that no skin changes; tight.
   */
  public static MouldMedium roundMould(double contact) {
    return medium(Curve.constant(0.6), Curve.constant(1000.0), 1500.0, 0.0, contact, contact);
  }

  /** Much like oil-bonded sand. */
  public static MouldMedium sand() {
    return sand(1200.0, 85.0);
  }

  /** The same with other contact, liquid and across a gap [W/(m2 K)]. */
  public static MouldMedium sand(double contact, double gap) {
    return medium(
        Curve.of(new double[] {293.0, 773.0, 1273.0}, new double[] {0.7, 0.5, 0.9}),
        Curve.of(
            new double[] {293.0, 500.0, 700.0, 900.0, 1100.0},
            new double[] {740.0, 1003.0, 1137.0, 1131.0, 1164.0}),
        1550.0,
        1.2e-11,
        contact,
        gap);
  }

  /** Much like fired gypsum investment. */
  public static MouldMedium gypsum() {
    return medium(
        Curve.constant(0.45),
        Curve.of(new double[] {500.0, 700.0, 900.0}, new double[] {990.0, 1115.0, 1130.0}),
        1290.0,
        2.3e-13,
        1200.0,
        100.0);
  }

  /** Much like a steel mould: conducts well, lets no air through. */
  public static MouldMedium steel() {
    return medium(Curve.constant(40.0), Curve.constant(600.0), 7800.0, 0.0, 4000.0, 500.0);
  }

  private static MouldMedium medium(
      Curve conductivity,
      Curve specificHeat,
      double density,
      double permeability,
      double contact,
      double gap) {
    return new MouldMedium(
        "medium",
        MouldFamily.INVESTMENT,
        conductivity,
        Band.typed(1.0),
        specificHeat,
        Band.typed(density),
        0.45,
        Band.typed(permeability),
        Band.typed(contact),
        Band.typed(gap),
        Band.typed(0.4),
        Band.typed(0.9),
        Band.typed(2500.0));
  }
}
