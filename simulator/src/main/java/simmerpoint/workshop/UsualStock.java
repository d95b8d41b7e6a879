package simmerpoint.workshop;

import java.util.HashMap;
import java.util.Map;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.units.UnitSystem;

/** Sizes of sheets and film where a scenario names none: shops that count in inches sell others than the keys' metric defaults. */
public final class UsualStock {
    /** A quarter of a full sheet of 4 × 8 ft, and film as it comes on a roll (common practice), in. */
    private static final Map<String, Double> INCHES = Map.of(
            "build.sheet-width", 24.0,
            "build.sheet-length", 48.0,
            "build.film-width", 24.0,
            "build.film-length", 120.0);

    private UsualStock() {}

    /** The values with the sizes usual in those units. */
    public static ScenarioValues in(ScenarioValues values, UnitSystem units) {
        Map<String, Double> missing = new HashMap<>();
        if (units == UnitSystem.INCH) {
            INCHES.forEach((key, inches) -> {
                if (!values.has(key)) {
                    missing.put(key, inches * units.shortUnitMetres());
                }
            });
        }
        return missing.isEmpty() ? values : values.withNumbers(missing);
    }
}
