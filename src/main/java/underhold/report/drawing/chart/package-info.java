/**
 * Charts: the ranking, how firm it is, the plan over days, checks, and what a pile's sheet says
 * along its depth and load. Bars differ by fill and lines by dash, points and labels, never by
 * colour alone; every axis has its unit.
 */
@NullMarked
package underhold.report.drawing.chart;

import org.jspecify.annotations.NullMarked;
