/**
 * The scenario that lies open on the desk: its text, what was changed in it and in which order, what is wrong with it, the
 * file it came from and goes to. Knows properties to listen to and no control; all of it belongs to one thread. Not here:
 * how a key is shown, and what the scenario will do in the sun.
 */
package simmerpoint.viewer.document;
