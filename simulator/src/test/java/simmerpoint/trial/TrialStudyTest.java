package simmerpoint.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.trial.fit.FlawLikelihood;
import simmerpoint.trial.fit.FlawStep;
import simmerpoint.trial.fit.TrialFit;
import simmerpoint.trial.fit.TrialFlaw;
import simmerpoint.trial.log.LogReader;
import simmerpoint.trial.log.TrialLog;
import simmerpoint.trial.power.LogDisagreement;
import simmerpoint.trial.power.PowerTest;
import simmerpoint.uncertainty.LikelyRange;

/** Logs of cookers whose every figure is known, simulated by other code than that which fits them. */
class TrialStudyTest {
    private static final double[] MOVES = {0, 0.06, -0.06};

    @TempDir
    Path folder;

    private CheckedScenario read;

    @BeforeEach
    void readScenario() throws Exception {
        read = ScenarioReader.read(Path.of("../scenarios/garden-strips.yaml"));
    }

    private TrialLog log(String csv) throws Exception {
        return LogReader.read(Files.writeString(Files.createTempFile(folder, "log", ".csv"), csv));
    }

    private TrialResult run(List<TrialLog> logs) throws Exception {
        return TrialStudy.run(read, logs, TraceOptions.defaults(), Progress.NONE);
    }

    /** Logs with the pan at three distances, rows of mixed steps, a late start and a cloud in the second. */
    private List<TrialLog> threeLogs(CheckedScenario truth) throws Exception {
        List<TrialLog> logs = new ArrayList<>();
        for (int k = 0; k < MOVES.length; k++) {
            double place = truth.values().number("stand.pull-back") + MOVES[k];
            CheckedScenario there = SimulatedLog.with(
                    truth, "stand.pull-back", place + " m", "pan.water-temperature", 20 + 6 * k + " °C");
            int cloudy = k;
            SimulatedLog log = SimulatedLog.of(there.scenario(), 40 + k)
                    .minutes(50)
                    .mixedSteps()
                    .light(t -> cloudy == 1 && t > 15 && t < 19 ? 0.3 : 1);
            logs.add(log(log.csv("stand.pull-back: " + MOVES[k] + " m")));
        }
        return logs;
    }

    /** The simulated figure of the standard is 700/I of the cooking power, I being the irradiance of the log; losses bend the line a little. */
    @Test
    void anExactLogGivesTheTrueFigures() throws Exception {
        SimulatedLog exact = SimulatedLog.of(read.scenario(), 1).exact().minutes(45);
        TrialResult result = run(List.of(log(exact.csv())));
        double irradiance = 1.13 * 820;
        double truth = exact.watts() * 700 / irradiance;
        assertEquals(PowerTest.Basis.IRRADIANCE, result.power().orElseThrow().basis());
        assertEquals(truth, result.line().orElseThrow().standardPowerWatts(), 0.02 * truth);
        TrialFit fit = result.fit().orElseThrow();
        assertEquals(exact.watts(), fit.watts(), 2 * fit.error());
        assertFalse(fit.isFlawed());
    }

    @Test
    void aPanOutOfPlaceIsToldByThreePlaces() throws Exception {
        TrialFit fit = run(threeLogs(SimulatedLog.with(read, "stand.pull-back", "9 cm")))
                .fit()
                .orElseThrow();
        assertEquals(TrialFlaw.PAN_PLACE, fit.likeliest().orElseThrow().flaw());
        assertEquals(FlawStep.Way.OUT, fit.likeliest().orElseThrow().way());
        assertEquals(0.09, fit.likeliest().orElseThrow().size(), 0.02);
        assertTrue(fit.rivals().isEmpty(), () -> fit.flaws().toString());
    }

    /** From one place it cannot be told from other flaws that cost as many watts, and the answer says what to measure. */
    @Test
    void fromOnePlaceItIsNotToldFromADullMirror() throws Exception {
        TrialFit fit = run(threeLogs(SimulatedLog.with(read, "stand.pull-back", "9 cm"))
                        .subList(0, 1))
                .fit()
                .orElseThrow();
        assertTrue(fit.isFlawed());
        assertFalse(fit.rivals().isEmpty(), () -> fit.flaws().toString());
        assertTrue(fit.next().isPresent());
    }

    /** A log for each mask, each with its own chance. */
    private List<TrialLog> masked(CheckedScenario truth, String... masks) throws Exception {
        List<TrialLog> logs = new ArrayList<>();
        for (int k = 0; k < masks.length; k++) {
            String[] mask = masks[k].split(" ", 2);
            CheckedScenario there = mask[0].equals("none")
                    ? truth
                    : SimulatedLog.with(truth, "dish.covered.part", mask[0], "dish.covered.width", mask[1]);
            String csv = SimulatedLog.of(there.scenario(), 60 + k).minutes(50).csv();
            logs.add(log(
                    mask[0].equals("none")
                            ? csv
                            : "# dish.covered.part: " + mask[0] + "\n# dish.covered.width: " + mask[1] + "\n" + csv));
        }
        return logs;
    }

    /** Light from the rim comes in flatter and misses first, so two masks tell a pan out of place from a dull mirror; one log does not. */
    @Test
    void twoMasksTellMoreThanOneLog() throws Exception {
        CheckedScenario truth = SimulatedLog.with(read, "stand.pull-back", "9 cm");
        TrialFit one = run(masked(truth, "none")).fit().orElseThrow();
        TrialFit two = run(masked(truth, "rim 22 cm", "middle 76 cm")).fit().orElseThrow();
        assertFalse(one.rivals().isEmpty(), () -> one.flaws().toString());
        assertTrue(two.rivals().isEmpty(), () -> two.flaws().toString());
        assertEquals(TrialFlaw.PAN_PLACE, two.likeliest().orElseThrow().flaw());
        assertEquals(0.09, two.likeliest().orElseThrow().size(), 0.02);
        assertTrue(probability(two, TrialFlaw.PAN_PLACE) > probability(one, TrialFlaw.PAN_PLACE) + 0.2);
    }

    private static double probability(TrialFit fit, TrialFlaw flaw) {
        return fit.flaws().stream()
                .filter(f -> f.flaw() == flaw)
                .findFirst()
                .orElseThrow()
                .probability();
    }

    /** A cooker as planned beside one with the mirror of a third of the light: no one cooker has both logs. */
    @Test
    void logsOfTwoCookersDisagree() throws Exception {
        CheckedScenario dull = SimulatedLog.with(read, "mirror.reflectance", "0.3");
        TrialLog good = log(SimulatedLog.of(read.scenario(), 3).minutes(50).csv());
        TrialLog again = log(SimulatedLog.of(read.scenario(), 4).minutes(50).csv());
        TrialLog bad = log(SimulatedLog.of(dull.scenario(), 5).minutes(50).csv());
        LogDisagreement apart = run(List.of(good, bad)).disagreement().orElseThrow();
        assertEquals(good, apart.stronger());
        assertEquals(bad, apart.weaker());
        assertTrue(run(List.of(good, again)).disagreement().isEmpty());
    }

    /** Whatever is named first is the likeliest of all, nothing among them. */
    @Test
    void noFlawIsNamedThatIsLessLikelyThanNone() {
        FlawLikelihood flaw = new FlawLikelihood(TrialFlaw.WIND, 0.25, FlawStep.Way.ONLY, 1, null, null, null);
        LikelyRange any = LikelyRange.exact(30);
        TrialFit fit =
                new TrialFit(List.of(), any, 47, 4, 0.28, List.of(flaw), List.of(), 1, List.of(), Optional.empty());
        assertTrue(fit.isFlawed());
        assertTrue(fit.likeliest().isEmpty());
        assertFalse(fit.isTold());
        assertEquals(List.of(flaw), fit.suspects());
    }

    @Test
    void aDullMirrorIsTold() throws Exception {
        TrialFit fit = run(threeLogs(SimulatedLog.with(read, "mirror.reflectance", "0.6")))
                .fit()
                .orElseThrow();
        assertEquals(TrialFlaw.REFLECTANCE, fit.likeliest().orElseThrow().flaw());
        // The film has 0.85 by the catalogue, so 29 % is gone.
        assertEquals(0.29, fit.likeliest().orElseThrow().size(), 0.08);
    }

    @Test
    void aLidThatIsOffIsToldByTheCurveAlone() throws Exception {
        CheckedScenario truth = SimulatedLog.with(read, "pan.lid", "off");
        TrialFit fit = run(List.of(
                        log(SimulatedLog.of(truth.scenario(), 3).minutes(55).csv())))
                .fit()
                .orElseThrow();
        assertEquals(TrialFlaw.LID, fit.likeliest().orElseThrow().flaw());
    }

    /** A cooker off in several ways at once, under a cloud: whatever is blamed, its watts lie in the interval that is told. */
    @Test
    void aRicherTruthKeepsItsWatts() throws Exception {
        CheckedScenario truth = SimulatedLog.with(
                read,
                "mirror.panel-tilt",
                "14 mrad",
                "aim.turn.side",
                "1.5°",
                "mirror.slope-error",
                "12 mrad",
                "mirror.dust",
                "0.12");
        SimulatedLog log =
                SimulatedLog.of(truth.scenario(), 8).minutes(60).light(t -> t > 20 && t < 24 ? 0.25 : 1 - 0.001 * t);
        TrialFit fit = run(List.of(log(log.csv()))).fit().orElseThrow();
        // The mean light of the log is a few per cent less than the scenario's.
        assertEquals(log.watts(), fit.watts(), 3 * fit.error() + 0.05 * log.watts());
    }

    @Test
    void aCoolingLogTellsTheLossAndNothingElse() throws Exception {
        CheckedScenario hot = SimulatedLog.with(read, "pan.water-temperature", "90 °C");
        SimulatedLog cooling = SimulatedLog.of(hot.scenario(), 5).sunless().minutes(60);
        TrialResult result = run(List.of(log(cooling.csv())));
        assertTrue(result.power().isEmpty());
        assertTrue(result.fit().isEmpty());
        // The loss per kelvin of the middle of the curve, some 50 K above the air.
        assertEquals(cooling.lossPerKelvin(50), result.protocol().orElseThrow().lossWattsPerKelvin(), 0.15);
    }

    @Test
    void boilingFromTheFirstRowTellsNothing() throws Exception {
        TrialResult result = run(List.of(log("time_min,water_C,beam_W_m2\n0,99,800\n20,100,800\n40,100,800\n")));
        assertTrue(result.fit().isEmpty());
        assertEquals(
                List.of(TrialNote.Kind.BOILS_FROM_FIRST),
                result.notes().stream().map(TrialNote::kind).toList());
    }

    /** Through a day and a night: warmed in the sun, then cooling, with a meter. */
    @Test
    void aDayAndANightAreOneLog() throws Exception {
        CheckedScenario weak = SimulatedLog.with(read, "mirror.reflectance", "0.35");
        String csv = SimulatedLog.of(weak.scenario(), 6)
                .minutes(24 * 60 - 1)
                .light(t -> Math.max(0, Math.sin(Math.PI * t / 720)))
                .mixedSteps()
                .csv();
        TrialResult result = run(List.of(log(csv)));
        assertTrue(result.line().isPresent());
        assertTrue(result.fit().isPresent());
    }

    @Test
    void withBeamAloneTheFigureIsNoneOfTheStandards() throws Exception {
        String csv = SimulatedLog.of(read.scenario(), 1).minutes(45).csv().replace("irradiance_W_m2", "notes");
        TrialResult result = run(List.of(log(csv)));
        assertTrue(result.line(PowerTest.Basis.IRRADIANCE).isEmpty());
        assertTrue(result.line(PowerTest.Basis.BEAM).isPresent());
    }
}
