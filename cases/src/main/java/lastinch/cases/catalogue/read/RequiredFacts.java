package lastinch.cases.catalogue.read;

import java.util.List;
import lastinch.cases.format.Problems;

/** Whether a material has all it needs. */
public final class RequiredFacts {
  private RequiredFacts() {}

  public static void check(Entry entry, List<Property> schema, String what, Problems problems) {
    List<String> missing =
        schema.stream()
            .filter(p -> p.required() && !entry.facts().containsKey(p.word()))
            .map(Property::word)
            .toList();
    if (!missing.isEmpty()) {
      problems.add(
          entry.origin().span(),
          "wrong.newStillNeedsLean",
          what,
          entry.name(),
          String.join(", ", missing));
    }
  }
}
