/**
 * Every word a case or shop file may hold: one row each, with its kind, unit, range and help line.
 * Checking, documentation and the nearest-word list all come from these rows.
 */
package lastinch.cases.schema;
