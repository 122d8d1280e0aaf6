/**
 * Questions to a person at a terminal.
 *
 * <p>{@code PlanQuestions} asks for a plan, one question at a time; {@code PlanDraft} is the plan
 * that grows by the answers. After every answer the file holds a plan that can be poured, so a
 * person may leave at any time. {@code UnitQuestion} asks once for each model what one unit of its
 * file is.
 *
 * <p>Conventions: what was not answered is assumed, and the file says so. Where there is no
 * terminal nobody is asked, and what is missing is bad input. Questions and answers to wrong
 * answers are in the file of sentences.
 */
package lastinch.ui.cli.draft;
