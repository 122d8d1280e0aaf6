/**
 * Studies of whole pours: with checking options against closed forms, with the catalogue's own
 * values against trends.
 *
 * <p>Closed forms: {@code DryPipeStudy}, {@code FluidityStudy}, {@code HotRunStudy}, on the even
 * channel of {@code Rig}. Measured: {@code MeasuredPoursStudy} where others' numbers can be had, on
 * the poured {@code Strip}, {@code MeasuredTrendsStudy} where only directions can. The trade:
 * {@code HandPourStudy} and {@code ThinRimStudy}.
 *
 * <p>All run through {@code lastinch.solver.run.DryPour} as any case does. Conventions: what lies
 * outside the product is listed as told, not compared; rows without a value to meet are trends;
 * each exact study has its wrong model.
 */
package lastinch.validation.pour;
