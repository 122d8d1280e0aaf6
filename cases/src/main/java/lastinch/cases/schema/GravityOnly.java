package lastinch.cases.schema;

import java.util.List;
import java.util.Optional;
import lastinch.cases.units.Saying;

/** Other ways to press metal in, which are named plainly instead of taken for a misspelling. */
final class GravityOnly {
  private static final List<String> OTHER_WAYS =
      List.of("sling", "centrifuge", "spin", "pressure", "injection", "vacuum table", "suction");

  private GravityOnly() {}

  static Optional<Saying> sentence(String key) {
    if (key.equals("vacuum")) {
      return Optional.of(Saying.of("wrong.onlyPoursGravityCovered"));
    }
    return OTHER_WAYS.stream().anyMatch(key::contains)
        ? Optional.of(Saying.of("wrong.onlyPoursGravityCoveredWord"))
        : Optional.empty();
  }
}
