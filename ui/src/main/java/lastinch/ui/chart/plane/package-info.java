/** Pictures of a pour computed over the plane. */
package lastinch.ui.chart.plane;
