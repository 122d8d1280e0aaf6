package lastinch.ui.words;

import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.Finding;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Spot;
import lastinch.solver.result.Stop;
import lastinch.ui.words.study.GlanceWords;

/** A poured plan seen through a caster's words: what every part of the answer looks up. */
public final class Scene {
  /** Standard gravity [m/s2], third general conference on weights and measures, 1901. */
  public static final double GRAVITY = 9.80665;

  /**
   * Metal that goes in with less than this above its start of freezing is cold for thin work [K];
   * common practice asks for 100 and more, no source.
   */
  private static final double COLD = 30.0;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;

  public Scene(PouredPlan plan, Sentences sentences, Figures figures) {
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
  }

  /** The same plan as it comes out on another day. */
  public Scene on(PourResult day) {
    return new Scene(plan.on(day), sentences, figures);
  }

  public PouredPlan plan() {
    return plan;
  }

  public PourCase pourCase() {
    return plan.pourCase();
  }

  public PourResult result() {
    return plan.result();
  }

  public Figures figures() {
    return figures;
  }

  public Sentences sentences() {
    return sentences;
  }

  public GlanceWords glances() {
    return new GlanceWords(sentences, figures);
  }

  boolean knows(String key) {
    return sentences.has(key);
  }

  public String say(String key, String... namesAndValues) {
    return sentences.say(key, namesAndValues);
  }

  /** Length of the piece on its own ruler [m]. */
  public double length() {
    return pourCase().piece().limbs().get(0).length();
  }

  /** The front whose standing decides the verdict. */
  public Optional<Stop> stop() {
    return result().stops().stream().findFirst();
  }

  /** What stays empty of the piece, in words. */
  public Gaps gaps() {
    return new Gaps(result(), sentences, figures);
  }

  public Optional<PassageRecord> channel(String name) {
    return result().passages().stream().filter(p -> p.name().equals(name)).findFirst();
  }

  public Optional<PassageRecord> first(PassageRecord.Role role) {
    return result().passages().stream().filter(p -> p.role() == role).findFirst();
  }

  public Optional<PassageRecord.Role> role(String channel) {
    return channel(channel).map(PassageRecord::role);
  }

  public Optional<Finding> finding(Finding.Kind kind) {
    return result().findings().stream().filter(f -> f.kind() == kind).findFirst();
  }

  /** Whether metal fell to the tip first and filled the piece from there. */
  public boolean fromTip() {
    Optional<PassageRecord> piece = first(PassageRecord.Role.PIECE).filter(p -> p.size() > 1);
    if (piece.isEmpty()) {
      return false;
    }
    PassageRecord p = piece.get();
    int tip = p.size() - 1;
    return p.reached(tip) && (!p.reached(0) || p.arrivalTime(tip) < p.arrivalTime(0));
  }

  /** Whether metal that flows over the plane reaches both ends and leaves a hole. */
  public boolean isHole() {
    return plan.field().isPresent()
        && result().outcome() instanceof Outcome.Misrun
        && stop().isPresent()
        && (result().reach() >= 0.999 * length() || gaps().anyHole());
  }

  /** Distance on the piece's ruler [m] of a place in a channel. */
  public double onRuler(String channel, double at) {
    return channel(channel).map(p -> p.start() + at).orElse(at);
  }

  /** A place in words: {@code at 214 mm}, {@code in the runner, 40 mm along}. */
  public String place(Spot spot) {
    PassageRecord.Role role = role(spot.passage()).orElse(PassageRecord.Role.PIECE);
    return switch (role) {
      case PIECE -> onLimb(spot.passage(), figures.ruler(onRuler(spot.passage(), spot.at())));
      case BOSS -> say("place.boss");
      default -> say("place.channel", "channel", spot.passage(), "at", figures.ruler(spot.at()));
    };
  }

  /** A share of the heat [-] to spare, in words where a bare nought would mislead. */
  public String heatToSpare(double share) {
    return glances().spare(share);
  }

  private String onLimb(String limb, String at) {
    return hasLimbs() ? say("place.limb", "limb", limb, "at", at) : say("place.piece", "at", at);
  }

  /** Whether a distance alone leaves open which part of the piece is meant. */
  public boolean hasLimbs() {
    return result().passages().stream()
            .filter(p -> p.role() == PassageRecord.Role.PIECE && p.size() > 1)
            .count()
        > 1;
  }

  /** How far above the start of its freezing the metal goes in [K]. */
  public double superheat() {
    return result().entered() - pourCase().metal().alloy().liquidus();
  }

  /** Whether the metal went in too cold for any way of pouring to help much. */
  public boolean wentInCold() {
    return superheat() < COLD;
  }

  /** A pressure [Pa] as the height of liquid metal that makes it [m]. */
  public double asHeight(double pressure) {
    return pressure
        / (pourCase().metal().alloy().density(pourCase().metal().alloy().liquidus()) * GRAVITY);
  }

  /** Things in a row: {@code a, b and c}. */
  public String list(List<String> things) {
    if (things.size() == 1) {
      return things.get(0);
    }
    return say(
        "list.and",
        "first",
        String.join(", ", things.subList(0, things.size() - 1)),
        "last",
        things.get(things.size() - 1));
  }
}
