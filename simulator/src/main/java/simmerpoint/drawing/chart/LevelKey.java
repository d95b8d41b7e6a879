package simmerpoint.drawing.chart;

import simmerpoint.answer.words.LevelWords;
import simmerpoint.drawing.Style;
import simmerpoint.heat.HeatLevel;

/** The colours of all heat levels. */
public final class LevelKey {
    private LevelKey() {}

    /** Their names, from the coolest. */
    public static Key of() {
        Key key = new Key();
        for (HeatLevel level : HeatLevel.values()) {
            key.swatch(Style.of(level), LevelWords.of(level));
        }
        return key;
    }
}
