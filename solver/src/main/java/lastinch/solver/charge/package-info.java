/**
 * What comes into the mould and what it meets there, once for both filling solvers.
 *
 * <p>{@link lastinch.solver.charge.MeltProperties} holds what of the metal stays the same through a
 * run; {@link lastinch.solver.charge.MouldTemperature} the mould as it stands when metal comes;
 * {@link lastinch.solver.charge.MouldColumns} makes the columns of mould behind any wall. Laws that
 * may be exchanged are objects, chosen before the time loop by {@code Closures}: a new correlation
 * is a class of {@code physics} and one line there. Equations: {@code solver/docs/network.md},
 * {@code plane.md} and {@code wall.md}.
 */
package lastinch.solver.charge;
