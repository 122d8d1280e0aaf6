/** Questions that draft a first plan. */
package lastinch.ui.cli.draft;
