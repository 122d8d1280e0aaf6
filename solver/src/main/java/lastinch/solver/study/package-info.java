/**
 * What every study of a job shares: runs asked for once, what a run says in short, goals and how
 * far a run is from them.
 */
package lastinch.solver.study;
