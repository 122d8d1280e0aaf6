/**
 * Values as people write them: a closed list of units for each kind of value, converted exactly.
 *
 * <p>{@code QuantityText} reads {@code 6 s}, {@code 1/4 in}, {@code 1150 degC +- 15 degC} or a
 * plain number and gives {@code Parsed}: the value, or what to tell whoever wrote it, as a {@code
 * Saying}: the name of a sentence and what goes into its places. A value is a {@code Quantity}, one
 * with a range a {@code BandedQuantity}; both keep the unit and the text as typed. {@code
 * Dimension} lists the kinds of value with their units, {@code DisplayUnits} the two sets in which
 * answers are printed.
 *
 * <p>Conventions: SI inside, and the result is the nearest double to the true value of the decimal
 * as typed. Temperatures and differences of temperature are two dimensions. The zero of the degree
 * scale is written here and nowhere else. A range holds the truth nine times in ten.
 */
package lastinch.cases.units;
