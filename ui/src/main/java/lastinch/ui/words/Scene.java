package lastinch.ui.words;

import java.util.Optional;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.Finding;
import lastinch.solver.result.Outcome;
import lastinch.solver.result.PassageRecord;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.Spot;
import lastinch.solver.result.Stop;

/** A poured plan seen through a caster's words: what every part of the answer looks up. */
final class Scene {
  /** Standard gravity [m/s2], third general conference on weights and measures, 1901. */
  static final double GRAVITY = 9.80665;

  /**
   * Metal that goes in with less than this above its start of freezing is cold for thin work [K];
   * common practice asks for 100 and more, no source.
   */
  private static final double COLD = 30.0;

  private final PouredPlan plan;
  private final Sentences sentences;
  private final Figures figures;

  Scene(PouredPlan plan, Sentences sentences, Figures figures) {
    this.plan = plan;
    this.sentences = sentences;
    this.figures = figures;
  }

  /** The same plan as it comes out on another day. */
  Scene on(PourResult day) {
    return new Scene(plan.on(day), sentences, figures);
  }

  PouredPlan plan() {
    return plan;
  }

  PourCase pourCase() {
    return plan.pourCase();
  }

  PourResult result() {
    return plan.result();
  }

  Figures figures() {
    return figures;
  }

  Sentences sentences() {
    return sentences;
  }

  GlanceWords glances() {
    return new GlanceWords(sentences, figures);
  }

  boolean knows(String key) {
    return sentences.has(key);
  }

  String say(String key, String... namesAndValues) {
    return sentences.say(key, namesAndValues);
  }

  /** Length of the piece on its own ruler [m]. */
  double length() {
    return pourCase().piece().limbs().get(0).length();
  }

  /** The front whose standing decides the verdict. */
  Optional<Stop> stop() {
    return result().stops().stream().findFirst();
  }

  /** What stays empty of the piece, in words. */
  Gaps gaps() {
    return new Gaps(result(), sentences, figures);
  }

  Optional<PassageRecord> channel(String name) {
    return result().passages().stream().filter(p -> p.name().equals(name)).findFirst();
  }

  Optional<PassageRecord> first(PassageRecord.Role role) {
    return result().passages().stream().filter(p -> p.role() == role).findFirst();
  }

  Optional<PassageRecord.Role> role(String channel) {
    return channel(channel).map(PassageRecord::role);
  }

  Optional<Finding> finding(Finding.Kind kind) {
    return result().findings().stream().filter(f -> f.kind() == kind).findFirst();
  }

  /** Whether metal fell to the tip first and filled the piece from there. */
  boolean fromTip() {
    Optional<PassageRecord> piece = first(PassageRecord.Role.PIECE).filter(p -> p.size() > 1);
    if (piece.isEmpty()) {
      return false;
    }
    PassageRecord p = piece.get();
    int tip = p.size() - 1;
    return p.reached(tip) && (!p.reached(0) || p.arrivalTime(tip) < p.arrivalTime(0));
  }

  /** Whether metal that flows over the plane reaches both ends and leaves a hole. */
  boolean isHole() {
    return plan.field().isPresent()
        && result().outcome() instanceof Outcome.Misrun
        && stop().isPresent()
        && (result().reach() >= 0.999 * length() || gaps().anyHole());
  }

  /** Distance on the piece's ruler [m] of a place in a channel. */
  double onRuler(String channel, double at) {
    return channel(channel).map(p -> p.start() + at).orElse(at);
  }

  /** A place in words: {@code at 214 mm}, {@code in the runner, 40 mm along}. */
  String place(Spot spot) {
    PassageRecord.Role role = role(spot.passage()).orElse(PassageRecord.Role.PIECE);
    return switch (role) {
      case PIECE -> onLimb(spot.passage(), figures.ruler(onRuler(spot.passage(), spot.at())));
      case BOSS -> say("place.boss");
      default -> say("place.channel", "channel", spot.passage(), "at", figures.ruler(spot.at()));
    };
  }

  /** A share of the heat [-] to spare, in words where a bare nought would mislead. */
  String heatToSpare(double share) {
    return glances().spare(share);
  }

  private String onLimb(String limb, String at) {
    return hasLimbs() ? say("place.limb", "limb", limb, "at", at) : say("place.piece", "at", at);
  }

  /** Whether a distance alone leaves open which part of the piece is meant. */
  boolean hasLimbs() {
    return result().passages().stream()
            .filter(p -> p.role() == PassageRecord.Role.PIECE && p.size() > 1)
            .count()
        > 1;
  }

  /** How far above the start of its freezing the metal goes in [K]. */
  double superheat() {
    return result().entered() - pourCase().metal().alloy().liquidus();
  }

  /** Whether the metal went in too cold for any way of pouring to help much. */
  boolean wentInCold() {
    return superheat() < COLD;
  }

  /** A pressure [Pa] as the height of liquid metal that makes it [m]. */
  double asHeight(double pressure) {
    return pressure
        / (pourCase().metal().alloy().density(pourCase().metal().alloy().liquidus()) * GRAVITY);
  }
}
