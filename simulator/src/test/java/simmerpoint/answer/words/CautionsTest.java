package simmerpoint.answer.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CautionsTest {
    private static String all(double flux) {
        return String.join(" ", Cautions.sentences(flux, "pan")).replace('\u00a0', ' ');
    }

    /**
     * Dry beech leaves catch fire at 4, 6, 8 cal/cm² from pulses of about 2, 10, 32 s (Glasstone and Dolan 1977, table
     * 7.35), which is a mean flux of 66.9, 20.1, 8.4 kW/m² for 80 % of the energy.
     */
    @ParameterizedTest
    @CsvSource({"4, 2, about 2 seconds", "6, 10, about 10 seconds", "8, 32, about half a minute"})
    void whatSetsDryLeavesAlightIsSaidToDoSo(double caloriesPerSquareCentimetre, double seconds, String words) {
        double flux = 0.8 * caloriesPerSquareCentimetre * 41840 / seconds;
        assertTrue(all(flux * 1.06).contains(words), all(flux * 1.06));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 500, 3000, 9000, 30000, 5e5, Double.NaN})
    void eyesCoverAndLocalRulesAreAlwaysThere(double flux) {
        String text = all(flux);
        assertTrue(text.contains("blinds") && text.contains("Keep eyes, face and hands out of the beam"), text);
        assertTrue(
                text.contains("Cover the mirror") && text.contains("estimates") && text.contains("local fire rules"));
        assertFalse(text.contains("NaN"), text);
        assertEquals(3, Cautions.sentences(flux, "pan").size());
    }

    @Test
    void littleFluxIsNeverCalledSafe() {
        assertFalse(all(100).toLowerCase(java.util.Locale.ROOT).contains("safe"));
        assertFalse(all(100).contains("catch fire"));
    }

    /** By what every command printed when it was last frozen. */
    @Test
    void everyAnswerAboutLightOrHeatHasTheCaution() throws IOException {
        List<String> commands = List.of("trace", "pan", "day", "aim", "compare", "budget", "design", "safety", "trial");
        Path frozen = Path.of("src", "test", "resources", "simmerpoint", "frozen");
        int asked = 0;
        for (String line : Files.readAllLines(frozen.resolve("cases.txt"))) {
            String[] parts = line.split("\\|");
            if (parts.length == 3
                    && commands.contains(parts[2].strip().split(" ")[0])
                    && !parts[2].contains("--help")
                    && parts[1].contains("txt")) {
                String text = Files.readString(frozen.resolve("results").resolve(parts[0].strip() + ".txt"));
                assertTrue(
                        text.contains("exit code 2") || text.contains("blinds and burns"),
                        parts[0] + " has no caution");
                asked++;
            }
        }
        assertTrue(asked > 40, asked + " answers");
    }
}
