package lastinch.solver.geometry.gating;

import java.util.List;
import java.util.Optional;
import lastinch.solver.casting.Boss;
import lastinch.solver.casting.Limb;
import lastinch.solver.casting.Piece;
import lastinch.solver.casting.Place;
import lastinch.solver.casting.PourCase;
import lastinch.solver.casting.Side;
import lastinch.solver.casting.gating.Gate;
import lastinch.solver.casting.gating.Gating;
import lastinch.solver.casting.gating.Runner;

/**
 * What the places named in a plan are on its piece. Distances on a limb count from its first
 * station.
 */
public final class PiecePlaces {
  /** Places on a limb closer than this are one [m]; numerical, over rounding. */
  public static final double NEAR = 1e-6;

  private final Piece piece;
  private final boolean beside;

  /**
   * Places of a piece.
   *
   * @param beside whether a runner beside the piece feeds it, so that gates into the boss come from
   *     its side
   */
  public PiecePlaces(Piece piece, boolean beside) {
    this.piece = piece;
    this.beside = beside;
  }

  public static PiecePlaces of(PourCase job) {
    return new PiecePlaces(
        job.piece(),
        job.gating().runner().isPresent()
            && job.gating().runner().get() instanceof Runner.Alongside);
  }

  /** Whether a runner beside the piece feeds it. */
  public boolean isFedBeside() {
    return beside;
  }

  /** Whether a place is on or in the boss. */
  public boolean isBoss(Place place) {
    return piece.boss().isPresent()
        && ((place instanceof Place.Into into && "boss".equals(into.part()))
            || (place instanceof Place.At at
                && at.side() == Side.THICK_END
                && at.distance() <= NEAR));
  }

  /** Whether a place is on a side of a limb, not at an end. */
  public static boolean isSide(Place place) {
    return place instanceof Place.At at && (at.side() == Side.LEFT || at.side() == Side.RIGHT);
  }

  /** Distance from the outer end of the boss at which things join it [m]. */
  public double bossDistance() {
    return beside ? 0.5 * piece.boss().orElseThrow().length() : 0.0;
  }

  /** Length of the boss, 0 without [m]. */
  public double bossLength() {
    return piece.boss().map(Boss::length).orElse(0.0);
  }

  /** Limb that a place is on. */
  public Limb limb(Place place) {
    List<Limb> limbs = piece.limbs();
    String name =
        place instanceof Place.At at ? at.limb() : place instanceof Place.Into in ? in.part() : "";
    return limbs.stream().filter(l -> l.name().equals(name)).findFirst().orElse(limbs.get(0));
  }

  /** Distance of a place along a limb of a length [m]; a limb by name is joined at its start. */
  public static double distance(Place place, double length) {
    if (place instanceof Place.At at) {
      return switch (at.side()) {
        case TIP -> length;
        case THICK_END -> 0.0;
        case LEFT, RIGHT ->
            at.distance() < NEAR ? 0.0 : at.distance() > length - NEAR ? length : at.distance();
      };
    }
    return 0.0;
  }

  /** Distance of a vent along a limb of a length [m]; a limb by name is vented at its tip. */
  public static double ventDistance(Place place, double length) {
    return place instanceof Place.Into ? length : distance(place, length);
  }

  /** Whether the only way in is at the tip of the first limb. */
  public boolean entersAtTip(Gating gating) {
    List<Gate> gates = gating.gates();
    Optional<Place> place =
        gates.isEmpty()
            ? gating.sprue().into()
            : gates.size() == 1 ? Optional.of(gates.get(0).place()) : Optional.empty();
    return place.isPresent()
        && place.get() instanceof Place.At at
        && (at.side() == Side.TIP || at.distance() >= piece.limbs().get(0).length() - NEAR);
  }

  /** End of the piece into which a sprue without gates opens. */
  public Place entry(Gating gating) {
    Limb first = piece.limbs().get(0);
    return entersAtTip(gating)
        ? new Place.At(first.name(), first.length(), Side.TIP)
        : new Place.At(first.name(), 0.0, Side.THICK_END);
  }
}
