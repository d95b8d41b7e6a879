package simmerpoint.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import simmerpoint.units.InputText;

/** Reads the scenarios that are to be compared: every file with every combination of the varied values. */
public final class Variants {
    /** More are not compared at once. */
    public static final int MOST = 1000;

    private Variants() {}

    /**
     * Every file with every combination, all at one moment of the sun.
     *
     * @param files none: the example that is built in
     * @param keys what is varied; may be empty
     * @return in the order of the files, within each of the values, the last key's fastest
     * @throws ScenarioException if a file is wrong, a key is varied twice, there are too many or only one, or a
     *     combination is impossible
     */
    public static List<Variant> read(List<Path> files, List<VariedKey> keys) throws ScenarioException {
        refuseTwice(files, keys);
        refuseNumber(Math.max(1, files.size()) * VaryProduct.size(keys), files);
        List<ReadScenario> bases = new ArrayList<>();
        if (files.isEmpty()) {
            bases.add(ScenarioReader.builtIn());
        }
        for (Path file : files) {
            bases.add(ScenarioReader.read(file));
        }
        List<String> sources = sources(files, bases);
        List<Variant> variants = new ArrayList<>();
        for (int k = 0; k < bases.size(); k++) {
            for (Map<String, String> varied : VaryProduct.of(keys)) {
                ReadScenario read = changed(bases.get(k), varied);
                variants.add(new Variant(read.values().name(), sources.get(k), varied, read));
            }
        }
        refuseNumber(variants.size(), files);
        return List.copyOf(variants);
    }

    private static void refuseTwice(List<Path> files, List<VariedKey> keys) throws ScenarioException {
        Set<String> paths = new HashSet<>();
        for (VariedKey key : keys) {
            if (!paths.add(key.path())) {
                throw VariedKey.refused(
                        key.path(), "this key is varied twice; put all its values behind one " + VariedKey.OPTION);
            }
        }
        Set<Path> seen = new HashSet<>();
        for (Path file : files) {
            if (!seen.add(file.toAbsolutePath().normalize())) {
                throw new ScenarioException(
                        file.toString(), List.of(new Problem(0, "", "this file is named twice; once is enough")));
            }
        }
    }

    private static void refuseNumber(long number, List<Path> files) throws ScenarioException {
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
                    files.isEmpty() ? ScenarioReader.BUILT_IN : files.get(0).toString(),
                    List.of(new Problem(
                            0,
                            "",
                            "there is nothing to compare this one with; name a second file, or vary a key, for instance "
                                    + VariedKey.OPTION + " dish.surface.sectors=12,24")));
        }
    }

    /** Titles where every file has one of its own, else names of files. */
    private static List<String> sources(List<Path> files, List<ReadScenario> bases) {
        if (files.size() < 2) {
            return List.of("");
        }
        List<String> titles = bases.stream()
                .map(base -> InputText.normalised(base.scenario().title()))
                .toList();
        if (!titles.contains("") && new HashSet<>(titles).size() == titles.size()) {
            return titles;
        }
        List<String> names =
                files.stream().map(file -> String.valueOf(file.getFileName())).toList();
        return new HashSet<>(names).size() == names.size()
                ? names
                : files.stream().map(Path::toString).toList();
    }

    /** The base with the values, at one moment; what is wrong with the values is told of them. */
    private static ReadScenario changed(ReadScenario base, Map<String, String> varied) throws ScenarioException {
        if (varied.isEmpty()) {
            base.atOneMoment();
            return base;
        }
        try {
            ReadScenario read =
                    base.values().with(VaryProduct.overrides(varied)).check();
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
