package lastinch.cases.plan;

import java.util.Objects;
import lastinch.cases.units.Dimension;
import lastinch.solver.material.Band;

/**
 * A value nobody knew, and the usual figure taken for it.
 *
 * @param path words of the case that lead to it, joined by {@code /}: {@code metal/reads}
 * @param dimension kind of value, for printing
 * @param band the figure in SI units, its credible range and where it comes from
 * @param said whether the case says {@code don't know}; else the word is absent
 * @param spread whether only the spread round a typed figure is a usual one
 */
public record Assumed(String path, Dimension dimension, Band band, boolean said, boolean spread) {
  public Assumed {
    Objects.requireNonNull(path, "path");
    Objects.requireNonNull(dimension, "dimension");
    Objects.requireNonNull(band, "band");
  }
}
