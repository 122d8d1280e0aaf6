/** Cup, sprue, runners, gates, vents, feeders and overflows as they are described. */
package lastinch.solver.casting.gating;
