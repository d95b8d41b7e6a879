/**
 * Sun, dish and pan placed in one frame: the well-aimed axis, drift, turn and mount, and the moves of the pan, which stays
 * level whatever the dish does. No rays are traced here.
 */
package simmerpoint.setup;
