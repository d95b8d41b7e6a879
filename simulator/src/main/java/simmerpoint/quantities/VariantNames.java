package simmerpoint.quantities;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.scenario.variants.Variant;

/** What to call each of the compared cookers: its file's title where there are several, and what was varied, nothing else. */
public final class VariantNames {
    private final Map<String, String> shortNames = new LinkedHashMap<>();
    private final boolean severalFiles;

    /** The names among these. */
    public VariantNames(List<Variant> variants) {
        Set<String> paths = new LinkedHashSet<>();
        variants.forEach(variant -> paths.addAll(variant.varied().keySet()));
        paths.removeIf(path -> variants.stream()
                        .map(variant -> variant.varied().getOrDefault(path, ""))
                        .distinct()
                        .count()
                == 1);
        paths.forEach(path -> shortNames.put(path, inZone(path) + shortest(path, paths)));
        severalFiles = variants.stream().anyMatch(variant -> !variant.source().isEmpty());
    }

    private static String inZone(String path) {
        return ZoneKeys.zoneOf(path).map(zone -> zone + " ").orElse("");
    }

    /** As much of the path's end as no other of them ends with that is of the same zone, or of none. */
    private static String shortest(String path, Set<String> all) {
        Set<String> paths = all.stream()
                .filter(other -> ZoneKeys.zoneOf(other).equals(ZoneKeys.zoneOf(path)))
                .collect(Collectors.toSet());
        for (int dot = path.lastIndexOf('.'); dot >= 0; dot = path.lastIndexOf('.', dot - 1)) {
            String end = path.substring(dot);
            if (paths.stream().filter(other -> ("." + other).endsWith(end)).count() == 1) {
                return end.substring(1);
            }
        }
        return path;
    }

    /** "sectors 24, material household mirror", "Tea kitchen: sectors 24". */
    public String name(Variant variant) {
        List<String> parts = new ArrayList<>();
        told(variant).forEach((path, value) -> parts.add(shortNames.get(path) + " " + value));
        return joined(variant, parts);
    }

    /** The values alone, to stand under {@link #head}: "24, household mirror". */
    public String cell(Variant variant) {
        return joined(variant, List.copyOf(told(variant).values()));
    }

    /** The values that tell it from others, in the order asked for. */
    private Map<String, String> told(Variant variant) {
        Map<String, String> told = new LinkedHashMap<>();
        variant.varied().forEach((path, value) -> {
            if (shortNames.containsKey(path)) {
                told.put(path, OneLine.of(value));
            }
        });
        return told;
    }

    private static String joined(Variant variant, List<String> parts) {
        String source = OneLine.of(variant.source());
        String values = String.join(", ", parts);
        return source.isEmpty() || values.isEmpty() ? source + values : source + ": " + values;
    }

    /** What the values are: "sectors, material", "cooker". */
    public String head() {
        return severalFiles || shortNames.isEmpty() ? "cooker" : String.join(",\n", shortNames.values());
    }
}
