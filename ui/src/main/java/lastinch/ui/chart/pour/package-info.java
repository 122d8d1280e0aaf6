/** Pictures of one pour. */
package lastinch.ui.chart.pour;
