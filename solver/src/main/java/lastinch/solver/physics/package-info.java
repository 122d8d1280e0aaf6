/**
 * Closures: one small class per law, each with its source and the range it holds in. SI units and
 * kelvin. All of them refuse NaN. They keep nothing and allocate nothing, so they may be called
 * inside time loops.
 */
package lastinch.solver.physics;
