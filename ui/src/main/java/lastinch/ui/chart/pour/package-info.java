/**
 * Pictures of one pour.
 *
 * <p>To scale: {@code MouldPicture} (the mould as it is poured, with what it holds at the end) and
 * {@code BrokenOutPicture} (the casting as it would come out). Along the way: {@code FrontChart}
 * and {@code ManyFrontsChart}, {@code RaceChart} (metal against mush), {@code HeatChart}, {@code
 * LapChart}. Against time: {@code GateChart}.
 *
 * <p>{@code MouldLayout} and {@code GatingLayout} lay a case out as bodies ({@code DrawnBar});
 * {@code Bodies} are the stretches of metal that hang together; {@code WayAxis} puts channels one
 * after the other, {@code Fronts} and {@code Race} read from the result when metal was where.
 *
 * <p>Conventions: each chart has a static {@code of} that takes the poured plan, sentences and
 * number formats, and returns a {@code Picture}, or an optional one where there may be nothing to
 * show. Nothing is computed here that the words could contradict.
 */
package lastinch.ui.chart.pour;
