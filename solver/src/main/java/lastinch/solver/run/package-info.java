/**
 * The one way to run a case: {@link lastinch.solver.run.DryPour} takes a solver, a job and how far
 * to go, and takes the pour through its phases.
 *
 * <p>Whoever runs a case asks the solver first what the case needs that is not there; to run it all
 * the same throws {@link lastinch.solver.run.UnsupportedCase}. A {@link
 * lastinch.solver.filling.RunObserver} is told of progress and cannot change the run; it is stopped
 * by a supplier that is polled once per step and ends as cancelled, with what there is. Runs have
 * nothing in common: any number may go on side by side, each in one thread of its caller's. Same
 * case, same bits.
 */
package lastinch.solver.run;
