/**
 * Closures: one small class for each law, with its source ({@code SOURCE}), the range it holds in
 * and, where an implicit step wants it, its slope.
 *
 * <ul>
 *   <li>flow: {@link lastinch.solver.physics.Friction}, {@link lastinch.solver.physics.Losses},
 *       {@link lastinch.solver.physics.Capillary}, {@link lastinch.solver.physics.FreeFall}, {@link
 *       lastinch.solver.physics.SplashLimit}, {@link lastinch.solver.physics.Gravity};
 *   <li>freezing metal: {@link lastinch.solver.physics.Slurry}, {@link
 *       lastinch.solver.physics.ContactLaw}, {@link lastinch.solver.physics.LapIndex}, {@link
 *       lastinch.solver.physics.TaylorArisDispersion};
 *   <li>air: {@link lastinch.solver.physics.AirEscape}, {@link lastinch.solver.physics.DryAir}.
 * </ul>
 *
 * <p>SI units and kelvin. All of them refuse NaN and what lies outside their range by {@link
 * java.lang.IllegalArgumentException}: that is a slip of the caller, never of the person who
 * described the job. They keep nothing and allocate nothing, so they may be called inside time
 * loops. A published figure is never tuned; what is ours says so. Where both filling solvers use a
 * law it is the same class. Each has an exact test, one of its limits, and a plainly wrong model
 * that fails. How the laws enter: {@code solver/docs/network.md}, {@code solver/docs/plane.md},
 * {@code solver/docs/wall.md}.
 */
package lastinch.solver.physics;
