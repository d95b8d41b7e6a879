package simmerpoint.drawing;

import java.util.Locale;
import java.util.Optional;
import simmerpoint.heat.HeatLevel;

/** How text looks, by what it means. A rim in the ground's colour keeps lines behind it off the letters. */
public enum TextStyle {
    /** Figures and words on paper. */
    LABEL(Ink.INK, false, null),
    /** The same where lines may run behind it. */
    NOTE(Ink.INK, false, Ink.PAPER),
    /** What must be seen, where lines may run behind it. */
    STRONG_NOTE(Ink.INK, true, Ink.PAPER),
    /** Names of charts and pictures. */
    HEADING(Ink.INK, true, null),
    /** What can wait. */
    SOFT(Ink.SOFT, false, null),
    /** Figures of the hottest spot. */
    FLUX(Ink.FLUX_SCALE, false, null),
    /** Their heading. */
    FLUX_HEADING(Ink.FLUX_SCALE, true, null),
    /** What is wrong. */
    WARNING(Ink.WARNING, true, Ink.PAPER),
    /** About a handle or a panel. */
    HANDLE(Ink.HANDLE, true, null),
    /** On a chart's ground, which is white in every theme. */
    ON_CHART(Ink.ON_PALE, false, Ink.WHITE),
    /** On a dark plate. */
    ON_PLATE(Ink.WHITE, false, null),
    /** On something dark. */
    ON_DARK(Ink.WHITE, true, null),
    /** On the coolest heat level. */
    ON_LEVEL_0(Ink.ON_PALE, true, Ink.LEVEL_0),
    /** On the second. */
    ON_LEVEL_1(Ink.ON_PALE, true, Ink.LEVEL_1),
    /** On the third. */
    ON_LEVEL_2(Ink.ON_PALE, true, Ink.LEVEL_2),
    /** On the fourth. */
    ON_LEVEL_3(Ink.WHITE, true, Ink.LEVEL_3),
    /** On the hottest. */
    ON_LEVEL_4(Ink.WHITE, true, Ink.LEVEL_4);

    /** Width of a rim on both sides of the letters together, units. */
    public static final double RIM = 3;

    private final Ink ink;
    private final boolean bold;
    private final Optional<Ink> rim;

    TextStyle(Ink ink, boolean bold, Ink rim) {
        this.ink = ink;
        this.bold = bold;
        this.rim = Optional.ofNullable(rim);
    }

    /** The name of a heat level on its band. */
    public static TextStyle on(HeatLevel level) {
        return switch (level) {
            case TOO_COOL -> ON_LEVEL_0;
            case KEEP_WARM -> ON_LEVEL_1;
            case SIMMER -> ON_LEVEL_2;
            case BOIL -> ON_LEVEL_3;
            case FAST_BOIL -> ON_LEVEL_4;
        };
    }

    /** Colour of the letters. */
    public Ink ink() {
        return ink;
    }

    /** Whether they are bold. */
    public boolean bold() {
        return bold;
    }

    /** Colour of the rim about them. */
    public Optional<Ink> rim() {
        return rim;
    }

    /** Its name in style sheets. */
    public String cssClass() {
        return "text-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
