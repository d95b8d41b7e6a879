package simmerpoint.study.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.uncertainty.LikelyRange;

/** The likely range of the hours of a day against that of a trace at the very hour. */
class LikelyDayTest {
    private static final TraceOptions OPTIONS =
            TraceOptions.defaults().withRays(1L << 15).withThreads(2);
    private static final DayPlan PLAN = DayPlan.hourly(LocalDate.of(2026, 6, 21));

    private static CheckedScenario at(String clock) throws Exception {
        return ScenarioReader.parse(
                "t.yaml",
                "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: flat-rings, sectors: 24, rings: 6}}\n"
                        + "mirror: {panel-tilt: 4 mrad}\npan: {diameter: 24 cm, height: 11 cm, water: 2 l}\n"
                        + "place: {latitude: 47.3°, longitude: 9.4°, altitude: 600 m, zone: Europe/Berlin}\n"
                        + "when: {date: 2026-06-21, time: " + clock + "}\n",
                Path.of(""));
    }

    private static DayResult day(CheckedScenario read) {
        return DayStudy.run(read, PLAN, OPTIONS, Progress.NONE);
    }

    private static HourLight light(DayResult day, int hour) {
        return day.hours().stream()
                .filter(h -> h.time().getHour() == hour)
                .findFirst()
                .flatMap(DayHour::light)
                .orElseThrow();
    }

    private static LikelyResult trace(CheckedScenario read) {
        return LikelyStudy.run(read, LikelyStudy.FOR_RANGE, OPTIONS, Progress.NONE);
    }

    /** The same draws under the same sun, so the very same figures: one definition for a page's top and its table of hours. */
    @Test
    void theScenariosOwnHourIsWhatATraceSays() throws Exception {
        CheckedScenario read = at("15:00");
        LikelyResult alone = trace(read);
        HourLight hour = light(day(read), 15);
        assertEquals(alone.power().low(), hour.power().low(), 1e-6);
        assertEquals(alone.power().likely(), hour.power().likely(), 1e-6);
        assertEquals(alone.power().high(), hour.power().high(), 1e-6);
        assertEquals(
                seconds(alone.boil().orElseThrow()).low(), seconds(hour.boil()).low(), 1e-3);
        assertEquals(
                seconds(alone.boil().orElseThrow()).high(), seconds(hour.boil()).high(), 1e-3);
        assertEquals(alone.level().orElseThrow(), hour.level());
    }

    private static LikelyRange seconds(BoilingOutcome boil) {
        return ((BoilingOutcome.Boils) boil).seconds();
    }

    /** Between the suns that cookers are traced under: within a tenth of the range's width of cookers traced at that hour. */
    @Test
    void hoursBetweenAreWhatATraceThereSays() throws Exception {
        DayResult day = day(at("13:00"));
        for (int hour : new int[] {8, 10, 12, 18}) {
            LikelyRange alone = trace(at(hour + ":00")).power();
            LikelyRange found = light(day, hour).power();
            double allowed = 0.1 * alone.width();
            assertEquals(alone.low(), found.low(), allowed, hour + ":00 low");
            assertEquals(alone.likely(), found.likely(), allowed, hour + ":00");
            assertEquals(alone.high(), found.high(), allowed, hour + ":00 high");
        }
    }

    /** Nominal figures lie within the range, and the hours that a day cooks have a poor, a likely and a good end. */
    @Test
    void theDayHasAPoorAndAGoodEnd() throws Exception {
        DayResult day = day(at("13:00"));
        for (DayHour hour : day.hours()) {
            HourLight light = hour.light().orElseThrow();
            double given = light.asGiven().power().value();
            assertTrue(light.power().low() < given && given < light.power().high(), given + " in " + light.power());
            assertTrue(light.simmerSpareWatts().low() < light.asGiven().simmerSpareWatts());
        }
        LikelyRange hours = day.cookingHours();
        assertTrue(hours.low() < hours.likely() - 0.2 && hours.likely() < hours.high() - 0.2, hours.toString());
        DayInterval poor = day.intervals(LikelyRange::low).get(0);
        DayInterval likely = day.intervals(LikelyRange::likely).get(0);
        assertTrue(poor.from().isAfter(likely.from()) && poor.to().isBefore(likely.to()));
        assertTrue(Duration.between(likely.from(), likely.to()).toHours() < hours.high());
    }
}
