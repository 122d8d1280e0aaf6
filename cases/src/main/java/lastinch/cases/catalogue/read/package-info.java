/** Reading of the files of metals and mould media. */
package lastinch.cases.catalogue.read;
