/**
 * Searches over levers: the smallest change, the map of two levers, where gates go, what to try
 * next.
 */
package lastinch.solver.search;
