package simmerpoint.report;

import java.awt.Color;
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
        return switch (level) {
            case TOO_COOL -> new Color(0xF3F4F6);
            case KEEP_WARM -> new Color(0xF2CC8B);
            case SIMMER -> new Color(0xE69A4C);
            case BOIL -> new Color(0xB4561A);
            case FAST_BOIL -> new Color(0x7C2F17);
        };
    }

    /** Colour of text on it. */
    public static Color textOn(HeatLevel level) {
        return level.compareTo(HeatLevel.BOIL) < 0 ? Brush.INK : Color.WHITE;
    }
}
