/** What is not known of a pour, and what that does to its answer. */
package lastinch.solver.uncertainty;
