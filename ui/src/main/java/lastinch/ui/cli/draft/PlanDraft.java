package lastinch.ui.cli.draft;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lastinch.cases.units.Dimension;
import lastinch.cases.units.QuantityText;

/** A plan that grows by answers; what was not answered is assumed, and says so. */
public final class PlanDraft {
  /** Weight of copper alloys [kg/m3], to one figure; only to guess how much to melt. */
  private static final double COPPER_ALLOY = 8800;

  /** Sprue of a flat mould, and how far that of an upright one overtops the tip [m]. */
  private static final double HEAD = 0.12;

  /** Cup, runner and what is lost, as the template has them [m3]. */
  private static final double CUP_AND_RUNNER = 6.0e-5;

  private static final double SPRUE_AREA = 2.0e-4;
  private static final Pattern CONDITION = Pattern.compile("\\?(\\w+) (.*)");
  private static final Pattern PLACE = Pattern.compile("\\{\\{(from )?(\\w+)}}");

  private final String template;
  private final Map<String, String> said = new LinkedHashMap<>();

  public PlanDraft(String template) {
    this.template = template;
  }

  private PlanDraft(PlanDraft other, String key, String answer) {
    this(other.template);
    said.putAll(other.said);
    said.put(key, answer);
  }

  /** The draft with one more answer. */
  PlanDraft with(String key, String answer) {
    return new PlanDraft(this, key, answer);
  }

  /** What is taken for a question that nobody has answered. */
  String usual(String key) {
    return switch (key) {
      case "length" -> "200 mm";
      case "wideStart" -> "30 mm";
      case "thickStart" -> "5 mm";
      case "wideMiddle" -> between("wideStart", 0.8);
      case "thickMiddle" -> between("thickStart", 0.8);
      case "wideTip" -> between("wideStart", 0.6);
      case "thickTip" -> between("thickStart", 0.6);
      case "section", "stands" -> "flat";
      case "boss" -> "no";
      case "bossLong" -> "30 mm";
      case "bossWide" -> "20 mm";
      case "bossDeep" -> "12 mm";
      case "mould" -> "bonded sand";
      case "temperature" -> is("mould", "gypsum investment") ? "600 degC" : "20 degC";
      case "alloy" -> "tin bronze";
      case "melted" -> weight();
      case "reads", "waiting" -> "don't know";
      case "pour" -> "2.5 s +- 30 %";
      default -> throw new IllegalArgumentException("no question " + key);
    };
  }

  /** The answer to a question, or what is taken for it. */
  String value(String key) {
    return said.containsKey(key) ? said.get(key) : usual(key);
  }

  boolean is(String key, String answer) {
    return value(key).equals(answer);
  }

  private double metres(String key) {
    return metresOf(value(key));
  }

  private static double metresOf(String typed) {
    return QuantityText.quantity(typed, Dimension.LENGTH).value().map(q -> q.si()).orElse(0.0);
  }

  private String between(String key, double part) {
    return mm(part * metres(key), 1);
  }

  private static String mm(double metres, int decimals) {
    String figure = String.format(Locale.ROOT, "%." + decimals + "f", 1e3 * metres);
    return figure.replaceAll("\\.0$", "") + " mm";
  }

  private double sprue() {
    return HEAD + (is("stands", "upright") ? metres("length") : 0.0);
  }

  private String weight() {
    double volume =
        metres("length") * metres("wideMiddle") * metres("thickMiddle")
            + SPRUE_AREA * sprue()
            + CUP_AND_RUNNER;
    if (is("boss", "yes")) {
      volume += metres("bossLong") * metres("bossWide") * metres("bossDeep");
    }
    return String.format(Locale.ROOT, "%.1f kg", 1.15 * COPPER_ALLOY * volume + 0.05);
  }

  private Set<String> conditions() {
    Set<String> all = new HashSet<>();
    boolean flask = is("mould", "gypsum investment");
    all.add(flask ? "flask" : "boxed");
    all.add(is("mould", "green sand") ? "green" : flask ? "flask" : "sand");
    all.add(is("boss", "yes") ? "boss" : "bare");
    all.add(value("stands"));
    return all;
  }

  private Map<String, String> reckoned() {
    double length = metres("length");
    Map<String, String> all = new HashMap<>();
    all.put("middle", mm(length / 2, 1));
    all.put("vent", mm(Math.max(length - 0.004, 0.0), 1));
    all.put("sprue", mm(sprue(), 0));
    all.put("gateThick", mm(metres("bossDeep") / 2, 1));
    double wide = Math.max(metres("wideStart"), Math.max(metres("wideMiddle"), metres("wideTip")));
    all.put("inside", mm(wide + 0.07, 0));
    all.put("flaskTall", mm(length + sprue() + metres("bossLong") + 0.08, 0));
    return all;
  }

  /**
   * The whole file.
   *
   * @param title as it may stand in a file
   * @param file its name
   * @param assumed word for what was not answered
   * @param yours word for what was
   */
  String text(String title, String file, String yours, String assumed) {
    Set<String> conditions = conditions();
    Map<String, String> reckoned = reckoned();
    reckoned.put("title", title);
    reckoned.put("file", file);
    StringBuilder text = new StringBuilder();
    for (String line : template.lines().toList()) {
      Matcher condition = CONDITION.matcher(line);
      boolean bound = condition.matches();
      if (!bound || conditions.contains(condition.group(1))) {
        String kept = bound ? condition.group(2) : line;
        text.append(
            PLACE
                .matcher(kept)
                .replaceAll(
                    place -> {
                      String key = place.group(2);
                      return Matcher.quoteReplacement(
                          place.group(1) != null
                              ? said.containsKey(key) ? yours : assumed
                              : reckoned.containsKey(key) ? reckoned.get(key) : value(key));
                    }));
        text.append('\n');
      }
    }
    return text.toString();
  }
}
