package simmerpoint.viewer.understand;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.answer.Section;
import simmerpoint.answer.trial.ClassAnswer;
import simmerpoint.answer.trial.TrialAnswer;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.chart.ClassChart;
import simmerpoint.drawing.chart.TrialChart;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.trial.AsBuilt;
import simmerpoint.trial.ClassResult;
import simmerpoint.trial.TrialResult;
import simmerpoint.trial.fit.TrialFit;
import simmerpoint.units.UnitSystem;

/** What logs say: of one cooker, or of a class of them. */
public interface LogsResult {
    /** It in words, the verdict first. */
    List<Section> sections(UnitSystem units);

    /** Its drawings. */
    List<Drawing> drawings(UnitSystem units);

    /** What the drawings show. */
    String shown();

    /** It as picture, table and figures. */
    ResultFiles files(UnitSystem units);

    /** The cooker as built; empty where the logs do not tell it. */
    Optional<Built> built();

    /**
     * A cooker as its logs show it.
     *
     * @param planned as it was meant
     * @param scenario as it is
     * @param text of the scenario, with a comment that says where it comes from
     */
    record Built(CheckedScenario planned, CheckedScenario scenario, String text) {
        /** What is typed otherwise than in the planned scenario. */
        public Map<String, String> changes() {
            Map<String, String> typed = new LinkedHashMap<>(scenario.values().typed());
            typed.entrySet().removeAll(planned.values().typed().entrySet());
            return typed;
        }
    }

    /**
     * One cooker.
     *
     * @param trial what its logs say
     * @param built the cooker as they show it
     */
    record OneCooker(TrialResult trial, Optional<Built> built) implements LogsResult {
        /** With the scenario of the cooker as built; empty where the logs do not tell it. */
        static OneCooker of(TrialResult trial, Optional<AsBuilt.Found> built) {
            return new OneCooker(
                    trial, built.map(found -> new Built(trial.scenario(), found.scenario(), found.text())));
        }

        @Override
        public List<Section> sections(UnitSystem units) {
            return TrialAnswer.of(trial, units).sections();
        }

        @Override
        public List<Drawing> drawings(UnitSystem units) {
            return trial.fit().map(TrialFit::curves).orElse(List.of()).stream()
                    .<Drawing>map(curve -> new TrialChart(curve, units))
                    .toList();
        }

        @Override
        public String shown() {
            return "Water measured, expected and fitted over the minutes of a log, and measured less fitted";
        }

        @Override
        public ResultFiles files(UnitSystem units) {
            return ResultFiles.of(trial, units);
        }
    }

    /**
     * Several cookers.
     *
     * @param all ranked
     */
    record Cookers(ClassResult all) implements LogsResult {
        @Override
        public List<Section> sections(UnitSystem units) {
            return ClassAnswer.of(all, units).sections();
        }

        @Override
        public List<Drawing> drawings(UnitSystem units) {
            return List.of(new ClassChart(all));
        }

        @Override
        public String shown() {
            return "Cooking power of each cooker with its interval, the best first";
        }

        @Override
        public ResultFiles files(UnitSystem units) {
            return ResultFiles.of(all, units);
        }

        @Override
        public Optional<Built> built() {
            return Optional.empty();
        }
    }
}
