package simmerpoint.viewer.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ShadeTest {
    private static final List<Shade> GROUNDS = List.of(Shade.GROUND, Shade.SHEET, Shade.FIELD);

    /** Contrast ratio as W3C, Web Content Accessibility Guidelines 2.1 (2018), defines it: "contrast ratio", "relative luminance". */
    private static double contrast(Color a, Color b) {
        double high = Math.max(luminance(a), luminance(b));
        double low = Math.min(luminance(a), luminance(b));
        return (high + 0.05) / (low + 0.05);
    }

    private static double luminance(Color c) {
        return 0.2126 * linear(c.getRed()) + 0.7152 * linear(c.getGreen()) + 0.0722 * linear(c.getBlue());
    }

    private static double linear(double s) {
        return s <= 0.03928 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
    }

    private static void atLeast(double wanted, Shade mark, Shade ground, Theme theme) {
        double found = contrast(mark.in(theme), ground.in(theme));
        assertTrue(found >= wanted, mark + " on " + ground + ", " + theme + ": " + found);
    }

    @Test
    void contrastIsThatOfTheGuidelinesAtItsEnds() {
        assertEquals(21, contrast(Color.BLACK, Color.WHITE), 1e-9);
        assertEquals(1, contrast(Color.RED, Color.RED), 1e-9);
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void wordsAreReadable(Theme theme) {
        for (Shade ground : GROUNDS) {
            for (Shade word : List.of(Shade.WORD, Shade.QUIET, Shade.WRONG, Shade.CAUTION, Shade.HANDLE)) {
                atLeast(4.5, word, ground, theme);
            }
        }
        atLeast(4.5, Shade.ON_HANDLE, Shade.HANDLE, theme);
        atLeast(4.5, Shade.CAUTION, Shade.CAUTION_GROUND, theme);
        atLeast(4.5, Shade.WORD, Shade.CAUTION_GROUND, theme);
        atLeast(4.5, Shade.WORD, Shade.HAIR, theme);
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void linesAndMarksAreSeen(Theme theme) {
        for (Shade ground : GROUNDS) {
            for (Shade mark :
                    List.of(Shade.LINE, Shade.FOCUS, Shade.SUN, Shade.RAY, Shade.LOST, Shade.MIRROR, Shade.SOLID)) {
                atLeast(3, mark, ground, theme);
            }
        }
    }

    @Test
    void theNameInStyleSheetsIsThatOfTheShade() {
        assertEquals("-sp-on-handle", Shade.ON_HANDLE.looked());
    }
}
