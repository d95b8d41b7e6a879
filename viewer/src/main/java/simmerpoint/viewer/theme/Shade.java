package simmerpoint.viewer.theme;

import java.util.Locale;
import javafx.scene.paint.Color;

/**
 * The colours of the window by what they are for. In style sheets each is a looked-up colour: {@link #WORD} is
 * {@code -sp-word}. Words on any ground have a contrast of 4.5 or more, lines and marks of 3 or more (WCAG 2.1, level AA).
 */
public enum Shade {
    /** What everything lies on. */
    GROUND(0xF4F0E6, 0x1B1D1F),
    /** What is read or drawn on. */
    SHEET(0xFFFDF8, 0x25282B),
    /** What can be typed into. */
    FIELD(0xFFFFFF, 0x17191B),
    /** Borders of things that can be used, axes of drawings. */
    LINE(0x857D6B, 0x8A9096),
    /** Borders that only part one thing from another. */
    HAIR(0xDAD3C2, 0x3C4145),
    /** Words, figures. */
    WORD(0x211F1A, 0xF2EFE7),
    /** Words that can wait. */
    QUIET(0x565042, 0xBDB9AE),
    /** Things to take hold of or press. */
    HANDLE(0x0B5C78, 0x7CC7E0),
    /** Words and marks on such things. */
    ON_HANDLE(0xFFFFFF, 0x0D1A20),
    /** The frame around what the keyboard acts on. */
    FOCUS(0x6A2BC4, 0xC9A6FF),
    /** What is wrong. */
    WRONG(0xA31621, 0xFF9A94),
    /** Cautions. */
    CAUTION(0x6E4300, 0xFFD479),
    /** What cautions stand on. */
    CAUTION_GROUND(0xFFEFC9, 0x3A3020),
    /** Sunlight, in drawings. */
    SUN(0xB86E00, 0xFFC83D),
    /** Light on its way from mirror to pan, in drawings. */
    RAY(0xC2540A, 0xFF9F45),
    /** Light that goes past, in drawings. */
    LOST(0x6B6475, 0xA79FB5),
    /** Mirrors, in drawings. */
    MIRROR(0x3E6E86, 0x9CC9DD),
    /** Pans, stands, wood, in drawings. */
    SOLID(0x4A463D, 0xCFCABD);

    private final int light;
    private final int dark;

    Shade(int light, int dark) {
        this.light = light;
        this.dark = dark;
    }

    private static Color colour(int rgb) {
        return Color.rgb(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF);
    }

    /** The colour in a theme. */
    public Color in(Theme theme) {
        return colour(theme == Theme.DARK ? dark : light);
    }

    /** Its name in style sheets. */
    public String looked() {
        return "-sp-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
