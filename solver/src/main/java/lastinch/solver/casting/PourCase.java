package lastinch.solver.casting;

import java.util.Objects;
import lastinch.solver.casting.gating.Gating;

/**
 * One complete job as it would be poured. Sizes are those of the cavity; everything in SI units and
 * kelvin.
 */
public record PourCase(
    String title,
    Piece piece,
    Mould mould,
    Gating gating,
    Metal metal,
    Pour pour,
    Checking checking,
    ModelCoefficients laws) {

  /** A job under the usual laws. */
  public PourCase(
      String title,
      Piece piece,
      Mould mould,
      Gating gating,
      Metal metal,
      Pour pour,
      Checking checking) {
    this(title, piece, mould, gating, metal, pour, checking, ModelCoefficients.USUAL);
  }

  public PourCase {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(piece, "piece");
    Objects.requireNonNull(mould, "mould");
    Objects.requireNonNull(gating, "gating");
    Objects.requireNonNull(metal, "metal");
    Objects.requireNonNull(pour, "pour");
    Objects.requireNonNull(checking, "checking");
    Objects.requireNonNull(laws, "laws");
  }

  public PourCase withPiece(Piece other) {
    return new PourCase(title, other, mould, gating, metal, pour, checking, laws);
  }

  public PourCase withMould(Mould other) {
    return new PourCase(title, piece, other, gating, metal, pour, checking, laws);
  }

  public PourCase withGating(Gating other) {
    return new PourCase(title, piece, mould, other, metal, pour, checking, laws);
  }

  public PourCase withMetal(Metal other) {
    return new PourCase(title, piece, mould, gating, other, pour, checking, laws);
  }

  public PourCase withPour(Pour other) {
    return new PourCase(title, piece, mould, gating, metal, other, checking, laws);
  }

  public PourCase withChecking(Checking other) {
    return new PourCase(title, piece, mould, gating, metal, pour, other, laws);
  }

  public PourCase withLaws(ModelCoefficients other) {
    return new PourCase(title, piece, mould, gating, metal, pour, checking, other);
  }
}
