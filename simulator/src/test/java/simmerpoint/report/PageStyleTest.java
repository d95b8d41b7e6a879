package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.drawing.ColourScheme;
import simmerpoint.drawing.Style;
import simmerpoint.heat.HeatLevel;

/**
 * Colours of the page: text has at least 4.5 times the luminance of its ground or the other way round, lines that carry
 * meaning 3 times (WCAG 2.2, success criteria 1.4.3 and 1.4.11, level AA; luminance by its definition there).
 */
class PageStyleTest {
    private static final Pattern BLOCK = Pattern.compile(":root \\{(.*?)\\}", Pattern.DOTALL);
    private static final Pattern COLOUR = Pattern.compile("--([a-z0-9-]+): (#[0-9a-f]{6});");

    private static final Map<String, Map<String, String>> SCHEMES = new HashMap<>();
    private static String sheet;

    @BeforeAll
    static void read() {
        sheet = HtmlPage.sheet();
        Matcher block = BLOCK.matcher(sheet);
        Map<String, String> light = new HashMap<>();
        // First the colours of drawings, then those of the page alone.
        for (String scheme : new String[] {"light", "dark", "print", "light", "dark", "print"}) {
            assertTrue(block.find());
            Map<String, String> colours = new HashMap<>(light);
            colours.putAll(SCHEMES.getOrDefault(scheme, Map.of()));
            Matcher colour = COLOUR.matcher(block.group(1));
            while (colour.find()) {
                colours.put(colour.group(1), colour.group(2));
            }
            SCHEMES.put(scheme, colours);
            if (scheme.equals("light")) {
                light.putAll(colours);
            }
        }
    }

    private static double luminance(String hex) {
        double sum = 0;
        double[] weights = {0.2126, 0.7152, 0.0722};
        for (int k = 0; k < 3; k++) {
            double c = Integer.parseInt(hex.substring(1 + 2 * k, 3 + 2 * k), 16) / 255.0;
            sum += weights[k] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    static double contrast(String a, String b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    /** 21 and 4.54: values that WCAG's own examples and every checker give for black and #767676 on white. */
    @Test
    void contrastIsThatOfTheStandard() {
        assertEquals(21, contrast("#000000", "#ffffff"), 1e-9);
        assertEquals(4.54, contrast("#767676", "#ffffff"), 0.005);
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark", "print"})
    void textAndLinesStandOutFromTheirGround(String scheme) {
        Map<String, String> c = SCHEMES.get(scheme);
        for (String text : new String[] {"ink", "soft", "accent"}) {
            for (String ground : new String[] {"paper", "sheet"}) {
                assertTrue(contrast(c.get(text), c.get(ground)) >= 4.5, scheme + ": " + text + " on " + ground);
            }
        }
        assertTrue(contrast(c.get("ink"), c.get("care")) >= 4.5, scheme);
        assertTrue(contrast(c.get("sun"), c.get("paper")) >= 3, scheme);
        assertTrue(contrast(c.get("sun"), c.get("rule")) >= 3, scheme + ": bars on their track");
        assertTrue(contrast(c.get("care-rule"), c.get("paper")) >= 3, scheme);
    }

    /** The bands have the colours of the pictures, and names that can be read on them. */
    @Test
    void heatLevelsHaveOneColourEverywhere() {
        for (HeatLevel level : HeatLevel.values()) {
            String colour = String.format(
                    "#%06x", ColourScheme.PRINT.argb(Style.of(level).fill().orElseThrow()) & 0xFFFFFF);
            String ink = Style.of(level).cssClass();
            assertTrue(sheet.contains("--" + ink + ": " + colour + ";"), level + " " + colour);
            assertTrue(sheet.contains("." + ink + " { fill: var(--" + ink + ");"), level.toString());
            String text = level.compareTo(HeatLevel.BOIL) < 0 ? "#1a1a1a" : "#ffffff";
            assertTrue(contrast(colour, text) >= 4.5, level.toString());
        }
    }

    @Test
    void nothingIsFetched() {
        assertFalse(sheet.contains("url(") || sheet.contains("@import") || sheet.contains("http"));
    }
}
