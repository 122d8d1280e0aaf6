/**
 * Rules by which a pour is judged, whichever solver filled.
 *
 * <p>Solvers hand in what they saw while metal flowed; they know no limit and grade nothing.
 *
 * <ul>
 *   <li>{@code Judge}: one method for each rule, from metal against room to tables left on a side;
 *       {@code heaviestFirst} gives the {@code Finding}s in the order of their weight.
 *   <li>{@code Laps}: stretches that show lap lines, from the lap index along passages.
 *   <li>{@code FlowLimitTally}: adds up by time what held the flow back, and what a full sprue
 *       could have passed.
 * </ul>
 *
 * <p>Conventions: a limit is a constant here with its source, or says that it is ours. Both solvers
 * call the same rule with the same meaning; what only one of them can see is a rule that the other
 * never calls. One judge belongs to one pour. Numbers in findings are SI; words are made in {@code
 * lastinch.ui.words}.
 */
package lastinch.solver.judge;
