/** Heat of the metal in the network, its fronts and edges. */
package lastinch.solver.network.heat;
