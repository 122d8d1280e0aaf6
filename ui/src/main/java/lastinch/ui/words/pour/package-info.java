/** What is said about one pour. */
package lastinch.ui.words.pour;
