/**
 * Sentences for people, made from typed values; those of what is wrong in a file come with it from
 * {@code cases}. The sentences themselves stand in one file.
 */
package lastinch.ui.words;
