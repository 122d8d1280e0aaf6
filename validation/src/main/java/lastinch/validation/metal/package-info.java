/**
 * Studies of the catalogue: freezing curves and contraction.
 *
 * <p>{@code FreezingCurveStudy} holds how much of an alloy is solid at a temperature against the
 * figures that the curves were chosen for: it checks that they are read and computed right, not
 * that nature follows them. Its wrong model is a straight curve. {@code ContractionStudy} puts the
 * contraction that follows from the catalogue's densities beside the allowances of pattern makers.
 *
 * <p>Both read the built-in catalogue and make no run. Conventions: allowances of the trade are a
 * trend, not a value to meet; a catalogue value is never changed to agree.
 */
package lastinch.validation.metal;
