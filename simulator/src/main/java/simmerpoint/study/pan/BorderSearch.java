package simmerpoint.study.pan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.balance.HeatLevelModel;
import simmerpoint.sampling.RootFinder;
import simmerpoint.uncertainty.LikelyRange;

/**
 * Finds where the heat level changes along a move: roots of the watts to spare at each level's border, on the smooth curve
 * of the light, each bracketed by two traced positions. The range of such a place comes from the range of the watts at
 * which the level begins there: where the curve has that many watts.
 */
final class BorderSearch {
    private static final RootFinder ROOT = RootFinder.to(1e-6, 200);

    private final double[] offsets;
    private final DoubleFunction<AbsorbedLight> light;
    private final HeatLevelModel levels;
    private final Beginning beginning;

    /** Watts taken up with which a level begins. */
    interface Beginning {
        /** At a place along the move, for the light that the pan takes up there. */
        LikelyRange of(HeatLevel level, double offset, AbsorbedLight there);
    }

    /** With ranges by the pan's losses alone. */
    BorderSearch(double[] offsets, DoubleFunction<AbsorbedLight> light, HeatLevelModel levels) {
        this(offsets, light, levels, (level, offset, there) -> levels.thresholdWatts(level, there));
    }

    BorderSearch(double[] offsets, DoubleFunction<AbsorbedLight> light, HeatLevelModel levels, Beginning beginning) {
        this.beginning = beginning;
        this.offsets = offsets;
        this.light = light;
        this.levels = levels;
    }

    List<LevelBorder> borders() {
        List<LevelBorder> out = new ArrayList<>();
        HeatLevel[] all = HeatLevel.values();
        for (int k = 1; k < all.length; k++) {
            find(all[k - 1], all[k], out);
        }
        out.sort(Comparator.comparingDouble(LevelBorder::offsetMetres));
        return out;
    }

    private void find(HeatLevel below, HeatLevel level, List<LevelBorder> out) {
        DoubleUnaryOperator spare = x -> levels.spareWatts(level, light.apply(x));
        double last = spare.applyAsDouble(offsets[0]);
        for (int k = 1; k < offsets.length; k++) {
            double next = spare.applyAsDouble(offsets[k]);
            if (last >= 0 != next >= 0) {
                double place = root(spare, offsets[k - 1], offsets[k]);
                out.add(border(below, level, place, next >= 0));
            }
            last = next;
        }
    }

    private LevelBorder border(HeatLevel below, HeatLevel level, double place, boolean rising) {
        LikelyRange begins = beginning.of(level, place, light.apply(place));
        int cooler = rising ? -1 : 1;
        double coolEnd = placeOf(begins.low(), place, cooler).orElse(cooler * Double.POSITIVE_INFINITY);
        double hotEnd = placeOf(begins.high(), place, -cooler).orElse(-cooler * Double.POSITIVE_INFINITY);
        return new LevelBorder(
                place,
                Math.min(place, Math.min(coolEnd, hotEnd)),
                Math.max(place, Math.max(coolEnd, hotEnd)),
                rising ? below : level,
                rising ? level : below);
    }

    /** Nearest place from {@code start} towards {@code sign} (−1 or 1) where so many watts are taken up. */
    OptionalDouble placeOf(double watts, double start, int sign) {
        DoubleUnaryOperator over = x -> light.apply(x).total() - watts;
        double from = start;
        double there = over.applyAsDouble(from);
        if (there == 0) {
            return OptionalDouble.of(from);
        }
        for (int step = 0; step < offsets.length; step++) {
            int k = sign > 0 ? step : offsets.length - 1 - step;
            if (sign * (offsets[k] - from) > 0) {
                double next = over.applyAsDouble(offsets[k]);
                if (there >= 0 != next >= 0) {
                    return OptionalDouble.of(root(over, Math.min(from, offsets[k]), Math.max(from, offsets[k])));
                }
                from = offsets[k];
                there = next;
            }
        }
        return OptionalDouble.empty();
    }

    private static double root(DoubleUnaryOperator f, double from, double to) {
        return ROOT.find(f, from, to);
    }
}
