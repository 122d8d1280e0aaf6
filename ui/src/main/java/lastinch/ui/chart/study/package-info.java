/**
 * Pictures of studies.
 *
 * <ul>
 *   <li>{@code LeverRulers}: one ruler for each lever, every bar a run.
 *   <li>{@code RoomChart}: room to move over two levers, with {@code RoomCells} and {@code
 *       RoomWords}.
 *   <li>{@code ComparedFronts}: several plans by when metal got where; {@code ComparedWords} says
 *       it.
 *   <li>{@code SureChart}: ten dots, where metal stops, what makes pours differ.
 *   <li>{@code CausesChart}: causes against what was found; {@code HeatBlocks}: heat lost, on the
 *       places that took it.
 *   <li>{@code LayoutsChart}: layouts of gates on the piece, to one scale.
 * </ul>
 *
 * <p>Each takes the answer of a search and gives a {@code Picture} with one sentence; {@code
 * StudyCharts} lists them. Conventions: what is drawn was poured, and areas carry words or hatching
 * beside their tone.
 */
package lastinch.ui.chart.study;
