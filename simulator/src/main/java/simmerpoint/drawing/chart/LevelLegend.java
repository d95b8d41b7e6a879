package simmerpoint.drawing.chart;

import simmerpoint.answer.words.LevelWords;
import simmerpoint.drawing.Style;
import simmerpoint.heat.HeatLevel;

/** The colours of all heat levels. */
public final class LevelLegend {
    private LevelLegend() {}

    /** Their names, from the coolest. */
    public static Legend of() {
        Legend legend = new Legend();
        for (HeatLevel level : HeatLevel.values()) {
            legend.swatch(Style.of(level), LevelWords.of(level));
        }
        return legend;
    }
}
