package simmerpoint.study.pan;

/**
 * A place for a simmer.
 *
 * @param move along what
 * @param stretch where it simmers
 * @param position the pan in the middle of that stretch
 */
public record SimmerPlace(MoveStudy.Move move, LevelStretch stretch, PanPosition position) {}
