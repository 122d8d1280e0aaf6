package lastinch.solver.material;

import java.util.Objects;

/**
 * Where a figure comes from.
 *
 * @param basis how well it is known
 * @param reference book, paper, standard or page; a plain phrase for practice and estimates
 * @param note what a reader must know beside it; may be empty
 */
public record Citation(Basis basis, String reference, String note) {
  /** For figures that a person typed. */
  public static final Citation TYPED = new Citation(Basis.TYPED, "typed in the file", "");

  public Citation {
    Objects.requireNonNull(basis, "basis");
    Objects.requireNonNull(reference, "reference");
    Objects.requireNonNull(note, "note");
  }
}
