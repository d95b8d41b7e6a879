/**
 * Questions put to a whole scenario, a package for each. A study takes immutable values and returns immutable values,
 * reports its progress and can be cancelled. It writes no files and no sentences, and prints nothing. Each package knows
 * only those on its left:
 *
 * <pre>
 * trace ─▶ light ─▶ paired ─▶ pan, day, aim ─▶ compare, budget, design ─▶ FullStudy (all of one scenario)
 * </pre>
 */
package simmerpoint.study;
