package lastinch.cases.plan.assembly;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lastinch.cases.format.Node;
import lastinch.cases.format.Problems;
import lastinch.cases.plan.Materials;
import lastinch.cases.schema.NearestWord;
import lastinch.cases.schema.Values;
import lastinch.cases.units.Saying;

/** Judges names of metals and mould media. */
public final class MaterialNames {
  private final Materials materials;
  private final Problems problems;

  public MaterialNames(Materials materials, Problems problems) {
    this.materials = materials;
    this.problems = problems;
  }

  /** The name of a metal, as it stands in a file. */
  public void alloy(Node node) {
    judge(node, true);
  }

  /** The name of a mould medium, as it stands in a file. */
  public void medium(Node node) {
    judge(node, false);
  }

  private void judge(Node node, boolean alloy) {
    Optional<String> name = Values.text(node, new Problems());
    if (name.isEmpty()) {
      return;
    }
    if (Values.isUnknown(node)) {
      problems.add(
          node.span(),
          alloy
              ? Saying.of("wrong.metalKnownTakeNearest")
              : Saying.of("wrong.mouldKnownSeeLastinch"));
      return;
    }
    if (alloy && materials.alloy(name.get()).isPresent()) {
      materials
          .alloyNote(name.get())
          .ifPresent(n -> problems.note(node.span(), "wrong.asWritten", n));
      return;
    }
    if (!alloy && materials.medium(name.get(), Materials.Make.NOT_SAID).isPresent()) {
      return;
    }
    List<String> spellings = alloy ? materials.alloyAliases() : materials.mediumAliases();
    List<String> names = alloy ? materials.alloyNames() : materials.mediumNames();
    Optional<String> near =
        NearestWord.of(
            name.get().toLowerCase(Locale.ROOT),
            spellings.stream().map(s -> s.toLowerCase(Locale.ROOT)).toList());
    Saying what = alloy ? Saying.of("wrong.noSuchMetalKnown") : Saying.of("wrong.noSuchMouldKnown");
    if (near.isPresent()) {
      problems.add(node.span(), what, near.get());
    } else {
      problems.add(node.span(), "wrong.thereAre", what, String.join(", ", names));
    }
  }
}
