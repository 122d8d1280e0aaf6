/**
 * Pictures of a pour computed over the plane.
 *
 * <p>{@code PlaneMaps} are maps square by square: when metal came, how hot it was then, the gap,
 * the pressure, the gate it came through. {@code PlaneBrokenOut} is the piece as it would come out;
 * {@code FillingFilm} shows the filling moment by moment, as single frames and as one moving
 * picture. {@code PlaneSheet} puts the squares on paper to one scale, lying as the mould is poured.
 *
 * <p>Conventions: all of them read a {@code PlaneField} and draw with {@code
 * lastinch.ui.chart.paper}; glow where metal flows, hatching where it does not flow any more, paper
 * where nothing is. A film draws one frame at a time, so memory does not grow with its length.
 */
package lastinch.ui.chart.plane;
