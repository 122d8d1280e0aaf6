package lastinch.cases.schema;

import java.util.List;
import java.util.Optional;

/** Other ways to press metal in, which are named plainly instead of taken for a misspelling. */
final class GravityOnly {
  private static final List<String> OTHER_WAYS =
      List.of("sling", "centrifuge", "spin", "pressure", "injection", "vacuum table", "suction");

  private GravityOnly() {}

  static Optional<String> sentence(String key) {
    if (key.equals("vacuum")) {
      return Optional.of(
          "Only pours by gravity are covered. Thin air outside the mould goes under mould as"
              + "  air behind");
    }
    return OTHER_WAYS.stream().anyMatch(key::contains)
        ? Optional.of("Only pours by gravity are covered; this word cannot be taken into account")
        : Optional.empty();
  }
}
