/** Pictures of studies. */
package lastinch.ui.chart.study;
