/** What is said about studies. */
package lastinch.ui.words.study;
