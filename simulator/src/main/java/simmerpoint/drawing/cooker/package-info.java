/** The cooker to scale: from its side, and along the axis of its dish. */
package simmerpoint.drawing.cooker;
