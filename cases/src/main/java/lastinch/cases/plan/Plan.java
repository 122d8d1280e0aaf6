package lastinch.cases.plan;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import lastinch.solver.casting.PourCase;

/**
 * A case file read to the end.
 *
 * @param title as typed
 * @param file the file that was asked for
 * @param digest SHA-256 over the text of all files that went into it, in hexadecimal
 * @param pourCase the job for the solver
 * @param want what the person asks of it
 * @param assumed values that were not known, in the order of the day
 * @param mouldWords the mould material as the case writes it
 * @param typed every value as typed, by the words that lead to it joined by {@code /}: {@code
 *     gating/gates/end gate/wide}
 * @param shop what the shop owns, when a shop file is named
 */
public record Plan(
    String title,
    Path file,
    String digest,
    PourCase pourCase,
    Want want,
    List<Assumed> assumed,
    String mouldWords,
    Map<String, String> typed,
    Optional<ShopFile> shop) {
  public Plan {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(digest, "digest");
    Objects.requireNonNull(pourCase, "pourCase");
    Objects.requireNonNull(want, "want");
    assumed = List.copyOf(assumed);
    typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
  }
}
