package lastinch.ui.words.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import lastinch.cases.plan.Plan;
import lastinch.cases.units.Dimension;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Runner;
import lastinch.solver.search.GatePlacement;
import lastinch.ui.words.Sentences;

/** The case file of a gate layout: based on the plan, with nothing but what differs. */
public final class GateFile {
  private final Sentences sentences;

  public GateFile(Sentences sentences) {
    this.sentences = Objects.requireNonNull(sentences, "sentences");
  }

  /**
   * The lines of the file.
   *
   * @param plan that it is based on
   * @param basedOn the plan's file as the new file names it
   * @param answer layout to write
   * @param factor from distances in the cavity to those that are typed [-]
   */
  public List<String> lines(Plan plan, String basedOn, GatePlacement.Answer answer, double factor) {
    PourCase job = answer.job();
    List<String> lines = new ArrayList<>();
    lines.add(sentences.say("gates.file.comment"));
    lines.add("format: last inch case 1");
    String title =
        sentences.say(
            "gates.file.title",
            "title",
            plan.title(),
            "number",
            Integer.toString(answer.layout().number()));
    lines.add("title: \"" + title.replace("\\", "").replace("\"", "'") + "\"");
    lines.add("based on: \"" + basedOn.replace('\\', '/') + "\"");
    lines.add("gating:");
    List<String> out =
        plan.pourCase().gating().gates().stream().map(g -> quoted(g.name())).toList();
    lines.add("  leave out: [" + String.join(", ", out) + "]");
    job.gating()
        .runner()
        .filter(Runner.Alongside.class::isInstance)
        .ifPresent(r -> lines.add(runner((Runner.Alongside) r)));
    lines.add("  gates:");
    for (Gate gate : job.gating().gates()) {
      lines.add(gate(gate, factor));
    }
    if (job.metal().melted() > plan.pourCase().metal().melted()) {
      lines.add("metal:");
      lines.add(
          "  melted: "
              + String.format(
                  Locale.ROOT,
                  "%.3f kg",
                  Dimension.MASS.unit("kg").orElseThrow().fromSi(job.metal().melted())));
      job.pour()
          .emptySeconds()
          .ifPresent(
              s -> {
                lines.add("pour:");
                lines.add(
                    "  crucible empties in: "
                        + String.format(Locale.ROOT, "%.3f s", s)
                        + band(job.pour()));
              });
    }
    return lines;
  }

  /** How unsure the seconds are, in percent as a person would type it. */
  private static String band(Pour pour) {
    if (pour instanceof Pour.Empties e && e.seconds().isOpen()) {
      double half = 0.5 * (e.seconds().high() - e.seconds().low()) / e.seconds().value();
      return String.format(Locale.ROOT, " +- %.0f %%", 100.0 * half);
    }
    return "";
  }

  private static String quoted(String name) {
    return "\"" + name.replace("\"", "") + "\"";
  }

  private static String runner(Runner.Alongside r) {
    String side = r.side() == Side.RIGHT ? "right side" : "left side";
    String fed = r.fedFrom().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    return "  runner: {along: "
        + side
        + ", away: "
        + milli(r.away(), 1.0)
        + ", wide: "
        + milli(r.width(), 1.0)
        + ", deep: "
        + milli(r.depth(), 1.0)
        + ", fed from: "
        + fed
        + "}";
  }

  private static String gate(Gate gate, double factor) {
    String where =
        gate.place() instanceof Place.At at
            ? "at: " + milli(at.distance(), factor) + ", side: " + side(at.side())
            : "into: boss";
    return "    - {name: "
        + gate.name()
        + ", "
        + where
        + ", wide: "
        + milli(gate.width(), 1.0)
        + ", thick: "
        + milli(gate.thickness(), 1.0)
        + ", long: "
        + milli(gate.length(), 1.0)
        + "}";
  }

  private static String side(Side side) {
    return side.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String milli(double metres, double factor) {
    String text = String.format(Locale.ROOT, "%.2f", 1e3 * factor * metres);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "") + " mm";
  }
}
