/** Studies of the catalogue: freezing curves and contraction. */
package lastinch.validation.metal;
