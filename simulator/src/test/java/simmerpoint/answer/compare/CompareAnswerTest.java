package simmerpoint.answer.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.quantities.VariantNames;
import simmerpoint.report.SampleComparisons;
import simmerpoint.report.TextReport;
import simmerpoint.study.compare.Comparison;
import simmerpoint.units.UnitSystem;

class CompareAnswerTest {
    private static final Comparison SECTORS = SampleComparisons.of("dish.surface.sectors=5,12,24");
    private static final Comparison MIXED = SampleComparisons.of(
            "mirror.material=aluminised polyester film,household mirror",
            "title=a rather long title that tells nothing,b");

    private static List<String> lines(Comparison comparison, int width) {
        return TextReport.lines(CompareAnswer.of(comparison, UnitSystem.METRIC), width, false);
    }

    private static String text(Comparison comparison) {
        return String.join(" ", lines(comparison, 80)).replaceAll(" +", " ");
    }

    @Test
    void theFirstSentenceAnswersInWatts() {
        String first = CompareAnswer.first(SECTORS, UnitSystem.METRIC).replace(FigureFormat.NBSP, " ");
        assertTrue(
                first.matches(
                        "Best is sectors 24 with 4[89][0-9] W into the water; sectors 12 costs 1[0-9]{2}(\\.[0-9])? ± [0-9.]+ W; "
                                + "sectors 5 costs 5[0-9]{2}(\\.[0-9])? ± [0-9.]+ W\\."),
                first);
    }

    @Test
    void whatIsNotSeenIsSaidInWords() {
        String text = text(MIXED);
        assertTrue(text.contains("no difference is seen to material aluminised polyester film, title b"), text);
        assertTrue(text.contains(" none seen "), text);
        assertTrue(text.contains("it is below 2 of its standard errors"), text);
    }

    @Test
    void theTableStandsInEightyColumnsWithNamesOrNumbers() {
        List<String> short1 = lines(SECTORS, 80);
        assertTrue(
                short1.stream()
                        .anyMatch(line -> line.matches("  +24 +4[89][0-9] +[0-9]+\u2013[0-9]+ +best .* min +144 .*")),
                String.join("\n", short1));
        List<String> long1 = lines(MIXED, 80);
        assertTrue(long1.contains("  2: material aluminised polyester film, title b"), String.join("\n", long1));
        assertTrue(
                long1.stream().anyMatch(line -> line.matches("  +1 +4[89][0-9] +[0-9]+\u2013[0-9]+ +best .*")),
                String.join("\n", long1));
        assertTrue(short1.stream().anyMatch(line -> line.matches(" +5 .*never \\([0-9]+ to [0-9]+ °C\\).*")));
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 57, 80, 120})
    void noLineIsTooLong(int width) {
        for (Comparison c : List.of(SECTORS, MIXED)) {
            assertTrue(lines(c, width).stream().allMatch(line -> line.length() <= width));
        }
    }

    @Test
    void whatDiffersIsListedAndNothingElse() {
        String text = text(SECTORS);
        assertTrue(text.contains("dish.surface.sectors 5, 12 and 24 All else is the same."), text);
        assertFalse(text.contains("mirror.reflectance"), text);
        assertTrue(text(MIXED).contains("mirror.reflectance 0.85 and as the material"), text(MIXED));
    }

    @Test
    void aDiscHasNoBoilingTime() {
        Comparison disc = SampleComparisons.ofFile(
                "dish: {diameter: 1 m, focal-length: 0.7 m, surface: {cut: smooth}}\nplane: {disc: 5 cm}\n",
                "mirror.slope-error=3 mrad,8 mrad");
        String text = text(disc);
        assertTrue(text.contains("on the disc"), text);
        assertFalse(text.contains("boil"), text);
        assertTrue(text.contains(" none "), "a smooth dish has no panels to cut: " + text);
    }

    @Test
    void namesHoldAsMuchOfAKeyAsTellsItApart() {
        Comparison c = SampleComparisons.of("aim.turn.up=0°,1°", "aim.drift.up=0°,1°");
        VariantNames names = new VariantNames(c.variants());
        assertTrue(names.name(c.best().variant()).matches("turn.up [01]°, drift.up [01]°"));
        assertEquals("turn.up,\ndrift.up", names.head());
    }
}
