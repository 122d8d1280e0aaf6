package lastinch.solver.plane.flow;

import lastinch.solver.casting.gating.Sprue;
import lastinch.solver.charge.MeltProperties;
import lastinch.solver.physics.Friction;

/** A round tapered sprue in slices of equal height, from its foot up. */
final class SprueShape {
  final int slices;
  final double tall;

  /** By slice: room [m3], wall [m2], curvature of the wall [1/m]. */
  final double[] room;

  final double[] wall;
  final double[] curvature;

  private final double footAcross;
  private final double topAcross;

  SprueShape(Sprue sprue, int slices) {
    this.slices = slices;
    tall = sprue.tall();
    footAcross = sprue.foot();
    topAcross = sprue.top();
    room = new double[slices];
    wall = new double[slices];
    curvature = new double[slices];
    for (int i = 0; i < slices; i++) {
      double a = across(tall * i / slices);
      double b = across(tall * (i + 1) / slices);
      room[i] = Math.PI / 12.0 * (a * a + a * b + b * b) * tall / slices;
      wall[i] = Math.PI * 0.5 * (a + b) * tall / slices;
      curvature[i] = 4.0 / (a + b);
    }
  }

  /** Diameter at a height over the foot [m]. */
  double across(double height) {
    return footAcross + (topAcross - footAcross) * height / tall;
  }

  /** Section at a height over the foot [m2]. */
  double section(double height) {
    double a = across(height);
    return Math.PI / 4.0 * a * a;
  }

  /** Section of the mouth in the cup's floor [m2]. */
  double mouth() {
    return Math.PI / 4.0 * topAcross * topAcross;
  }

  /** Length over section, summed over what stands up to a height [1/m]. */
  double inertia(double standing) {
    double sum = 0.0;
    for (int i = 0; i < slices; i++) {
      double length = Math.min(standing, tall * (i + 1) / slices) - tall * i / slices;
      double a = across(tall * (i + 0.5) / slices);
      sum += length > 0.0 ? length / (Math.PI / 4.0 * a * a) : 0.0;
    }
    return sum;
  }

  /** Pressure that friction takes over a standing height at a flow [m3/s]; [Pa]. */
  double friction(MeltProperties melt, double flow, double standing) {
    double middle = across(0.5 * standing);
    double mean = Math.PI / 4.0 * middle * middle;
    double speed = flow / mean;
    double viscosity = melt.flowingViscosity();
    double reynolds = melt.density * Math.abs(speed) * middle / viscosity;
    return melt.friction.overSpeed(reynolds, viscosity, middle, Friction.ROUND) * speed * standing;
  }
}
