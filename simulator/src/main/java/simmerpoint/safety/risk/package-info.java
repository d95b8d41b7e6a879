/**
 * What light does to people and things by its flux: the one place with thresholds and times, each with its source. Words for them
 * are in {@code answer.words.Cautions}.
 */
package simmerpoint.safety.risk;
