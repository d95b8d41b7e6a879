/**
 * Words that several answers share: figures with no more digits than they deserve, temperatures, times, levels, directions,
 * cautions.
 */
package simmerpoint.answer.words;
