/**
 * Comparisons of the product's own code with exact solutions and published figures, and the page
 * that lists them.
 */
package lastinch.validation;
