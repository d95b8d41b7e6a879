/**
 * Where to put the pan.
 */
package simmerpoint.answer.pan;
