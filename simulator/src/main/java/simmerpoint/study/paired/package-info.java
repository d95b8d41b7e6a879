/**
 * Scenarios traced with the same samples, so that their differences are known better than their figures.
 */
package simmerpoint.study.paired;
