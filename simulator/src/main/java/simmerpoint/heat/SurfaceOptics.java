package simmerpoint.heat;

import java.util.Map;
import java.util.stream.Collectors;
import simmerpoint.pan.Finish;
import simmerpoint.units.Dimension;
import simmerpoint.units.QuantityTable;

/**
 * Radiative properties of one face of a pan.
 *
 * @param absorptance share of sunlight absorbed at normal incidence, 0 to 1
 * @param emissivity infrared emissivity near 100 °C, 0 to 1
 */
public record SurfaceOptics(double absorptance, double emissivity) {
    /** Emissivity of a finish that is not in the table: paints, enamels and soot are within 0.85 to 0.97. */
    public static final double USUAL_EMISSIVITY = 0.9;

    private static final Map<String, Double> EMISSIVITIES = emissivities();

    /** Checks both shares. */
    public SurfaceOptics {
        ArgumentChecks.within("absorptance", absorptance, 0, 1, "of 1");
        ArgumentChecks.within("emissivity", emissivity, 0, 1, "of 1");
    }

    /** From a finish: its absorptance, and the emissivity of the table finish-emissivities.tsv. */
    public static SurfaceOptics of(Finish finish) {
        return new SurfaceOptics(finish.absorptance(), EMISSIVITIES.getOrDefault(finish.name(), USUAL_EMISSIVITY));
    }

    private static Map<String, Double> emissivities() {
        QuantityTable table = QuantityTable.read(SurfaceOptics.class, "finish-emissivities.tsv");
        return table.rows().stream()
                .collect(Collectors.toUnmodifiableMap(
                        row -> table.text(row, "finish"), row -> table.quantity(row, "emissivity", Dimension.NUMBER)));
    }
}
