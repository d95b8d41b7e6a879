package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.drawing.ColourScheme;
import simmerpoint.drawing.Ink;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.TextStyle;
import simmerpoint.drawing.output.PngFile;
import simmerpoint.heat.HeatLevel;
import simmerpoint.quantities.DayQuantities;
import simmerpoint.quantities.Schemas;
import simmerpoint.study.Cookers;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.YearResult;
import simmerpoint.sun.Site;
import simmerpoint.units.UnitSystem;

class DayReportsTest {
    private static final int WHITE = 0xFFFFFF;

    private static DayResult day;
    private static DayResult night;
    private static YearResult year;

    private static DayResult on(Site place, LocalDate date) {
        return Cookers.day(Cookers.usual(place, Cookers.COUNTRY), date);
    }

    @BeforeAll
    static void study() {
        day = on(Cookers.HILLSIDE, LocalDate.of(2026, 6, 21));
        night = on(Cookers.FAR_NORTH, LocalDate.of(2026, 12, 21));
        year = Cookers.year(Cookers.usual(Cookers.FAR_NORTH, Cookers.COUNTRY));
    }

    @Test
    void jsonHoldsTheFiguresOfTheStudy() throws IOException {
        JsonNode json = Schemas.read(DayQuantities.DOCUMENT, day);
        assertEquals("2026-06-21", json.get("date").asText());
        assertEquals(Math.toRadians(47.3), json.get("place").get("latitude_rad").asDouble(), 1e-15);
        assertEquals(day.hours().size(), json.get("hours").size());
        JsonNode noon = json.get("noon");
        assertEquals(
                day.noon().orElseThrow().cookingPowerWatts(),
                noon.get("cooking_power_W").asDouble(),
                0);
        assertTrue(noon.get("cooking_power_as_given_W_se").asDouble() > 0);
        HeatLevel level = day.noon().orElseThrow().light().orElseThrow().level().likely();
        assertEquals(LevelWords.of(level), noon.get("heat_level").asText());
        assertTrue(
                noon.get("boil_low_s").asDouble() <= noon.get("boil_likely_s").asDouble());
        JsonNode first = json.get("hours").get(0);
        assertEquals("2026-06-21T07:00:00+02:00", first.get("time").asText());
        assertEquals("climbs wall", first.get("limits").get(0).get("kind").asText());
        assertFalse(first.get("stand").get("touches_ground").asBoolean());
        assertEquals(3600 * day.cookingHours().likely(), json.get("cooking_s").asDouble(), 1e-9);
    }

    @Test
    void jsonOfANightHasNoHours() throws IOException {
        JsonNode json = Schemas.read(DayQuantities.DOCUMENT, night);
        assertEquals("never rises", json.get("sun").asText());
        assertTrue(json.get("noon").isNull() && json.get("sunrise").isNull());
        assertEquals(0, json.get("hours").size());
        assertEquals(0, json.get("cooks").size());
    }

    @Test
    void theSameDayAgainIsTheSameBytesButForRun() throws IOException {
        ObjectNode one = (ObjectNode) Schemas.read(DayQuantities.DOCUMENT, day);
        DayResult again = on(Cookers.HILLSIDE, LocalDate.of(2026, 6, 21));
        ObjectNode two = (ObjectNode) Schemas.read(DayQuantities.DOCUMENT, again);
        one.remove("run");
        two.remove("run");
        assertEquals(one.toString(), two.toString());
        assertArrayEquals(DayQuantities.DOCUMENT.csv(day), DayQuantities.DOCUMENT.csv(again));
    }

    @Test
    void csvHasARowForEveryHourUnderItsHeads() {
        List<String> lines = new String(DayQuantities.DOCUMENT.csv(day), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .toList();
        assertEquals(1 + day.hours().size(), lines.size());
        int columns = lines.get(0).split(",").length;
        assertTrue(lines.stream().allMatch(line -> line.split(",", -1).length == columns));
        assertEquals("cooking_power_W", lines.get(0).split(",")[6]);
        assertEquals(
                day.hours().get(0).cookingPowerWatts(),
                Double.parseDouble(lines.get(1).split(",")[6]),
                1e-3);
        long rows = new String(DayQuantities.YEAR.csv(year), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> line.startsWith("2026-"))
                .count();
        assertEquals(year.days().stream().mapToInt(d -> d.hours().size()).sum(), rows);
    }

    @Test
    void jsonOfAYearHasTwelveDays() throws IOException {
        JsonNode days = Schemas.read(DayQuantities.YEAR, year).get("days");
        assertEquals(12, days.size());
        assertEquals("2026-02-21", days.get(1).get("date").asText());
        assertEquals(
                28 * days.get(1).get("cooking_s").asDouble(),
                days.get(1).get("clear_month_cooking_s").asDouble(),
                1e-9);
    }

    @Test
    void picturesKeepInsideTheirSheets() {
        for (UnitSystem system : UnitSystem.values()) {
            for (BufferedImage image : List.of(
                    PngFile.image(DayPicture.sheet(day, system)),
                    PngFile.image(DayPicture.sheet(night, system)),
                    PngFile.image(YearPicture.sheet(year, system)))) {
                assertEquals(1400, image.getWidth());
                for (int y = 0; y < image.getHeight(); y++) {
                    for (int edge = 0; edge < 8; edge++) {
                        assertEquals(WHITE, image.getRGB(edge, y) & WHITE, "left at " + y);
                        assertEquals(WHITE, image.getRGB(1399 - edge, y) & WHITE, "right at " + y);
                    }
                }
            }
        }
    }

    @Test
    void theLevelsOfTheDayAreSeen() {
        BufferedImage image = PngFile.image(DayPicture.sheet(day, UnitSystem.METRIC));
        for (HeatLevel level : List.of(HeatLevel.TOO_COOL, HeatLevel.KEEP_WARM, HeatLevel.SIMMER, HeatLevel.BOIL)) {
            assertTrue(pixels(image, colour(Style.of(level).fill().orElseThrow())) > 2000, level + " is not seen");
        }
    }

    private static Color colour(Ink ink) {
        return new Color(ColourScheme.PRINT.argb(ink));
    }

    private static long pixels(BufferedImage image, Color colour) {
        long count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                count += image.getRGB(x, y) == colour.getRGB() ? 1 : 0;
            }
        }
        return count;
    }

    /** Relative luminance and contrast by the Web Content Accessibility Guidelines 2.1, which ask for 4.5 (from memory). */
    private static double luminance(Color colour) {
        float[] rgb = colour.getRGBColorComponents(null);
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int k = 0; k < rgb.length; k++) {
            double c = rgb[k];
            sum += weights[k] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    @Test
    void levelsDarkenEvenInGreyAndTheirTextCanBeRead() {
        double before = 1;
        for (HeatLevel level : HeatLevel.values()) {
            double own = luminance(colour(Style.of(level).fill().orElseThrow()));
            double text = luminance(colour(TextStyle.on(level).ink()));
            double contrast = (Math.max(own, text) + 0.05) / (Math.min(own, text) + 0.05);
            assertTrue(contrast >= 4.5, level + ": contrast " + contrast);
            double lightness = 116 * Math.cbrt(own) - 16;
            assertTrue(lightness < 116 * Math.cbrt(before) - 16 - 3, level + " is hardly darker than the one before");
            before = own;
        }
    }
}
