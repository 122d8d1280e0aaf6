/**
 * What is said about one pour.
 *
 * <p>{@code PourText} is the whole answer, {@code ShortAnswer} the one screen of it; both are made
 * of the same parts: {@code VerdictLines} with its {@code VerdictSentence}, {@code RulerStrip},
 * {@code WhatWasShort}, {@code Remarks}, {@code TimeLine}, {@code GateTable}, {@code HowSure},
 * {@code AssumedText}, {@code Closing}. {@code FindingWords} makes half a sentence of each finding.
 *
 * <p>Every part takes a {@code Scene} and a {@code Page} and adds its lines, or none. Conventions:
 * what the short answer and the whole one say of a thing comes from one method, so that two answers
 * never contradict each other; where room is short, what matters least is left out first.
 */
package lastinch.ui.words.pour;
