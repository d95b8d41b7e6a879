/**
 * Questions put to a whole scenario: one trace with its replicates and precision, and whatever needs many of
 * them. A study takes unchangeable values and returns unchangeable values, tells its progress and can be
 * cancelled. It writes no files, words no sentences and prints nothing.
 */
package simmerpoint.study;
