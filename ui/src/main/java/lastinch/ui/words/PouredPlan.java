package lastinch.ui.words;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import lastinch.cases.plan.Plan;
import lastinch.solver.casting.PourCase;
import lastinch.solver.result.PlaneField;
import lastinch.solver.result.PourResult;
import lastinch.solver.result.ToppedUp;
import lastinch.solver.search.GridSensitivity;
import lastinch.solver.search.NextStep;
import lastinch.solver.uncertainty.BandStudy;
import lastinch.ui.words.study.HowPoured;

/**
 * A plan and what its dry pour found.
 *
 * @param pourCase the job
 * @param result what was found
 * @param file the case file as the person named it
 * @param digest of the case as read, lower-case hexadecimal
 * @param assumed what was taken where the file says nothing or "don't know", one line each
 * @param noted what was accepted in the file but should be known, one line each
 * @param crucibleFull how full the crucible is when all is molten [-], when the shop file says
 * @param milliseconds the sum took, when it was timed
 * @param bands how far the answer holds, when that was worked out
 * @param field what is known cell by cell, when it was poured over the plane
 * @param spread how far pours over other squares lie apart, when that was asked for
 * @param next what to change first, when changes were poured
 * @param toppedUp how it stood when the hand had stopped, when it was poured that far
 */
public record PouredPlan(
    PourCase pourCase,
    PourResult result,
    String file,
    String digest,
    List<String> assumed,
    List<String> noted,
    OptionalDouble crucibleFull,
    OptionalLong milliseconds,
    Optional<BandStudy> bands,
    Optional<PlaneField> field,
    Optional<GridSensitivity> spread,
    Optional<NextStep> next,
    Optional<ToppedUp> toppedUp) {

  /** A plan that was poured along its channels. */
  public PouredPlan(
      PourCase pourCase,
      PourResult result,
      String file,
      String digest,
      List<String> assumed,
      List<String> noted,
      OptionalDouble crucibleFull,
      OptionalLong milliseconds,
      Optional<BandStudy> bands) {
    this(
        pourCase,
        result,
        file,
        digest,
        assumed,
        noted,
        crucibleFull,
        milliseconds,
        bands,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** A plan that a study poured along its channels. */
  public static PouredPlan studied(
      Plan plan, String file, PourResult result, Optional<BandStudy> bands) {
    return new PouredPlan(
        plan.pourCase(),
        result,
        file,
        plan.digest(),
        List.of(),
        List.of(),
        OptionalDouble.empty(),
        OptionalLong.empty(),
        bands);
  }

  /** The way it was poured. */
  public HowPoured how() {
    return field.map(f -> HowPoured.square(f.map().cell())).orElse(HowPoured.ALONG);
  }

  /**
   * The same plan with what a pour over the plane left behind.
   *
   * @param apart how far pours over other squares lie apart, when that was asked for
   */
  public PouredPlan with(PlaneField left, Optional<GridSensitivity> apart) {
    return new PouredPlan(
        pourCase,
        result,
        file,
        digest,
        assumed,
        noted,
        crucibleFull,
        milliseconds,
        bands,
        Optional.of(left),
        apart,
        next,
        toppedUp);
  }

  /** The same plan with what to change first. */
  public PouredPlan advised(NextStep step) {
    return new PouredPlan(
        pourCase,
        result,
        file,
        digest,
        assumed,
        noted,
        crucibleFull,
        milliseconds,
        bands,
        field,
        spread,
        Optional.of(step),
        toppedUp);
  }

  /** The same plan with how it stood when the hand had stopped. */
  public PouredPlan with(Optional<ToppedUp> stood) {
    return new PouredPlan(
        pourCase,
        result,
        file,
        digest,
        assumed,
        noted,
        crucibleFull,
        milliseconds,
        bands,
        field,
        spread,
        next,
        stood);
  }

  /** A plan of which only the one run is known. */
  public PouredPlan(
      PourCase pourCase,
      PourResult result,
      String file,
      String digest,
      List<String> assumed,
      List<String> noted,
      OptionalDouble crucibleFull,
      OptionalLong milliseconds) {
    this(
        pourCase,
        result,
        file,
        digest,
        assumed,
        noted,
        crucibleFull,
        milliseconds,
        Optional.empty());
  }

  /** The same plan as it comes out on another day. */
  PouredPlan on(PourResult day) {
    return new PouredPlan(
        pourCase, day, file, digest, assumed, noted, crucibleFull, milliseconds, Optional.empty());
  }

  public PouredPlan {
    Objects.requireNonNull(pourCase, "pourCase");
    Objects.requireNonNull(result, "result");
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(digest, "digest");
    Objects.requireNonNull(crucibleFull, "crucibleFull");
    Objects.requireNonNull(milliseconds, "milliseconds");
    Objects.requireNonNull(bands, "bands");
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(spread, "spread");
    Objects.requireNonNull(next, "next");
    Objects.requireNonNull(toppedUp, "toppedUp");
    assumed = List.copyOf(assumed);
    noted = List.copyOf(noted);
  }
}
