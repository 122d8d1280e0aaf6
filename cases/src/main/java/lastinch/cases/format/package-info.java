/** The text of a case file: where every word and value stands, and what is wrong with it. */
package lastinch.cases.format;
