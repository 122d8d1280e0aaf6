/**
 * Studies of flow, surface tension and air: the laws against closed forms.
 *
 * <p>{@code FrictionStudy}, {@code LossChainStudy} and {@code SprueStudy} are of flow; {@code
 * CapillaryStudy} is of the head that enters a thin slot and the speed above which metal splashes;
 * {@code AirStudy} of air through a vent, through a porous wall, and shut in.
 *
 * <p>They call classes of {@code lastinch.solver.physics} directly, without a run. Conventions:
 * every study names its source and tolerance and can be made with a plainly wrong model, such as
 * another friction product or discharge, which must not agree.
 */
package lastinch.validation.flow;
