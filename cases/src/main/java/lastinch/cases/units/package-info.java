/**
 * Values as people write them: a closed list of units for each kind of value, converted exactly.
 */
package lastinch.cases.units;
