/**
 * The column kernel: heat going from the metal into the mould normal to the wall, and through the
 * gap of thick places. Both filling solvers, the cooling of flasks and whatever follows the filling
 * use it.
 *
 * <p>{@link lastinch.solver.wall.WallColumns} is the only door. A caller opens a column where metal
 * first touches, widens it as more wall is wetted, and exchanges heat once a step: the column is
 * eliminated to {@code heat flow = offset + slope x metal temperature}, the metal's enthalpy is
 * solved on its table exactly, and the enthalpies of both are moved by the one flow between them.
 * {@link lastinch.solver.wall.MouldSide} holds the nodes of the mould, {@link
 * lastinch.solver.wall.MetalSide} those of thick metal, {@link lastinch.solver.wall.WallGrid} their
 * thicknesses, {@link lastinch.solver.wall.OuterAir} what lies behind a shell.
 *
 * <p>Node state is enthalpy, backward Euler in time: a step of any length is stable, stays between
 * metal and mould, and keeps heat to rounding. First order in time, second in node width. All
 * figures are per area of face; node 0 is at the face, for mould and metal alike. An instance
 * belongs to one run and allocates nothing after it was made; columns know nothing of each other.
 * {@code WallColumns.continued} gives a deeper copy for a longer time.
 *
 * <p>Mathematics, symbols and the test of each claim: {@code solver/docs/wall.md}.
 */
package lastinch.solver.wall;
