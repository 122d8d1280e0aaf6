/** All sentences for people, made from typed values. The sentences themselves stand in one file. */
package lastinch.ui.words;
