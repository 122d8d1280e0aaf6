package lastinch.validation;

import java.util.Optional;

/** One comparison of the product's code with a source. */
public interface Study {

  /** What is compared, as a heading. */
  String title();

  /** What it is held against. */
  StudyKind kind();

  /** Book, paper or page, and how its figures were obtained. */
  String source();

  /** The inputs. */
  String setting();

  /** Why the tolerance is what it is, and what a reader must know; may be empty. */
  String note();

  /** Runs the product and compares. */
  void compare(Rows rows);

  /**
   * The same study with a plainly wrong model in it, which must not agree; empty where only a trend
   * is looked at.
   */
  Optional<Study> spoiled();
}
