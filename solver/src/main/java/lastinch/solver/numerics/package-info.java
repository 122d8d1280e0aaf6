/**
 * Kernels on plain arrays, without a foundry word: the linear system of the pressure, implicit
 * diffusion along a line, limited transport, and work shared by two threads.
 *
 * <p>{@link lastinch.solver.numerics.FivePointMatrix} solves a symmetric positive definite system
 * of cells in rows, each coupled to its four neighbours, with a few unknowns that touch many cells,
 * by conjugate gradients. Its preconditioner has a fine half ({@link
 * lastinch.solver.numerics.TwistedFactorisation}) and a coarse one ({@link
 * lastinch.solver.numerics.DeflationPreconditioner}); a fault in either leaves the answer right and
 * shows in the number of iterations only, which a test pins. {@link
 * lastinch.solver.numerics.ImplicitDiffusion} is backward Euler along one line, {@link
 * lastinch.solver.numerics.VanLeerFlux} the value that a flow carries over a face.
 *
 * <p>{@link lastinch.solver.numerics.WorkerPair} runs work that falls into two parts, by one thread
 * or by two; parts and the order of sums are fixed, so both give bitwise the same.
 *
 * <p>Room is made once, nothing is allocated afterwards but for a coarse system that has outgrown
 * its own. Sums are formed in one fixed order. Mathematics: {@code solver/docs/plane.md}, section
 * 4.
 */
package lastinch.solver.numerics;
