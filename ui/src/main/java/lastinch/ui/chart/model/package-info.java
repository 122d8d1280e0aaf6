/**
 * Pictures of a model of a piece.
 *
 * <p>{@code GapPicture} draws maps of a model seen from the cope in steps of ink: how thick it is,
 * and where it freezes last. {@code LockHatch} hatches over a map where the piece locks its mould:
 * lines one way where it leans over the parting, crossed lines where sand is shut in.
 *
 * <p>Both read a {@code ModelLook}, as {@code lastinch shape} prints it: the hatched squares are
 * the ones that the words count. Thicker is darker; places are printed along the edges in the units
 * of the person.
 */
package lastinch.ui.chart.model;
