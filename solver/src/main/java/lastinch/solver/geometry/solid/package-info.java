/** A drawn solid: how it lies, where it parts, what it holds, and its cuts from end to end. */
package lastinch.solver.geometry.solid;
