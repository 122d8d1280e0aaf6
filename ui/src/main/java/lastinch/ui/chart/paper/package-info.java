/**
 * What pictures are drawn on and with: paper, pens, scales, glow.
 *
 * <ul>
 *   <li>{@code Paper} and {@code Picture}: a sheet with heading, message, body and caption; {@code
 *       Sheet}: axes and plots as on ruled paper.
 *   <li>{@code Look}, {@code Pens}, {@code Drawing}: inks, hatching, curves, marks; {@code Labels}
 *       moves words until they hide nothing.
 *   <li>{@code Glow}, {@code GlowScale}, {@code Swatches}: hot metal in the colour in which it
 *       glows, lightness rising evenly with temperature.
 *   <li>{@code View} and {@code Frame}: from where the mould is looked at, turned as it is poured,
 *       gravity down the page.
 * </ul>
 *
 * <p>Conventions: no chart sets an ink or places a label by itself. Inks differ in lightness as
 * well as in hue. Lengths on paper are in points of the sheet; places in the mould are in metres
 * ({@code Spot3}).
 */
package lastinch.ui.chart.paper;
