/** What pictures are drawn on and with: paper, pens, scales, glow. */
package lastinch.ui.chart.paper;
