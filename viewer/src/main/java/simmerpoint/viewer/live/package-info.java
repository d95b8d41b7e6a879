/**
 * Answers that follow whoever changes something: a coarse one at once, finer ones behind, slower studies in a pause. Works
 * on threads of its own and hands plain values to an executor. Not here: anything that is seen.
 */
package simmerpoint.viewer.live;
