package simmerpoint.answer.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.scenario.GroundHeights;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.study.Cookers;
import simmerpoint.study.day.DayResult;
import simmerpoint.units.UnitSystem;

class DayAnswerTest {
    private static final LocalDate MIDSUMMER = LocalDate.of(2026, 6, 21);

    private static DayResult day(Scenario scenario, LocalDate date) {
        return Cookers.day(scenario, date);
    }

    private static Scenario hillside() {
        return Cookers.usual(Cookers.HILLSIDE, Cookers.COUNTRY);
    }

    private static Scenario hillside(Aim aim, GroundHeights ground) {
        Scenario s = hillside();
        return new Scenario(
                s.title(), s.dish(), s.mirror(), s.sun(), aim, s.target(), s.stand(), s.cooking(), s.site(), ground);
    }

    private static String text(Answer answer) {
        return answer.sections().stream()
                .flatMap(s -> s.items().stream())
                .map(Object::toString)
                .collect(Collectors.joining("\n"))
                .replace(FigureFormat.NBSP, " ");
    }

    private static String first(Answer answer) {
        return ((Item.Sentence) answer.sections().get(0).items().get(0)).text().replace(FigureFormat.NBSP, " ");
    }

    private static Item.Table table(Answer answer, String heading) {
        return answer.sections().stream()
                .filter(s -> s.heading().equals(heading))
                .flatMap(s -> s.items().stream())
                .filter(Item.Table.class::isInstance)
                .map(Item.Table.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theFirstSentenceSaysFromWhenToWhenItCooksAndHowStronglyAtNoon() {
        DayResult result = day(hillside(), MIDSUMMER);
        String first = first(DayAnswer.of(result, UnitSystem.METRIC));
        assertTrue(
                first.matches("On 21 June 2026 it cooks from 06:[0-9]{2} to 20:[0-9]{2}, 14\\.[0-9] hours in all.*"),
                first);
        String watts = LikelyWords.power(
                result.noon().orElseThrow().light().orElseThrow().power());
        assertTrue(first.contains((watts + " at solar noon, 13:2").replace('\u00a0', ' ')), first);
    }

    @Test
    void everyHourHasItsRowAndItsStand() {
        DayResult result = day(hillside(), MIDSUMMER);
        Answer answer = DayAnswer.of(result, UnitSystem.METRIC);
        assertEquals(result.hours().size(), table(answer, "Hour by hour").rows().size());
        List<List<String>> stand = table(answer, "How it stands").rows();
        assertEquals(result.hours().size(), stand.size());
        double height = result.hours().get(0).stand().panHeightMetres();
        assertEquals(
                Math.round(100 * height) + FigureFormat.NBSP + "cm",
                stand.get(0).get(2));
        assertTrue(text(answer).contains("What limits it at low sun: at 07:00"), text(answer));
        assertTrue(text(answer).contains("what other times cost, the command aim tells."), text(answer));
        assertTrue(text(DayAnswer.of(result, UnitSystem.INCH)).contains(" in"), "inches");
    }

    @Test
    @Tag("slow")
    void aLowMountTouchesTheGroundAndAHighOneIsTooHighToCookAt() {
        String low = text(DayAnswer.of(
                day(hillside(Aim.PERFECT, new GroundHeights(0.3, 0.4, 1.3)), MIDSUMMER), UnitSystem.METRIC));
        assertTrue(low.contains("The dish touches the ground before 10:"), low);
        assertTrue(low.contains("On 21 June 2026 it cooks from 10:"), low);
        String high = text(DayAnswer.of(
                day(hillside(Aim.PERFECT, new GroundHeights(0.9, 0.4, 1.3)), MIDSUMMER), UnitSystem.METRIC));
        assertTrue(high.contains("too high to cook at"), high);
        assertFalse(high.contains("touches the ground"), high);
        String deep = text(DayAnswer.of(
                day(hillside(Aim.PERFECT, new GroundHeights(0.9, 1.2, 5)), MIDSUMMER), UnitSystem.METRIC));
        assertTrue(deep.contains("too low to cook at"), deep);
    }

    @Test
    void aPanOnTheDishIsNotMoved() {
        Aim carried = new Aim(0, 0, 0, 0, 0, 0.05, Aim.PanCarrier.DISH);
        Answer answer = DayAnswer.of(day(hillside(carried, GroundHeights.USUAL), MIDSUMMER), UnitSystem.METRIC);
        assertEquals(6, table(answer, "How it stands").heads().size());
        assertTrue(text(answer).contains("The dish carries the pan, so nothing else is moved."));
    }

    @Test
    void polarNightAndASunThatStaysTooLowAreSaid() {
        Scenario north = Cookers.usual(Cookers.FAR_NORTH, Cookers.COUNTRY);
        String night = first(DayAnswer.of(day(north, LocalDate.of(2026, 12, 21)), UnitSystem.METRIC));
        assertTrue(night.contains("polar night"), night);
        String low = first(DayAnswer.of(day(north, LocalDate.of(2026, 1, 27)), UnitSystem.METRIC));
        assertTrue(low.contains("never gets 5° high"), low);
    }

    @Test
    void minutesBecomeHoursWhenTheyAreMany() {
        assertEquals("28 to 33 min", TimeWords.minutes(28 * 60, 33 * 60).replace(FigureFormat.NBSP, " "));
        assertEquals("30 min", TimeWords.minutes(29.8 * 60, 30.2 * 60).replace(FigureFormat.NBSP, " "));
        assertEquals("1.5 to 2.5 h", TimeWords.minutes(90 * 60, 150 * 60).replace(FigureFormat.NBSP, " "));
    }

    @Test
    @Tag("slow")
    void aYearNamesItsBestMonthAndThoseWithout() {
        Answer north =
                YearAnswer.of(Cookers.year(Cookers.usual(Cookers.FAR_NORTH, Cookers.COUNTRY)), UnitSystem.METRIC);
        String first = first(north);
        assertTrue(first.contains("longest in June"), first);
        assertTrue(first.contains("not at all in January") && first.contains("December"), first);
        Item.Table grid = table(north, "Month by hour");
        assertEquals(13, grid.heads().size());
        assertTrue(
                grid.rows().get(5).get(6).matches("[0-9]+[cwsbf]"), grid.rows().toString());
        assertEquals("0.0", grid.rows().get(grid.rows().size() - 2).get(12));
    }
}
