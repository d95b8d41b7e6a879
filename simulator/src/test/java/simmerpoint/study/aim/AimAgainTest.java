package simmerpoint.study.aim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ExampleScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.study.compare.CompareStudy;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayPlan;
import simmerpoint.study.day.DayStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.sun.SunMoment;
import simmerpoint.sun.Sunlight;

class AimAgainTest {
    private static final TraceOptions OPTIONS = TraceOptions.defaults().withRays(1 << 16);

    /** The example with a place, at ten by its clock. */
    private static CheckedScenario read() throws Exception {
        String text = ExampleScenario.text()
                .replace("  elevation: 50°", "  #")
                .replace("  beam: 850 W/m²", "  #")
                .replace(
                        "\naim:",
                        "\nplace: {latitude: 47.3° N, longitude: 8.5° E, zone: UTC+1}\nwhen: {date: 2026-06-21, time: \"10:00\"}\naim:");
        return ScenarioReader.parse("placed", text, Path.of(""));
    }

    private static Scenario placed() throws Exception {
        return read().scenario();
    }

    /**
     * The definition, moment by moment by whole traces with other rays of the same dish: at the minutes found a tenth less is there than a dish
     * aimed at the sun of that moment gets, in the same beam. To 5 standard errors of the minutes and of the traces.
     */
    @Test
    void atTheMinutesFoundATenthLessIsThereThanAimingAgainGives() throws Exception {
        Scenario scenario = placed();
        AimAgain found = AimAgain.of(scenario, 0.1, OPTIONS, Progress.NONE);
        assertTrue(found.way().isReal());
        Estimate minutes = found.minutes().orElseThrow();
        double at = lost(scenario, found, minutes.value());
        double slope = (lost(scenario, found, 1.2 * minutes.value()) - at) / (0.2 * minutes.value());
        assertTrue(slope > 0, "slope " + slope);
        assertEquals(0.1, at, 5 * (slope * minutes.standardError() + 0.001));
    }

    private static double lost(Scenario scenario, AimAgain found, double minutes) {
        SunMoment start = SunMoment.at(
                scenario.site().orElseThrow().place(),
                scenario.site().orElseThrow().when());
        SunMoment then = SunMoment.at(start.site(), start.time().plusNanos(Math.round(minutes * 60e9)));
        SunTrack.Drift drift = found.way().after(minutes);
        TraceOptions other = OPTIONS.withRays(1 << 17);
        Scenario straight = scenario.withAim(scenario.aim().deadOn());
        double left = TraceStudy.run(
                        straight.withAim(straight.aim().plusDrift(drift.upRadians(), drift.sideRadians())),
                        other,
                        Progress.NONE)
                .useful()
                .value();
        Sunlight again = new Sunlight(
                then.position().elevationRadians(),
                scenario.sun().beamWattsPerSquareMetre(),
                scenario.sun().shape());
        double anew = TraceStudy.run(straight.withSun(again), other, Progress.NONE)
                .useful()
                .value();
        return 1 - left / anew;
    }

    /** Aim, day and compare say the same minutes of one dish at one moment. */
    @Test
    void allCommandsSayTheSameMinutes() throws Exception {
        Scenario scenario = placed();
        double minutes = AimAgain.of(scenario, 0.1, OPTIONS, Progress.NONE)
                .minutes()
                .orElseThrow()
                .value();
        double ofAim = AimStudy.times(scenario, AimPlan.USUAL, OPTIONS, Progress.NONE)
                .minutes()
                .orElseThrow()
                .value();
        assertEquals(minutes, ofAim);
        double ofCompare = CompareStudy.run(List.of(new Variant("", "", Map.of(), read())), OPTIONS, Progress.NONE)
                .best()
                .againSeconds()
                .orElseThrow()
                .value();
        assertEquals(60 * minutes, ofCompare, 1e-9);
        DayPlan plan = DayPlan.hourly(scenario.site().orElseThrow().when().toLocalDate());
        DayHour ten = DayStudy.run(scenario, plan, OPTIONS, Progress.NONE).hours().stream()
                .filter(hour -> hour.time().getHour() == 10)
                .findFirst()
                .orElseThrow();
        assertEquals(minutes, ten.walk().orElseThrow().minutes(), 1e-6 * minutes);
    }
}
