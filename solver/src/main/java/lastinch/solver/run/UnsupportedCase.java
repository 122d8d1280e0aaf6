package lastinch.solver.run;

import java.util.List;
import lastinch.solver.filling.Need;

/** A sound case that needs parts of the solver that are not there. */
public final class UnsupportedCase extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient List<Need> needs;

  public UnsupportedCase(List<Need> needs) {
    super("needs " + needs);
    this.needs = List.copyOf(needs);
  }

  /** What is missing, in the order found. */
  public List<Need> needs() {
    return needs;
  }
}
