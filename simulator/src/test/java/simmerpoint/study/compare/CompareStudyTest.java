package simmerpoint.study.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import simmerpoint.answer.compare.CompareAnswer;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.Replicates;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.scenario.variants.Variants;
import simmerpoint.scenario.variants.VariedKey;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.target.Ledger;
import simmerpoint.units.UnitSystem;

class CompareStudyTest {
    private static final TraceOptions OPTIONS =
            TraceOptions.defaults().withRays(1 << 13).withThreads(2).withSeed(11);

    /** The built-in example with these keys varied. */
    static List<Variant> variants(String... typed) throws ScenarioException {
        List<VariedKey> keys = new ArrayList<>();
        for (String each : typed) {
            keys.add(VariedKey.parse(each));
        }
        return Variants.of(List.of(ScenarioReader.builtIn().values()), keys);
    }

    private static Comparison run(String... typed) throws ScenarioException {
        return CompareStudy.run(variants(typed), OPTIONS, Progress.NONE);
    }

    @Test
    void everyRowIsWhatItsOwnTraceSays() throws ScenarioException {
        Comparison c = run("dish.surface.sectors=12,24", "stand.pull-back=0 cm,10 cm", "mirror.reflectance=0.8,0.85");
        assertEquals(8, c.rows().size());
        for (ComparedRow row : c.rows()) {
            Scenario scenario = row.variant().scenario();
            TraceResult alone = TraceStudy.run(scenario, OPTIONS, Progress.NONE);
            double absorbed = alone.ledger().absorbed().value();
            // Another frame rounds single precision anew: 6e-8 a number.
            assertEquals(absorbed, row.absorbed().value(), 5e-7 * absorbed);
            assertEquals(alone.panels(), row.panels());
            assertEquals(alone.spot().peakFlux().value(), row.peakFlux().value(), 1);
            if (row.boil().orElseThrow() instanceof BoilingOutcome.Boils boils) {
                assertTrue(boils.seconds().likely() > 600, "boils in " + boils.seconds());
            }
        }
    }

    /** A pan beside the spot gets more from a rough mirror that spreads its light: that is no reason to build roughly. */
    @Test
    void sloppyWorkIsNotCrownedBecauseThePanStandsOffItsBestPlace() throws ScenarioException {
        Comparison c = run("mirror.slope-error=2 mrad,14 mrad", "stand.side=20 cm");
        assertEquals("14 mrad", c.best().variant().varied().get("mirror.slope-error"));
        ComparedRow placed = c.bestAtItsPlace().orElseThrow();
        assertEquals("2 mrad", placed.variant().varied().get("mirror.slope-error"));
        String text = CompareAnswer.of(c, UnitSystem.METRIC).toString().replace('\u00a0', ' ');
        assertTrue(
                text.contains(
                                "That is with the pans where they stand. With each pan at its best place, slope-error 2 mrad")
                        && text.contains(" is best with "),
                text);
        for (ComparedRow row : c.rows()) {
            assertTrue(row.bestPlaceWatts() >= row.useful().value() - 0.5, row.toString());
        }
    }

    /** 24 against 23 sectors, glued anew twenty times with seeds of the test's own: the ± is that spread, to a factor of two. */
    @Test
    void theErrorOfADifferenceHoldsTheLuckOfGluing() throws ScenarioException {
        List<Variant> both = variants("dish.surface.sectors=24,23", "mirror.panel-tilt=8 mrad");
        List<Scenario> scenarios = both.stream().map(Variant::scenario).toList();
        double[] gains = new double[20];
        for (int k = 0; k < gains.length; k++) {
            List<PairedWatts> built = PairedStudy.watts(scenarios, OPTIONS.withSeed(500 + k), Progress.NONE);
            gains[k] = built.get(0).useful().value() - built.get(1).useful().value();
        }
        double spread = Math.sqrt(gains.length)
                * Replicates.mean(gains.length, k -> gains[k]).standardError();
        Comparison c = CompareStudy.run(both, OPTIONS, Progress.NONE);
        double stated = c.rows().get(1).difference().standardError();
        assertTrue(stated > spread / 2 && stated < 2 * spread, stated + " W stated, " + spread + " W really");
    }

    @Test
    void theBestComesFirstAndDifferencesArePaired() throws ScenarioException {
        Comparison c = run("mirror.reflectance=0.7,0.85,0.8", "mirror.panel-tilt=0 mrad");
        List<String> order = c.rows().stream()
                .map(row -> row.variant().varied().get("mirror.reflectance"))
                .toList();
        assertEquals(List.of("0.85", "0.8", "0.7"), order);
        assertEquals(0, c.best().difference().value(), 0);
        assertFalse(c.best().isSeenToDiffer());
        ComparedRow last = c.rows().get(2);
        assertEquals(
                last.useful().value() - c.best().useful().value(),
                last.difference().value(),
                1e-9);
        double unpaired =
                Math.hypot(last.useful().standardError(), c.best().useful().standardError());
        assertTrue(last.difference().standardError() <= unpaired / 3, last.difference() + " against " + unpaired);
        assertTrue(last.isSeenToDiffer());
    }

    @Test
    void whatMakesNoDifferenceIsNotSeenToDiffer() throws ScenarioException {
        Comparison c = run("title=one,other,third");
        assertEquals(3, c.top().size());
        for (ComparedRow row : c.rows()) {
            assertEquals(0, row.difference().value(), 1e-9);
        }
        assertEquals(List.of(0, 1, 2), c.rows().stream().map(ComparedRow::place).toList(), "ties keep their order");
    }

    /** Two standard errors, and one in sixteen: Student's law of 15 degrees of freedom gives 0.0639 beyond 2 (any table). */
    @Test
    void aDifferenceIsSeenFromTwoOfItsErrorsOn() {
        assertFalse(row(new Estimate(-1, 0.51)).isSeenToDiffer());
        assertTrue(row(new Estimate(-1, 0.49)).isSeenToDiffer());
        assertFalse(row(new Estimate(-1e-8, 0)).isSeenToDiffer(), "rounding is no difference");
    }

    private static ComparedRow row(Estimate difference) {
        return new ComparedRow(
                null,
                0,
                Estimate.exact(700),
                ledger(700),
                difference,
                Optional.empty(),
                Estimate.exact(0),
                0,
                Optional.empty(),
                1,
                Optional.empty(),
                Optional.empty());
    }

    private static Ledger ledger(double absorbed) {
        Estimate e = Estimate.exact(absorbed);
        return new Ledger(e, e, e, e, e, e, e, e, e, e, e, e, e, e, e, e, List.of());
    }

    @Test
    void aimingAgainIsToldInMinutesAndInTheSunsDegrees() throws ScenarioException {
        Comparison c = run("dish.surface.sectors=24,25");
        for (ComparedRow row : c.rows()) {
            double degrees = Math.toDegrees(row.drift().orElseThrow().value());
            assertTrue(degrees > 1 && degrees < 3, degrees + "°");
            assertEquals(4 * degrees, row.againSeconds().orElseThrow().value() / 60, 1e-9, "a quarter degree a minute");
        }
    }

    @Test
    void resultsDoNotDependOnTheNumberOfThreads() throws ScenarioException {
        List<Variant> variants = variants("dish.surface.sectors=16,24", "stand.raise=0 cm,2 cm");
        Comparison one = CompareStudy.run(variants, OPTIONS.withThreads(1), Progress.NONE);
        Comparison two = CompareStudy.run(variants, OPTIONS.withThreads(2), Progress.NONE);
        assertEquals(one.rows(), two.rows());
    }

    @Test
    void aWantedPrecisionHoldsForEveryCooker() throws ScenarioException {
        List<Variant> variants = variants("dish.surface.sectors=12,24");
        TraceOptions wanted = OPTIONS.withRays(1 << 18).withPrecision(2.5e-4);
        Comparison c = CompareStudy.run(variants, wanted, Progress.NONE);
        assertTrue(c.precisionReached());
        c.rows().forEach(row -> assertTrue(row.ledger().caught().relativeError() <= 2.5e-4));
        assertTrue(
                c.run().rays() > 1 << 16 && c.run().rays() <= 1 << 18, c.run().rays() + " rays");
        assertFalse(CompareStudy.run(variants, wanted.withRays(1 << 14), Progress.NONE)
                .precisionReached());
    }

    @Test
    void itStopsWhenToldTo() throws ScenarioException {
        List<Variant> variants = variants("dish.surface.sectors=12,24");
        double[] last = new double[1];
        Progress watch = (done, detail) -> {
            assertTrue(done >= last[0] - 1e-9 && done <= 1, last[0] + " then " + done);
            last[0] = done;
            return true;
        };
        CompareStudy.run(variants, OPTIONS, watch);
        assertTrue(last[0] > 0.5, "tolerances tell of themselves too: " + last[0]);
        assertThrows(
                CancellationException.class, () -> CompareStudy.run(variants, OPTIONS, (done, detail) -> done < 0.5));
    }

    @Test
    void aPanInTheMirrorIsFoundBeforehand() throws ScenarioException {
        assertTrue(CompareStudy.firstImpossible(variants("stand.pull-back=0 cm,10 cm"))
                .isEmpty());
        CompareStudy.Impossible bad = CompareStudy.firstImpossible(variants("stand.pull-back=0 cm,-79 cm"))
                .orElseThrow();
        assertEquals("-79 cm", bad.variant().varied().get("stand.pull-back"));
        assertTrue(bad.reason().contains("into the mirror"), bad.reason());
    }
}
