/**
 * What every study of a job shares: runs that are made once, what a run says in short, goals, and
 * how far a run is from them.
 *
 * <p>A study asks the {@code RunCache}, which pours jobs through a {@code Pourer}, many at once,
 * and keeps of each a {@code RunSummary}: its value of every {@code Measure}. The summary is
 * compared with a {@code Goal}, heat to spare and what else is wanted of a measure; {@code
 * SignedMargin} is the one number by which searches and chance go unless asked otherwise: length to
 * spare when the piece fills, minus the length that is missing when it does not. {@code
 * VerdictWord} is the word for a pour and its good and bad ones, {@code LookOut} what else comes
 * with a pour that fills, {@code Trial} a value of a lever with the run it gave.
 *
 * <p>Conventions: a run is a function of its job alone, so answers are bitwise identical with any
 * number of threads, and a study that was stopped goes on where it was. Stopping throws {@code
 * RunCache.Cancelled}. Nothing here knows a solver; {@code lastinch.solver.run} does.
 */
package lastinch.solver.study;
