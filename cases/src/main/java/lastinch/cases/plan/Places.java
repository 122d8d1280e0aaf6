package lastinch.cases.plan;

import java.util.List;

/** Parts that a gate, vent or sprue may enter by their own name. */
final class Places {
  static final List<String> PARTS = List.of("boss", "cup", "runner");

  private Places() {}
}
