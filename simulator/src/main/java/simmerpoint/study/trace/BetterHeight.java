package simmerpoint.study.trace;

/**
 * Another height of the pan, at which it gets clearly more than where it stands.
 *
 * @param raisedMetres how much higher, m; below 0 lower
 * @param gainedShare how much more there, as a share of the cooking power where it stands
 */
public record BetterHeight(double raisedMetres, double gainedShare) {}
