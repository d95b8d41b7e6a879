package simmerpoint.drawing;

/** What can be filled and outlined. */
public sealed interface Shape permits Path, Box, RoundBox, Circle {}
