/**
 * The column kernel: heat going from the metal into the mould normal to the wall, and through the
 * gap of thick places.
 *
 * <p>Heat conduction with enthalpy nodes, backward Euler; metal and mould are solved together, so a
 * step of any length is stable and keeps heat to rounding. {@link lastinch.solver.wall.WallColumns}
 * is the only door.
 */
package lastinch.solver.wall;
