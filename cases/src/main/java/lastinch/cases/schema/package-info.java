/**
 * Every word that a case or shop file may hold: one row each, with its kind, unit, range and help
 * line.
 *
 * <p>The rows are in {@code PieceWords}, {@code MouldWords}, {@code GatingWords}, {@code
 * MetalWords} and {@code ShopWords}; a {@code Part} is a group of rows, {@code Vocabulary} all of
 * them. {@code PartCheck} goes through a file by the rows and reads each value by its {@code Kind}
 * ({@code Single}, {@code Values}, {@code Compounds}, {@code Tables}). {@code Documentation} prints
 * the same rows for people; {@code NearestWord} finds what was probably meant.
 *
 * <p>Conventions: checking, documentation and the nearest-word list all come from the rows, so a
 * word is added once. A file is checked by itself; what is required and which materials there are
 * is judged later, in {@code lastinch.cases.plan.check}. A fault names a sentence ({@code
 * lastinch.cases.units.Saying}) that says what was written and what is allowed, in the unit that
 * was typed.
 */
package lastinch.cases.schema;
