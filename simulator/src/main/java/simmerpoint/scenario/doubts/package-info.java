/**
 * How badly each figure of a scenario is known, by the file's own ±, the catalogues or the table doubts.tsv, and one possible cooker
 * for each draw of them. What follows from that for watts and minutes is worked out in {@code study.likely}.
 */
package simmerpoint.scenario.doubts;
