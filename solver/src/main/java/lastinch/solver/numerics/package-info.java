/** Kernels on plain arrays: implicit spreading along a line, limited transport. No foundry word. */
package lastinch.solver.numerics;
