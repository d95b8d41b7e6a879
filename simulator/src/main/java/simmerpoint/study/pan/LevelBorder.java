package simmerpoint.study.pan;

import simmerpoint.heat.HeatLevel;

/**
 * A position along a move where the heat level changes.
 *
 * @param offsetMetres from the scenario's stand, for the likely losses
 * @param lowMetres lower end of its range: four in five such cookers change between low and high; −∞ if some
 *     of them change nowhere on that side
 * @param highMetres upper end; ∞ if some change nowhere on that side
 * @param before level just before, at smaller offsets
 * @param after level just behind, at larger offsets
 */
public record LevelBorder(
        double offsetMetres, double lowMetres, double highMetres, HeatLevel before, HeatLevel after) {}
