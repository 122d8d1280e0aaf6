/** Pictures of a model of a piece. */
package lastinch.ui.chart.model;
