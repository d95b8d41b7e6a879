package simmerpoint.study.pan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import simmerpoint.heat.HeatLevel;

/** Cuts a move at its borders. */
final class LevelStretches {
    private LevelStretches() {}

    static List<LevelStretch> of(double from, double to, List<LevelBorder> borders, DoubleFunction<HeatLevel> levelAt) {
        List<LevelStretch> out = new ArrayList<>();
        for (int k = 0; k <= borders.size(); k++) {
            double start = k == 0 ? from : borders.get(k - 1).offsetMetres();
            double end = k == borders.size() ? to : borders.get(k).offsetMetres();
            out.add(new LevelStretch(
                    start,
                    end,
                    levelAt.apply((start + end) / 2),
                    k == 0 ? Optional.empty() : Optional.of(borders.get(k - 1).before()),
                    k == borders.size()
                            ? Optional.empty()
                            : Optional.of(borders.get(k).after())));
        }
        return out;
    }
}
