package simmerpoint.trial.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.trial.log.Reading;
import simmerpoint.trial.log.TrialLog;

class PowerTestTest {
    private static final double CAPACITY = 3 * 4186;
    private static final double LOSS = 2.5;
    private static final double LIGHT = 400;
    private static final double IRRADIANCE = 800;
    private static final double AIR = 25;

    /** A bare 3 kg of water, so that all heat is the water's. */
    private static final HeatedPan PAN = new HeatedPan(3, 0, 0.2, 0.9, AIR, 130);

    /** Water of linear loss: closed form, see {@link simmerpoint.heat.balance.ParaboloidProtocol}. */
    private static double heated(double seconds) {
        double end = AIR + LIGHT / LOSS;
        return end + (30 - end) * Math.exp(-seconds * LOSS / CAPACITY);
    }

    private static TrialLog log(double step, int rows, boolean sun, DoubleUnaryOperator water) {
        List<Reading> readings = new ArrayList<>();
        for (int k = 0; k < rows; k++) {
            double t = k * step;
            readings.add(new Reading(k + 2, t, water.applyAsDouble(t), AIR, sun ? IRRADIANCE : 0, Double.NaN, 0.5));
        }
        return new TrialLog(Path.of("log.csv"), Map.of(), false, Optional.empty(), readings);
    }

    /**
     * Worked by hand outside this project from the standard's formulas: every ten minutes 30, 47.451, 62.937, 76.680, 88.876 °C give
     * 319.595, 283.613, 251.682, 223.345 W at 700 W/m² and 240.3393 W at 50 K.
     */
    @Test
    void readingsEveryTenMinutesAreTakenFromEndToEnd() {
        PowerTest test = PowerTest.of(List.of(log(600, 5, true, PowerTestTest::heated)), PAN);
        double[] expected = {319.595, 283.613, 251.682, 223.345};
        assertEquals(4, test.intervals().size());
        for (int k = 0; k < expected.length; k++) {
            StandardCookingPower.Interval interval = test.intervals().get(k).interval();
            assertEquals(expected[k], interval.standardisedWatts(), 1e-3);
        }
        StandardCookingPower.Line line = StandardCookingPower.line(
                test.intervals().stream().map(TestInterval::interval).toList());
        assertEquals(240.3393, line.standardPowerWatts(), 1e-3);
        assertEquals(-2.18490, line.wattsPerKelvin(), 1e-4);
    }

    /** Of linear loss the line has the slope −U·700/I and the intercept A·700/I (derived): with a reading a minute to some 0.1 %. */
    @Test
    void readingsEveryMinuteGiveTheSameLine() {
        PowerTest test = PowerTest.of(List.of(log(60, 61, true, PowerTestTest::heated)), PAN);
        StandardCookingPower.Line line = test.line().orElseThrow();
        assertEquals(-LOSS * 700 / IRRADIANCE, line.wattsPerKelvin(), 0.005);
        assertEquals((LIGHT - LOSS * 50) * 700 / IRRADIANCE, line.standardPowerWatts(), 0.3);
        assertEquals(PowerTest.Basis.IRRADIANCE, test.basis());
    }

    /** The protocol's two factors come back from a heating and a cooling curve of linear loss, to 1e-4. */
    @Test
    void theProtocolGivesItsFactorsBack() {
        TrialLog heating = log(60, 41, true, PowerTestTest::heated);
        TrialLog cooling = log(300, 20, false, t -> AIR + 65 * Math.exp(-t * LOSS / CAPACITY));
        PowerTest power = PowerTest.of(List.of(heating), PAN);
        ProtocolTest test = ProtocolTest.of(Optional.of(heating), List.of(cooling), power, PAN)
                .orElseThrow();
        assertTrue(test.fromCooling());
        assertEquals(LOSS, test.lossWattsPerKelvin(), 1e-4 * LOSS);
        assertEquals(LIGHT / IRRADIANCE / 0.9, test.factors().orElseThrow().opticalFactor(), 1e-4);
        ProtocolTest alone =
                ProtocolTest.of(Optional.of(heating), List.of(), power, PAN).orElseThrow();
        assertFalse(alone.fromCooling());
        assertEquals(LOSS, alone.lossWattsPerKelvin(), 0.01);
    }

    @Test
    void conditionsThatWereNotMetAreTold() {
        PowerTest test = PowerTest.of(List.of(log(60, 61, true, PowerTestTest::heated)), PAN);
        Map<TestCondition, TestCondition.Verdict> verdicts = new java.util.EnumMap<>(TestCondition.class);
        test.checks().forEach(c -> verdicts.put(c.condition(), c.verdict()));
        assertEquals(TestCondition.Verdict.NOT_MET, verdicts.get(TestCondition.LOAD));
        assertEquals(TestCondition.Verdict.MET, verdicts.get(TestCondition.WIND));
        assertEquals(TestCondition.Verdict.MET, verdicts.get(TestCondition.STEADY_LIGHT));
        assertEquals(TestCondition.Verdict.NOT_MET, verdicts.get(TestCondition.INTERVALS));
        assertEquals(TestCondition.Verdict.MET, verdicts.get(TestCondition.DETERMINATION));
    }

    /** A gap of twenty minutes takes out what lies in it, and nothing is drawn across. */
    @Test
    void intervalsWithAGapAreLeftOut() {
        TrialLog whole = log(60, 61, true, PowerTestTest::heated);
        List<Reading> rest = whole.readings().stream()
                .filter(r -> r.seconds() < 900 || r.seconds() > 2100)
                .toList();
        PowerTest test =
                PowerTest.of(List.of(new TrialLog(whole.file(), Map.of(), false, Optional.empty(), rest)), PAN);
        assertEquals(
                List.of(0.0, 2400.0, 3000.0),
                test.intervals().stream().map(TestInterval::startSeconds).toList());
    }

    /** How many of {@code seeds} intervals hold the true figure: thermometer of ±0.5 K, sun and air as written. */
    private static int held(int seeds) {
        double truth = (LIGHT - LOSS * 50) * 700 / IRRADIANCE;
        int held = 0;
        for (int seed = 0; seed < seeds; seed++) {
            SplittableRandom chance = new SplittableRandom(seed);
            TrialLog log = log(60, 71, true, t -> heated(t) + 0.25 * gauss(chance));
            StandardCookingPower.Line line =
                    PowerTest.of(List.of(log), PAN).line().orElseThrow();
            double half = line.halfWidthWatts(PowerTest.CONFIDENCE);
            held += Math.abs(line.standardPowerWatts() - truth) <= half ? 1 : 0;
        }
        return held;
    }

    /**
     * The same under thin clouds that pass in two minutes and take two fifths of the light, read every one to four minutes, begun
     * late: the water's temperature is added up second by second.
     */
    private static int heldUnderClouds(int seeds) {
        double truth = (LIGHT - LOSS * 50) * 700 / IRRADIANCE;
        int held = 0;
        for (int seed = 0; seed < seeds; seed++) {
            SplittableRandom chance = new SplittableRandom(seed);
            List<Reading> rows = new ArrayList<>();
            double water = 38;
            double share = 1;
            int next = 0;
            for (int t = 0; t <= 70 * 60; t++) {
                share = t % 120 > 0 ? share : chance.nextInt(8) == 0 ? 0.6 : 1;
                if (t == next) {
                    double read = water + 0.25 * gauss(chance);
                    rows.add(new Reading(rows.size() + 2, t, read, AIR, IRRADIANCE * share, Double.NaN, 0.5));
                    next += 60 * (1 + chance.nextInt(4));
                }
                water += (LIGHT * share - LOSS * (water - AIR)) / CAPACITY;
            }
            TrialLog log = new TrialLog(Path.of("log.csv"), Map.of(), false, Optional.empty(), rows);
            StandardCookingPower.Line line =
                    PowerTest.of(List.of(log), PAN).line().orElseThrow();
            double half = line.halfWidthWatts(PowerTest.CONFIDENCE);
            held += Math.abs(line.standardPowerWatts() - truth) <= half ? 1 : 0;
        }
        return held;
    }

    @Test
    void intervalsHoldTheTruthUnderClouds() {
        BinomialDistribution law = new BinomialDistribution(null, 60, 0.95);
        int held = heldUnderClouds(60);
        assertTrue(law.cumulativeProbability(held) > 1e-3, () -> "60 seeds, held " + held);
    }

    @Test
    @Tag("thorough")
    void intervalsHoldTheTruthOftenEnoughUnderClouds() {
        int held = heldUnderClouds(500);
        assertTrue(held >= 460 && held <= 490, () -> "500 seeds, held " + held);
    }

    private static double gauss(SplittableRandom chance) {
        return Math.sqrt(-2 * Math.log(1 - chance.nextDouble())) * Math.cos(2 * Math.PI * chance.nextDouble());
    }

    /** By the binomial law of 0.95; left by chance once in a thousand to either side. */
    @Test
    void intervalsHoldTheTruth() {
        BinomialDistribution law = new BinomialDistribution(null, 60, 0.95);
        int held = held(60);
        assertTrue(law.cumulativeProbability(held) > 1e-3, () -> "60 seeds, held " + held);
    }

    @Test
    @Tag("thorough")
    void intervalsHoldTheTruthOftenEnough() {
        int held = held(500);
        assertTrue(held >= 460 && held <= 490, () -> "500 seeds, held " + held);
    }
}
