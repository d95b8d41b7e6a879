package simmerpoint.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.trial.fit.FittedLog;
import simmerpoint.trial.fit.FlawStudy;
import simmerpoint.trial.fit.TrialFit;
import simmerpoint.trial.log.Reading;
import simmerpoint.trial.log.TrialLog;
import simmerpoint.trial.power.HeatedPan;
import simmerpoint.trial.power.LogDisagreement;
import simmerpoint.trial.power.PowerTest;
import simmerpoint.trial.power.ProtocolTest;

/** Works out what logs say about the cooker of a scenario. */
public final class TrialStudy {
    /** Water this near boiling at the first row tells nothing by its rise, K. */
    private static final double ROOM_TO_RISE = 5;

    /** A log this short tells nothing, s. */
    private static final double SHORTEST = 300;

    private final CheckedScenario read;
    private final List<TrialLog> logs;
    private final TraceOptions options;
    private final double boiling;
    private final List<TrialNote> notes = new ArrayList<>();

    private TrialStudy(CheckedScenario read, List<TrialLog> logs, TraceOptions options) {
        this.read = read;
        this.logs = logs;
        this.options = options;
        boiling = read.scenario().cooking().orElseThrow().around().boilingCelsius();
    }

    /**
     * What logs say.
     *
     * @param read the cooker as it was meant, with a pan
     * @param logs at least one
     * @throws ScenarioException if a setting of a log does not go with the scenario
     * @throws simmerpoint.study.trace.ImpossibleSetupException if the pan cannot stand as asked
     */
    public static TrialResult run(CheckedScenario read, List<TrialLog> logs, TraceOptions options, Progress progress)
            throws ScenarioException {
        return new TrialStudy(read, logs, options).run(progress);
    }

    private TrialResult run(Progress progress) throws ScenarioException {
        Map<TrialLog, FittedLog> useful = useful();
        List<TrialLog> heating =
                useful.keySet().stream().filter(log -> !log.isCooling()).toList();
        List<TrialLog> cooling =
                useful.keySet().stream().filter(TrialLog::isCooling).toList();
        List<TrialLog> alike = alike(heating);
        HeatedPan pan = pan(heating, useful);
        Optional<PowerTest> power = alike.isEmpty() ? Optional.empty() : Optional.of(PowerTest.of(alike, pan));
        notes(power, heating);
        PowerTest none = new PowerTest(PowerTest.Basis.NOTHING, List.of(), List.of(), Optional.empty(), List.of());
        return new TrialResult(
                read,
                logs,
                pan,
                power,
                LogDisagreement.of(alike, pan),
                ProtocolTest.of(alike.stream().findFirst(), cooling, power.orElse(none), pan),
                heating.isEmpty() ? Optional.empty() : Optional.of(boil(useful.get(heating.get(0)), progress)),
                heating.isEmpty() ? Optional.empty() : Optional.of(fit(useful, heating, progress)),
                notes,
                options.seed());
    }

    /** Logs that the model can be held against, each with its scenario. */
    private Map<TrialLog, FittedLog> useful() throws ScenarioException {
        Map<TrialLog, FittedLog> useful = new LinkedHashMap<>();
        for (TrialLog log : logs) {
            boolean cooling = log.isCooling();
            boolean hot = log.water().get(0).waterCelsius() > boiling - ROOM_TO_RISE;
            if (hot && !cooling) {
                notes.add(new TrialNote(TrialNote.Kind.BOILS_FROM_FIRST, log));
                continue;
            }
            double until = cooling ? log.seconds() : log.warmsUntil(boiling);
            if (until >= SHORTEST) {
                useful.put(log, new FittedLog(log, LogScenario.of(read, log, until), until));
                notesOn(log);
            } else {
                notes.add(new TrialNote(TrialNote.Kind.TOO_SHORT, log));
            }
        }
        return useful;
    }

    private void notesOn(TrialLog log) {
        note(!log.has(Reading::airCelsius), TrialNote.Kind.AIR_OF_SCENARIO, log);
        note(!log.has(Reading::wind), TrialNote.Kind.WIND_OF_SCENARIO, log);
        note(!log.isCooling() && !log.hasLight(), TrialNote.Kind.LIGHT_OF_SCENARIO, log);
        note(!log.isCooling() && log.hasLight() && !log.has(Reading::beam), TrialNote.Kind.BEAM_AS_SHARE, log);
        note(log.isCooling() && !log.sunless() && !log.hasLight(), TrialNote.Kind.TAKEN_AS_COOLING, log);
    }

    private void note(boolean is, TrialNote.Kind kind, TrialLog log) {
        if (is) {
            notes.add(new TrialNote(kind, log));
        }
    }

    private void notes(Optional<PowerTest> power, List<TrialLog> heating) {
        power.filter(p -> p.line().isEmpty())
                .ifPresent(p -> notes.add(new TrialNote(TrialNote.Kind.TOO_SHORT, heating.get(0))));
        heating.stream()
                .filter(log -> !log.settings().equals(heating.get(0).settings()))
                .forEach(log -> notes.add(new TrialNote(TrialNote.Kind.OTHER_ARRANGEMENT, log)));
    }

    /** Heating logs of the same arrangement as the first. */
    private static List<TrialLog> alike(List<TrialLog> heating) {
        return heating.stream()
                .filter(log -> log.settings().equals(heating.get(0).settings()))
                .toList();
    }

    private HeatedPan pan(List<TrialLog> heating, Map<TrialLog, FittedLog> useful) {
        Scenario scenario =
                (heating.isEmpty() ? read : useful.get(heating.get(0)).scenario()).scenario();
        CookingSetup kitchen = scenario.cooking().orElseThrow();
        double aperture = scenario.built().surface(scenario.setup().sunInDish()).apertureArea();
        return HeatedPan.of(kitchen, aperture);
    }

    private BoilTrial boil(FittedLog first, Progress progress) {
        List<Reading> water = first.log().water();
        return new BoilTrial(
                first.log().boils(boiling),
                water.get(0).waterCelsius(),
                water.stream().mapToDouble(Reading::waterCelsius).max().orElseThrow(),
                LikelyStudy.run(first.scenario(), LikelyStudy.FOR_RANGE, options, progress));
    }

    /** The first heating log comes first, since its power is told. */
    private TrialFit fit(Map<TrialLog, FittedLog> useful, List<TrialLog> heating, Progress progress) {
        TrialLog first = heating.get(0);
        List<FittedLog> ordered = new ArrayList<>(List.of(useful.get(first)));
        useful.forEach((log, fitted) -> {
            if (!log.equals(first)) {
                ordered.add(fitted);
            }
        });
        return FlawStudy.run(ordered, options, progress);
    }
}
