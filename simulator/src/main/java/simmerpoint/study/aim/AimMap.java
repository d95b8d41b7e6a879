package simmerpoint.study.aim;

/**
 * Watts over both parts of one sort of aiming error.
 *
 * @param turn whether the dish is turned; else the sun drifts
 * @param radians the angles of rows and columns, rising, 0 in the middle
 * @param watts by row (up) and column (to the right): cooking power, of a bare disc caught; NaN for aims that cannot be
 * @param largestError largest standard error of these watts
 */
public record AimMap(boolean turn, double[] radians, double[][] watts, double largestError) {}
