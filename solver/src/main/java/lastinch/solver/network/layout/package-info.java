/** Channels of the network: where each runs, its sections, and how they join. */
package lastinch.solver.network.layout;
