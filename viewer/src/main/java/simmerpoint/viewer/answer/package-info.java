/**
 * The answer that is always in sight. Not here: its words and digits, which are those of the simulator's {@code answer}.
 */
package simmerpoint.viewer.answer;
