package simmerpoint.study.pan;

import java.util.Optional;
import simmerpoint.heat.HeatLevel;

/**
 * Positions along a move over which the heat level stays the same, for the likely losses.
 *
 * @param fromMetres first of them, from the scenario's stand
 * @param toMetres last of them
 * @param level the level
 * @param before level at smaller offsets; empty where the positions looked at end
 * @param after level at larger offsets; empty where they end
 */
public record LevelStretch(
        double fromMetres, double toMetres, HeatLevel level, Optional<HeatLevel> before, Optional<HeatLevel> after) {
    /** Half way, m. */
    public double middleMetres() {
        return (fromMetres + toMetres) / 2;
    }
}
