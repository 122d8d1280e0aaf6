/** Answers for other programs: stable, documented by a schema beside the code, versioned. */
package lastinch.ui.json;
