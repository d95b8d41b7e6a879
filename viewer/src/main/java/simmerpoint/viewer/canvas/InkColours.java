package simmerpoint.viewer.canvas;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.scene.paint.Color;
import simmerpoint.drawing.Ink;
import simmerpoint.viewer.theme.Shade;
import simmerpoint.viewer.theme.Theme;

/** The colours of inks in the window: its own shades where it has one for the purpose, else those of every drawing. */
final class InkColours {
    private static final Map<Theme, Map<Ink, Color>> COLOURS = new EnumMap<>(Theme.class);

    static {
        for (Theme theme : Theme.values()) {
            Map<Ink, Color> colours = new EnumMap<>(Ink.class);
            for (Ink ink : Ink.values()) {
                colours.put(ink, shade(ink).map(s -> s.in(theme)).orElseGet(() -> own(ink, theme)));
            }
            COLOURS.put(theme, colours);
        }
    }

    private InkColours() {}

    static Color of(Ink ink, Theme theme) {
        return COLOURS.get(theme).get(ink);
    }

    private static Optional<Shade> shade(Ink ink) {
        return Optional.ofNullable(
                switch (ink) {
                    case PAPER, SHEET -> Shade.SHEET;
                    case INK -> Shade.WORD;
                    case SOFT -> Shade.QUIET;
                    case ACCENT -> Shade.MIRROR;
                    case SUN -> Shade.SUN;
                    case RAY -> Shade.RAY;
                    case LOST -> Shade.LOST;
                    case WARNING -> Shade.WRONG;
                    case HANDLE -> Shade.HANDLE;
                    case PAN -> Shade.SOLID;
                    default -> null;
                });
    }

    private static Color own(Ink ink, Theme theme) {
        int argb = (theme == Theme.DARK
                        ? simmerpoint.drawing.ColourScheme.DARK
                        : simmerpoint.drawing.ColourScheme.LIGHT)
                .argb(ink);
        return Color.rgb(argb >> 16 & 0xFF, argb >> 8 & 0xFF, argb & 0xFF, (argb >>> 24) / 255.0);
    }
}
