package simmerpoint.study.light;

import simmerpoint.geometry.Vec;

/**
 * A ray that leaves a mirror.
 *
 * @param point where, well-aimed frame, m
 * @param direction unit
 * @param watts that it carries
 * @param panel index of its panel
 */
public record ReflectedRay(Vec point, Vec direction, double watts, int panel) {}
