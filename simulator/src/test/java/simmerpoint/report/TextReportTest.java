package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.trace.TraceAnswer;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

class TextReportTest {
    static Stream<TraceResult> results() {
        return Stream.of(
                SampleResults.tight(),
                SampleResults.wide(),
                SampleResults.lopsided(),
                SampleResults.disc(),
                SampleResults.dark(),
                SampleResults.imprecise(),
                SampleResults.with("W".repeat(300), 1e-4, 1e9),
                SampleResults.with("ÄÖÜß 日本", 2, 1e-9));
    }

    @ParameterizedTest
    @MethodSource("results")
    void noLineIsLongerThanTheWindow(TraceResult result) {
        for (int width : new int[] {40, 47, 60, 80, 132}) {
            for (UnitSystem system : UnitSystem.values()) {
                for (boolean ascii : new boolean[] {false, true}) {
                    for (String line : TextReport.lines(TraceAnswer.of(result, system), width, ascii)) {
                        assertTrue(line.length() <= width, width + ": " + line);
                        assertTrue(!ascii || line.chars().allMatch(c -> c >= 32 && c < 127), line);
                        assertTrue(line.chars().allMatch(c -> c >= 32 && c != 0xa0), line);
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void barsGrowWithTheirShare(boolean ascii) {
        Section section = new Section("h", List.of(bar(1), bar(0.5), bar(0.001), bar(0)));
        List<String> lines = TextReport.lines(new Answer("", List.of(section)), 80, ascii);
        String full = ascii ? "#" : "\u2588";
        assertEquals(40, count(lines.get(1), full));
        assertEquals(20, count(lines.get(2), full));
        assertTrue(lines.get(3).endsWith(ascii ? "." : "\u258f"), lines.get(3));
        assertTrue(lines.get(4).endsWith("s"), lines.get(4));
    }

    private static Item bar(double share) {
        return new Item.Bar(0, "label", "1 W", share, "s");
    }

    private static long count(String line, String sign) {
        return line.chars().filter(c -> c == sign.charAt(0)).count();
    }

    @Test
    void figureAndUnitStayOnOneLine() {
        List<String> lines = TextReport.lines(TraceAnswer.of(SampleResults.tight(), UnitSystem.METRIC), 60, false);
        assertTrue(lines.stream().noneMatch(line -> line.matches("\\s*(W|kW/m²|cm|%)( .*)?")), lines.toString());
    }

    @Test
    void aWindowTooNarrowIsRefused() {
        Answer answer = new Answer("", List.of());
        assertThrows(IllegalArgumentException.class, () -> TextReport.lines(answer, 39, false));
    }
}
