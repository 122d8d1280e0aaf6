/**
 * Air ahead of the metal: cells without metal that hang together are one pocket of ideal gas at one
 * fixed temperature, which leaks through vents, the parting crack and the mould.
 *
 * <p>{@link lastinch.solver.charge.AirEscapeLaw} says what air can do in a job; {@link
 * lastinch.solver.plane.air.PlanePockets} finds the pockets of a moment, their pressure, stiffness
 * (room over absolute pressure) and leak with its slope. The projection of the flow solves the
 * pressure of every pocket together with that of the metal, and what leaked is booked afterwards.
 *
 * <p>Gas is kept cell by cell: pockets that split share it by volume, pockets that merge add
 * theirs, and metal that closes round a cell leaves a bubble in it. All gas, leaked gas included,
 * is kept to rounding. Laws of the leaks: {@link lastinch.solver.physics.AirEscape}. Mathematics:
 * {@code solver/docs/plane.md}, sections 1 and 4.
 */
package lastinch.solver.plane.air;
