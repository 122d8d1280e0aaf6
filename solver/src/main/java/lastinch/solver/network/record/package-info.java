/** What is kept of a run of the network, and its conservation audit. */
package lastinch.solver.network.record;
