/**
 * Case files read to the end: a file with all it is based on becomes a plan.
 *
 * <p>{@code CaseReader} is the door. {@code Chain} reads the file and those it is based on, each
 * checked by itself; {@code Merge} lays one over the other; {@code lastinch.cases.plan.check} holds
 * the whole against itself; {@code lastinch.cases.plan.assembly} builds the job. What comes out is
 * a {@code ReadResult}: a sound one with a {@code Plan}, or all problems at once.
 *
 * <p>A plan holds the {@code PourCase} of the solver, what was {@code Assumed} where the file says
 * nothing or that nobody knows, what is wanted ({@code Want}), what the shop owns ({@code
 * ShopFile}, and {@code OwnedThings} as values for levers), and a digest of all texts. {@code
 * Materials} is what a plan needs of the catalogue.
 *
 * <p>Conventions: bad input is a list of problems with places, never an exception. A title, the
 * format line and checking options are not inherited.
 */
package lastinch.cases.plan;
