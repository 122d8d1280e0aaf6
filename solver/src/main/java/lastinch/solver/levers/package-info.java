/** What a caster can change about a job, how far, and at what effort. */
package lastinch.solver.levers;
