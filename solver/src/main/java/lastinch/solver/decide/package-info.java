/** From results to decisions: how far an answer holds, what would change it, what to try next. */
package lastinch.solver.decide;
