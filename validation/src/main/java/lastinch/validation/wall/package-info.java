/**
 * Studies of heat in mould and metal: columns of mould against exact solutions.
 *
 * <p>Conduction alone: {@code HalfSpaceStudy}, {@code TwoBodiesStudy}, {@code FlaskRodStudy},
 * {@code UsualGridStudy}. Freezing: {@code FreezingFrontStudy}, {@code FreezingRangeStudy}, {@code
 * ArrestStudy}, {@code ModulusStudy}, {@code ThinPlateStudy}. {@code Bench} holds the bodies with
 * round values that they share, {@code DeepMetal} is metal that freezes through its own thickness.
 *
 * <p>They drive {@code WallColumns} and the tables of {@code lastinch.solver.material} without a
 * run. Conventions: round values, not recommended data; each study names the solution and the book,
 * and its wrong model differs in one physical thing, such as heat of freezing.
 */
package lastinch.validation.wall;
