/**
 * Reports: one page that holds everything, for screen and paper.
 *
 * <p>{@code Report} is the page of a pour: verdict, what to do next, pictures and cautions on two
 * printed pages, then, folded, other pictures, the answer in words ({@code ReportTables}), where
 * every value comes from ({@code ReportSources}, {@code Sheets}) and the audit of metal and heat
 * ({@code ReportBooks}). {@code StudyReport} is the page of a study.
 *
 * <p>Texts come from {@code lastinch.ui.words}, pictures from {@code lastinch.ui.chart}; nothing is
 * worded or drawn here. Conventions: {@code Html} writes a well-formed page and escapes every text;
 * a page fetches nothing and is readable in a grey print.
 */
package lastinch.ui.report;
