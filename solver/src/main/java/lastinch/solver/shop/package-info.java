/**
 * Shop arithmetic before the pour: heat lost over the lip and while waiting, and a flask that cools
 * on its way from the kiln.
 *
 * <p>{@code LipLoss} takes the values of practice, which are of bronze at 1150 degC, to another
 * mass, metal or temperature. {@code FlaskCooling} follows the investment of a hot flask in air by
 * columns of {@code lastinch.solver.wall}, and gives a profile over the depth, or the temperature
 * at the edge of the piece nearest to the can; {@code AirFilm} is the film of still air and
 * radiation round it.
 *
 * <p>Whoever assembles a job calls these before the run; nothing of it is asked again while metal
 * flows. SI units and kelvin; every value names its source or says that it is common practice.
 */
package lastinch.solver.shop;
