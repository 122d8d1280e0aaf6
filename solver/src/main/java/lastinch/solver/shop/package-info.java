/**
 * Shop arithmetic before the pour: heat lost over the lip, flask cooling on the way from the kiln.
 */
package lastinch.solver.shop;
