package lastinch.ui.words.pour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lastinch.solver.result.Gap;
import lastinch.solver.result.LapStretch;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.Spot;
import lastinch.solver.result.Stop;
import lastinch.ui.words.Figures;
import lastinch.ui.words.Page;
import lastinch.ui.words.Scene;

/** The piece laid along a ruler, drawn with plain characters. */
public final class RulerStrip {
  private static final int INDENT = 2;
  private static final int BOSS = 5;
  private static final int PIECE = 56;
  private static final char BLANK = ' ';

  private final Scene scene;
  private final int origin;
  private final char[] strip;
  private final List<String> keys = new ArrayList<>();

  private RulerStrip(Scene scene) {
    this.scene = scene;
    boolean boss = scene.pourCase().piece().boss().isPresent();
    this.origin = INDENT + 1 + (boss ? BOSS + 1 : 0);
    this.strip = new char[origin + PIECE + 1];
    Arrays.fill(strip, BLANK);
  }

  public static void add(Page page, Scene scene) {
    RulerStrip strip = new RulerStrip(scene);
    strip.drawBoss();
    strip.drawMetal();
    strip.drawKnot();
    page.line(strip.ruler());
    page.line(new String(strip.strip));
    if (scene.result().outcome() instanceof Outcome.Misrun && !strip.isBesideMetal()) {
      strip.keys.add("strip.key.blank");
    }
    List<String> words = new ArrayList<>();
    for (String name : strip.keys) {
      words.add(scene.say(name));
    }
    page.row("   ", words);
    page.blank();
  }

  private int column(double at) {
    double share = Math.max(0.0, Math.min(1.0, at / scene.length()));
    return origin + (int) Math.round(share * (PIECE - 1));
  }

  private void drawBoss() {
    strip[INDENT] = '[';
    strip[strip.length - 1] = '>';
    if (origin == INDENT + 1) {
      return;
    }
    Optional<PassageRecord> boss = scene.first(PassageRecord.Role.BOSS);
    int wet =
        boss.map(
                b -> {
                  int reached = 0;
                  for (int cell = 0; cell < b.size(); cell++) {
                    reached += b.reached(cell) ? 1 : 0;
                  }
                  return (int) Math.round((double) BOSS * reached / b.size());
                })
            .orElse(scene.result().reach() > 0.0 ? BOSS : 0);
    Arrays.fill(strip, INDENT + 1, INDENT + 1 + wet, '#');
    strip[origin - 1] = '|';
    if (wet > 0) {
      keys.add("strip.key.boss");
    }
  }

  private void drawMetal() {
    double reach = Math.min(scene.result().reach(), scene.length());
    if (!(reach > 0.0)) {
      return;
    }
    int end = isDecided() ? strip.length - 2 : column(reach);
    Arrays.fill(strip, origin, end + 1, '=');
    keys.add("strip.key.clean");
    drawLaps(end);
    if (!isDecided()) {
      lip("strip.key.still", end);
    }
    gaps().forEach(this::drawGap);
    if (isBesideMetal()) {
      Stop stop = scene.stop().orElseThrow();
      strip[column(scene.onRuler(stop.passage(), stop.at()))] = 'o';
      key("strip.key.hole");
    }
  }

  /** Whether the hole leaves metal along the whole ruler. */
  private boolean isBesideMetal() {
    return scene.isHole() && gaps().isEmpty();
  }

  private void drawLaps(int end) {
    boolean faint = false;
    boolean plain = false;
    for (LapStretch lap : scene.result().laps()) {
      if (scene.role(lap.passage()).orElse(PassageRecord.Role.PIECE) != PassageRecord.Role.PIECE) {
        continue;
      }
      boolean worst = lap.worstIndex() >= Remarks.PLAIN;
      plain |= worst;
      faint |= !worst;
      int from = Math.min(column(scene.onRuler(lap.passage(), lap.from())), end);
      int to = Math.min(column(scene.onRuler(lap.passage(), lap.to())), end);
      Arrays.fill(strip, from, to + 1, worst ? '+' : '-');
    }
    if (faint) {
      keys.add("strip.key.faint");
    }
    if (plain) {
      keys.add("strip.key.plain");
    }
  }

  /** Blank where there is no metal, with the lips of the metal that ends there. */
  private void drawGap(Gap gap) {
    int from = column(scene.onRuler(gap.passage(), gap.from()));
    int to = column(scene.onRuler(gap.passage(), gap.to()));
    boolean below = gap.from() > 0.0;
    boolean above = gap.to() < scene.length();
    int last = above ? Math.min(strip.length - 2, Math.max(to, from + 2)) : strip.length - 2;
    Arrays.fill(strip, from, last + 1, BLANK);
    if (below) {
      lip(lip(gap), from);
    }
    if (above) {
      strip[last] = scene.say("strip.key.back").charAt(0);
      key("strip.key.back");
    }
  }

  private void lip(String key, int end) {
    strip[Math.max(origin, end - 1)] = scene.say(key).charAt(0);
    strip[end] = scene.say(key).charAt(1);
    key(key);
  }

  private void key(String key) {
    if (!keys.contains(key)) {
      keys.add(key);
    }
  }

  private boolean isDecided() {
    return lastinch.solver.study.VerdictWord.isDecided(scene.result());
  }

  /** What stays empty of the limb that is drawn. */
  private List<Gap> gaps() {
    Optional<String> limb = scene.first(PassageRecord.Role.PIECE).map(PassageRecord::name);
    return scene.result().gaps().stream()
        .filter(g -> limb.filter(g.passage()::equals).isPresent())
        .toList();
  }

  private String lip(Gap gap) {
    return scene.result().stops().stream()
        .filter(s -> s.passage().equals(gap.passage()) && s.at() == gap.from())
        .findFirst()
        .map(
            s ->
                switch (s.reason()) {
                  case NO_METAL -> "strip.key.level";
                  case AIR -> "strip.key.ragged";
                  default -> "strip.key.rounded";
                })
        .orElse("strip.key.rounded");
  }

  private void drawKnot() {
    Optional<Spot> closed = scene.stop().flatMap(Stop::closedAt);
    if (closed.isEmpty()
        || scene.role(closed.get().passage()).orElse(PassageRecord.Role.GATE)
            != PassageRecord.Role.PIECE) {
      return;
    }
    strip[column(scene.onRuler(closed.get().passage(), closed.get().at()))] = 'X';
    keys.add("strip.key.knot");
  }

  /** Marks above the strip: both ends, where metal stopped, then round steps where they fit. */
  private String ruler() {
    Figures figures = scene.figures();
    char[] marks = new char[Page.WIDTH];
    Arrays.fill(marks, BLANK);
    if (origin > INDENT + 1) {
      put(marks, INDENT + 1, scene.say("strip.boss"));
    }
    put(marks, origin, "0");
    String end = figures.ruler(scene.length());
    put(marks, column(scene.length()) - figures.rulerBare(scene.length()).length() + 1, end);
    double reach = scene.result().reach();
    if (!isDecided() && reach > 0.0) {
      put(marks, column(reach), figures.rulerBare(reach));
    }
    for (Gap gap : gaps()) {
      for (double place : new double[] {gap.from(), gap.to()}) {
        double at = scene.onRuler(gap.passage(), place);
        put(marks, column(at), figures.rulerBare(at));
      }
    }
    double inUnit = 1.0 / figures.length(1.0);
    double step = step(scene.length() / inUnit / 4.0) * inUnit;
    for (double at = step; at < scene.length() - step / 2; at += step) {
      put(marks, column(at), figures.rulerBare(at));
    }
    return new String(marks);
  }

  private static double step(double wanted) {
    double power = Math.pow(10.0, Math.floor(Math.log10(wanted)));
    double best = power;
    for (double round : new double[] {1, 2, 2.5, 4, 5, 8, 10}) {
      if (Math.abs(round * power - wanted) < Math.abs(best - wanted)) {
        best = round * power;
      }
    }
    return best;
  }

  /** Writes a mark unless another is too near. */
  private static void put(char[] marks, int column, String text) {
    int from = Math.max(0, Math.min(column, marks.length - text.length()));
    for (int c = Math.max(0, from - 1); c < Math.min(marks.length, from + text.length() + 1); c++) {
      if (marks[c] != BLANK) {
        return;
      }
    }
    text.getChars(0, text.length(), marks, from);
  }
}
