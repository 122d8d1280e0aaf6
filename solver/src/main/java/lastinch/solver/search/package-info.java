/**
 * Searches over levers: the smallest change that does it, the map of two levers, where gates go,
 * what to try next.
 *
 * <ul>
 *   <li>{@code SmallestChange}: each lever alone ({@code LeverSearch}, {@code LeverAnswer}), then
 *       pairs ({@code PairSearch}, {@code PairAnswer}), and the one to pick.
 *   <li>{@code OperatingMap}: a grid of runs over two levers, with the lines between outcomes
 *       ({@code MapLines}, {@code LineCrossing}).
 *   <li>{@code GatePlacement}: the best {@code GateLayout} of each number of gates.
 *   <li>{@code NextStep}: of a few changes that were poured ({@code NextAttempts}), the one that
 *       mends the worst {@code Trouble}.
 *   <li>{@code SureChange}: how far a lever has to go before a job fills often enough.
 *   <li>{@code GridSensitivity}: how far answers lie apart on squares a little finer or coarser.
 * </ul>
 *
 * <p>Every search takes a job and a {@code RunCache}, asks it for runs and returns an immutable
 * answer in which every value was poured; {@code usualRuns} says beforehand how many runs to
 * expect. Scan first, then halve between marks: heat to spare has steps and islands. What was
 * stopped returns what it had.
 */
package lastinch.solver.search;
