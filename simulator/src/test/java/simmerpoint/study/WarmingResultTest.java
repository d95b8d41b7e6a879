package simmerpoint.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.PhysicalConstants;
import simmerpoint.heat.ThermalPan;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.study.trace.WarmingResult;

class WarmingResultTest {
    private static TraceResult tea() throws Exception {
        Scenario scenario = ScenarioReader.builtIn().atOneMoment();
        return TraceStudy.run(scenario, TraceOptions.defaults().withRays(1 << 12), Progress.NONE);
    }

    /** The curve reaches boiling when the time to boil says so, which is integrated apart from it. */
    @Test
    void curveEndsWhereTheWaterBoils() throws Exception {
        TraceResult result = tea();
        WarmingResult warming = WarmingResult.of(result).orElseThrow();
        BoilingOutcome.Boils boils =
                (BoilingOutcome.Boils) result.heat().orElseThrow().boil();
        double nearly = warming.boilingCelsius() - 1e-6;
        assertEquals(boils.seconds().likely(), warming.likelySeconds(nearly).orElseThrow(), 30);
        assertTrue(warming.soonestSeconds(nearly).orElseThrow()
                < warming.latestSeconds(nearly).orElseThrow());
    }

    /** At the start nothing is lost yet but what the air is cooler by: (M C) dT/dt = absorbed light − loss (first law). */
    @Test
    void firstMinuteGoesByTheFirstLaw() throws Exception {
        TraceResult result = tea();
        HeatResult heat = result.heat().orElseThrow();
        WarmingResult warming = WarmingResult.of(result).orElseThrow();
        ThermalPan vessel = heat.cooking().vessel();
        double water = heat.cooking().contents().waterKilograms();
        double capacity = vessel.heatCapacity() + water * PhysicalConstants.WATER_SPECIFIC_HEAT;
        List<WarmingResult.Point> points = warming.points();
        double rise = points.get(1).water().likely() - points.get(0).water().likely();
        double lossless = heat.absorbed().total() * points.get(1).seconds() / capacity;
        assertTrue(rise < lossless && rise > 0.95 * lossless, rise + " of " + lossless);
    }
}
