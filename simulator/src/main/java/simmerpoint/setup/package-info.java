/**
 * Sun, dish and pan stood in one frame: the well-aimed axis, drift, turn and mount, the three moves of the
 * pan, which stays level whatever the dish does. Pure placement: no ray is followed here, and no light is
 * counted.
 */
package simmerpoint.setup;
