/**
 * Charts of a pour, of studies and of models, to be written as PNG and SVG.
 *
 * <p>{@code ChartFiles} makes all charts of a poured plan, {@code StudyCharts} those of studies.
 * Each chart is a class in a room of this package that takes a poured plan or an answer and gives a
 * {@code Picture}: heading, message, caption, body. Rooms: {@code paper} (what is drawn with),
 * {@code pour}, {@code plane}, {@code study}, {@code model}.
 *
 * <p>Conventions: one sentence under each heading says what is to be seen in this plan. Readable in
 * a grey print and by colour-blind eyes, never by colour alone. A chart that has nothing to show is
 * not made.
 */
package lastinch.ui.chart;
