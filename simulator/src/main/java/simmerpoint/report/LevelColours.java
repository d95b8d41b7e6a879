package simmerpoint.report;

import java.awt.Color;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.TextStyle;
import simmerpoint.drawing.Theme;
import simmerpoint.heat.HeatLevel;

/**
 * Colours of the heat levels, from pale to dark: lightness falls from level to level (L* 96, 84, 70, 48,
 * 30 in CIELAB), so that they are told apart in grey and by the colour-blind; what is printed on them is dark on the three
 * pale ones and white on the two dark ones.
 */
public final class LevelColours {
    /** Where there is no sun. */
    static final Color NONE = new Color(0xFFFFFF);

    private LevelColours() {}

    /** The colour of a level. */
    public static Color of(HeatLevel level) {
        return new Color(Theme.PRINT.argb(Style.of(level).fill().orElseThrow()));
    }

    /** Colour of text on it. */
    public static Color textOn(HeatLevel level) {
        return new Color(Theme.PRINT.argb(TextStyle.on(level).ink()));
    }
}
