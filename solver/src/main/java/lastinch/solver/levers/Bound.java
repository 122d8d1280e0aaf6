package lastinch.solver.levers;

import java.util.Objects;
import lastinch.solver.material.Basis;
import lastinch.solver.material.Citation;

/**
 * One end of what a lever can be set to.
 *
 * @param value in the lever's unit
 * @param reason why it ends there
 * @param source where that is known from
 */
public record Bound(double value, Reason reason, Citation source) {
  /** Common practice, no source. */
  static final Citation PRACTICE = new Citation(Basis.PRACTICE, "common practice, no source", "");

  /** A choice of this program. */
  static final Citation OURS = new Citation(Basis.ESTIMATE, "estimate", "range worth trying");

  public Bound {
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(source, "source");
  }

  static Bound practice(double value, Reason reason) {
    return new Bound(value, reason, PRACTICE);
  }

  static Bound ours(double value, Reason reason) {
    return new Bound(value, reason, OURS);
  }

  /** The same end at another value. */
  Bound at(double newValue) {
    return new Bound(newValue, reason, source);
  }

  /** Why a lever ends. */
  public enum Reason {
    /** Gypsum gives off sulphur above. */
    GYPSUM_SULPHUR,
    /** A fired gypsum mould that cools this far cracks. */
    GYPSUM_CRACKS,
    /** The binder of the sand smokes above. */
    BINDER_SMOKES,
    /** The mould material is not used hotter. */
    MOULD_MATERIAL,
    /** No mould is colder in a shop. */
    SHOP_HEAT,
    /** Metal gasses and burns into the mould above. */
    METAL_GASSES,
    /** Metal is not poured colder. */
    METAL_SLUGGISH,
    /** Nobody skims and walks faster. */
    WALK,
    /** Nobody waits longer. */
    PATIENCE,
    /** One hand pours no faster. */
    BRISK_HAND,
    /** Slower is a trickle. */
    TRICKLE,
    /** Height a mould box with a collar gives. */
    BOX_HEIGHT,
    /** The flask is no taller. */
    FLASK_HEIGHT,
    /** Lower and the cup splashes into the mould. */
    LEAST_HEIGHT,
    /** Sizes a small shop cuts. */
    SHOP_SIZES,
    /** Tilted further the mould box is hard to pour. */
    BOX_TILT,
    /** More would have to be filed off again. */
    FILING,
    /** Thinner it is no piece any more. */
    THINNEST,
    /** The crucible holds no more, filled to eight tenths. */
    CRUCIBLE,
    /** Less than the mould takes. */
    TOO_LITTLE,
    /** End of the piece. */
    PIECE_END,
    /** It would cut into the next gate. */
    NEXT_GATE,
    /** Gates need room between them. */
    GATES_APART,
    /** Wider vents fill with metal. */
    VENT_SIZE,
    /** None at all. */
    NONE,
    /** Nine times in ten the truth lies inside. */
    BAND,
    /** All there is to choose from. */
    CHOICES,
    /** No longer a job that can be described. */
    PHYSICS
  }
}
