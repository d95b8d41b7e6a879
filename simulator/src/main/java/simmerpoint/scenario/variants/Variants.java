package simmerpoint.scenario.variants;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import simmerpoint.scenario.Problem;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.keys.KeyAssignment;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.units.InputText;

/** The scenarios that are to be compared: every one with every combination of the varied values. */
public final class Variants {
    /** More are not compared at once. */
    public static final int MOST = 1000;

    private Variants() {}

    /**
     * Every scenario with every combination, all at one moment of the sun.
     *
     * @param scenarios at least one
     * @param keys what is varied; may be empty
     * @return in the order of the scenarios, within each of the values, the last key's fastest
     * @throws ScenarioException if a scenario is wrong or given twice, a key is varied twice, there are too many or only one,
     *     or a combination is impossible
     */
    public static List<Variant> of(List<ScenarioValues> scenarios, List<VariedKey> keys) throws ScenarioException {
        refuseTwice(scenarios, keys);
        refuseNumber(scenarios.size() * VariantCombinations.size(keys), scenarios.get(0));
        List<CheckedScenario> bases = new ArrayList<>();
        for (ScenarioValues scenario : scenarios) {
            bases.add(CheckedScenario.of(scenario));
        }
        List<String> sources = sources(bases);
        List<Variant> variants = new ArrayList<>();
        for (int k = 0; k < bases.size(); k++) {
            for (Map<String, String> varied : VariantCombinations.of(keys)) {
                CheckedScenario read = changed(bases.get(k), varied);
                variants.add(new Variant(read.values().name(), sources.get(k), varied, read));
            }
        }
        refuseNumber(variants.size(), scenarios.get(0));
        return List.copyOf(variants);
    }

    private static void refuseTwice(List<ScenarioValues> scenarios, List<VariedKey> keys) throws ScenarioException {
        Set<String> paths = new HashSet<>();
        for (VariedKey key : keys) {
            if (!paths.add(key.path())) {
                throw KeyAssignment.refused(
                        VariedKey.OPTION,
                        key.path(),
                        "this key is varied twice; put all its values after one " + VariedKey.OPTION);
            }
        }
        Set<Path> seen = new HashSet<>();
        for (ScenarioValues scenario : scenarios) {
            if (!seen.add(Path.of(scenario.name()).toAbsolutePath().normalize())) {
                throw new ScenarioException(
                        scenario.name(), List.of(new Problem(0, "", "this file is named twice; once is enough")));
            }
        }
    }

    private static void refuseNumber(long number, ScenarioValues first) throws ScenarioException {
        if (number > MOST) {
            throw new ScenarioException(
                    VariedKey.OPTION,
                    List.of(new Problem(
                            0,
                            "",
                            "these are " + (number >= Integer.MAX_VALUE ? "billions of" : String.valueOf(number))
                                    + " cookers, the product of all values and files; at most " + MOST
                                    + " are compared at once")));
        }
        if (number < 2) {
            throw new ScenarioException(
                    first.name(),
                    List.of(new Problem(
                            0,
                            "",
                            "there is nothing to compare this one with; name a second file, or vary a key, for instance "
                                    + VariedKey.OPTION + " dish.surface.sectors=12,24")));
        }
    }

    /** Titles where every file has one of its own, else names of files. */
    private static List<String> sources(List<CheckedScenario> bases) {
        if (bases.size() < 2) {
            return List.of("");
        }
        List<String> titles = bases.stream()
                .map(base -> InputText.normalised(base.scenario().title()))
                .toList();
        if (!titles.contains("") && new HashSet<>(titles).size() == titles.size()) {
            return titles;
        }
        List<String> paths = bases.stream().map(base -> base.values().name()).toList();
        List<String> names = paths.stream()
                .map(path -> String.valueOf(Path.of(path).getFileName()))
                .toList();
        return new HashSet<>(names).size() == names.size() ? names : paths;
    }

    /** The base with the values, at one moment; what is wrong with the values is told of them. */
    private static CheckedScenario changed(CheckedScenario base, Map<String, String> varied) throws ScenarioException {
        if (varied.isEmpty()) {
            base.atOneMoment();
            return base;
        }
        try {
            CheckedScenario read = base.with(VariantCombinations.overrides(varied));
            read.atOneMoment();
            return read;
        } catch (ScenarioException e) {
            boolean own = base.timeless()
                    .filter(timeless -> timeless.problems().equals(e.problems()))
                    .isPresent();
            throw own ? e : ofValues(base.values().name(), varied, e);
        }
    }

    /** What is wrong with the values; only the one that is wrong is named, if it is one alone. */
    private static ScenarioException ofValues(String name, Map<String, String> varied, ScenarioException e) {
        Problem first = e.problems().get(0);
        boolean alone = varied.containsKey(first.key());
        Map<String, String> named = alone ? Map.of(first.key(), varied.get(first.key())) : varied;
        return new ScenarioException(
                VariedKey.OPTION + " " + Variant.assignments(named) + " in " + name,
                List.of(alone ? new Problem(0, "", first.text()) : first));
    }
}
