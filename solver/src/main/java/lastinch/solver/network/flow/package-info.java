/** Flow of metal and air through the network. */
package lastinch.solver.network.flow;
