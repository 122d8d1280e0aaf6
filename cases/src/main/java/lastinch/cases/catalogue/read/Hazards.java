package lastinch.cases.catalogue.read;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lastinch.solver.material.Hazard;

/** What materials give off, as their files write it. */
public final class Hazards {
  /** Said of a material that gives off none of the others. */
  private static final String NONE = "none of these";

  private static final Map<String, Hazard> WORDS =
      Map.of(
          "zinc fume", Hazard.ZINC_FUME,
          "lead fume", Hazard.LEAD_FUME,
          "steam", Hazard.STEAM,
          "sulphur fume", Hazard.SULPHUR_FUME,
          "burnout fume", Hazard.BURNOUT_FUME,
          "binder smoke", Hazard.BINDER_SMOKE,
          "silica dust", Hazard.SILICA_DUST);

  /** Words for alloys. */
  public static final List<String> OF_ALLOYS = List.of("zinc fume", "lead fume", NONE);

  /** Words for mould media. */
  public static final List<String> OF_MOULDS =
      List.of("steam", "sulphur fume", "burnout fume", "binder smoke", "silica dust", NONE);

  private Hazards() {}

  /** The words of a list with commas. */
  public static List<String> words(String text) {
    return Arrays.stream(text.split(",", -1)).map(w -> w.strip().toLowerCase(Locale.ROOT)).toList();
  }

  /** What a material gives off. */
  public static List<Hazard> of(Entry entry) {
    return words(entry.wording(MaterialWords.GIVES_OFF)).stream()
        .filter(WORDS::containsKey)
        .map(WORDS::get)
        .toList();
  }
}
