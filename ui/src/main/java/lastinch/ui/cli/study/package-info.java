/** Commands that ask a question of many pours. */
package lastinch.ui.cli.study;
