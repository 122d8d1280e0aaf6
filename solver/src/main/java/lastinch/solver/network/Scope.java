package lastinch.solver.network;

import java.util.List;
import lastinch.solver.casting.PourCase;

/** What a network of channels cannot hold yet. */
public final class Scope {
  /** Parts beyond it. */
  public enum Part {
    STARTS_WET
  }

  private Scope() {}

  /** Parts of a case that this solver does not have, in the order of the case. */
  public static List<Part> missing(PourCase job) {
    return job.checking().startsWet().isEmpty() ? List.of() : List.of(Part.STARTS_WET);
  }
}
