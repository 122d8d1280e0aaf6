/**
 * All sentences for people, made from typed values; what is wrong in a file comes from {@code
 * lastinch.cases} as the name of a sentence.
 *
 * <p>The sentences themselves are in one file, {@code words.properties} beside this package; {@code
 * Sentences} fills their places by name. {@code Figures} turns numbers into what a person reads off
 * a ruler, a meter or a scale, in millimetres or in inches. A {@code PouredPlan} is a plan with
 * what its pour found; {@code Scene} looks up in it what every part of an answer needs. {@code
 * Page} breaks lines for a terminal, {@code Table} is for pages.
 *
 * <p>{@code Care} and {@code Caution} are the cautions, by metal, mould and temperature alone;
 * {@code ProblemText} says what to put right in a file; {@code MaterialText}, {@code ShapeText} and
 * {@code WordsText} print materials, models and the words of a case.
 *
 * <p>Conventions: verdict first, what to do next last; plain characters only on a terminal; nothing
 * here decides anything. Answers on one pour are in {@code lastinch.ui.words.pour}, on many in
 * {@code lastinch.ui.words.study}.
 */
package lastinch.ui.words;
