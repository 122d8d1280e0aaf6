/** The command line. */
package lastinch.ui.cli;
