/** Facade: one way to run a case, watch it and stop it. */
package lastinch.solver.run;
