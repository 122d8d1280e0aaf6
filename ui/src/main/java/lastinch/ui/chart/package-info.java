/** Charts: one class each, taking a poured plan; drawn as on paper with ink. */
package lastinch.ui.chart;
