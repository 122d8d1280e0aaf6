/**
 * Builds a job of the solver from a checked case.
 *
 * <p>{@code PlanAssembly} puts the parts together: {@code PieceAssembly}, {@code MouldAssembly},
 * {@code GatingAssembly}, {@code MetalAssembly} and {@code CheckingAssembly}, one for each part of
 * a case, reading their words through {@code Fields}. {@code Assumptions} takes the usual value
 * ({@code UsualValues}, each with its source) where there is none and keeps a list of those; {@code
 * TypedValues} keeps every value as typed.
 *
 * <p>{@code CavitySizes} goes from what the calipers were put on to the cavity, {@code Volumes} to
 * weights a person can check on a scale, {@code ModelFile} from a drawn piece to stations, {@code
 * MaterialNames} and {@code PlaceWords} judge names.
 *
 * <p>Conventions: what is wrong was reported before, so a value that is wrong is simply absent
 * here. What comes out is in SI units and kelvin.
 */
package lastinch.cases.plan.assembly;
