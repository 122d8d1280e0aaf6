/**
 * Alloys, mould media and flask steels as data files, each figure with its range, basis and source,
 * and a person's own materials files laid over them.
 */
package lastinch.cases.catalogue;
