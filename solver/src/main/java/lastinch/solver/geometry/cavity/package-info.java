/**
 * From the described job to the map of its cavity: sections swept, gating laid out, cells filled.
 */
package lastinch.solver.geometry.cavity;
