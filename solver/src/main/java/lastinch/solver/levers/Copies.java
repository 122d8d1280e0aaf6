package lastinch.solver.levers;

import lastinch.solver.casting.Metal;
import lastinch.solver.casting.ModelCoefficients;
import lastinch.solver.casting.Mould;
import lastinch.solver.casting.Pour;
import lastinch.solver.casting.PourCase;

/** A job with one of its parts exchanged. */
public final class Copies {
  private Copies() {}

  public static PourCase with(PourCase job, Metal metal) {
    return make(job, job.mould(), metal, job.pour(), job.laws());
  }

  public static PourCase with(PourCase job, Mould mould) {
    return make(job, mould, job.metal(), job.pour(), job.laws());
  }

  public static PourCase with(PourCase job, Pour pour) {
    return make(job, job.mould(), job.metal(), pour, job.laws());
  }

  public static PourCase with(PourCase job, ModelCoefficients laws) {
    return make(job, job.mould(), job.metal(), job.pour(), laws);
  }

  private static PourCase make(
      PourCase job, Mould mould, Metal metal, Pour pour, ModelCoefficients laws) {
    return new PourCase(
        job.title(), job.piece(), mould, job.gating(), metal, pour, job.checking(), laws);
  }
}
