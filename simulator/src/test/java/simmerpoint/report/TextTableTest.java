package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;

class TextTableTest {
    private static final Item.Table TABLE = new Item.Table(
            List.of("time", "taken up\nW", "heat\nlevel"),
            List.of(List.of("09:00", "587", "boil"), List.of("20:00", "95", "")));

    @Test
    void columnsStandUnderTheirHeads() {
        assertEquals(
                List.of(
                        "   time  taken up   heat",
                        "                W  level",
                        "  09:00       587   boil",
                        "  20:00        95"),
                TextTable.lines(TABLE, 60));
    }

    @Test
    void whatIsTooWideIsSaidRowByRow() {
        List<String> lines = TextTable.lines(TABLE, 20);
        assertTrue(lines.stream().allMatch(line -> line.length() <= 20), lines.toString());
        String all = String.join(" ", lines).replaceAll(" +", " ").strip();
        assertEquals("09:00: taken up W 587; heat level boil 20:00: taken up W 95", all);
    }

    @Test
    void asciiReachesIntoTables() {
        Item.Table degrees = new Item.Table(List.of("sun"), List.of(List.of("7°")));
        Answer answer = new Answer("", List.of(new Section("Day", List.of(degrees))));
        assertEquals(List.of("Day", "    sun", "  7 deg"), TextReport.lines(answer, 40, true));
    }

    @Test
    void refusesARowThatDoesNotFitTheHeads() {
        assertThrows(
                IllegalArgumentException.class, () -> new Item.Table(List.of("a", "b"), List.of(List.of("only one"))));
    }
}
