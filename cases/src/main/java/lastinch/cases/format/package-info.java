/**
 * The text of a file: where every word and value stands, and what is wrong with it.
 *
 * <p>{@code SourceText} holds the text exactly as it is; {@code CaseText} reads it as one YAML 1.2
 * document of words, lists and texts and gives a {@code Node} with a {@code Span} for each. Where
 * the whole cannot be read, each block that starts at the left edge is read by itself, so that all
 * faults are told at once. {@code Problems} collects them, each a {@code Problem} by file, line and
 * column.
 *
 * <p>{@code TextPatch} changes single values and leaves comments, order and line ends as they are;
 * {@code Saving} puts a new text in a file's place, whole or not at all. Nothing here knows what a
 * word means. Tags, anchors, aliases and block scalars are refused; how much is read has limits.
 */
package lastinch.cases.format;
