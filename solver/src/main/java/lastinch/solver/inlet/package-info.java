/** Hand, crucible and cup: how metal gets to the top of the sprue. Shared by every solver. */
package lastinch.solver.inlet;
