/**
 * Rules by which a pour is judged, whichever solver filled: findings with their limits, laps, what
 * held the flow back, what limits the margin. Solvers hand in what they saw.
 */
package lastinch.solver.judge;
