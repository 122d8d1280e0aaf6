/** The report of a dry pour: one page that holds everything, for screen and paper. */
package lastinch.ui.report;
