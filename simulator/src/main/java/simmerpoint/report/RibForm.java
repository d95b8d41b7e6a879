package simmerpoint.report;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.BuildCheck;
import simmerpoint.workshop.CutPlan;

/** A table of every rib's planned depths: overwritten with what was measured, a scenario reads it ({@code as-built.ribs}). */
final class RibForm {
    private static final double MILLIMETRE = 1e-3;
    private static final String EVEN = "# Depths of the ribs below the plane of the rim.";
    private static final String UNEVEN =
            "# Depths of the ribs below the level of the longest ribs' tips. Leave them as they are where a rib is not or ends earlier.\n#";

    private RibForm() {}

    /** Of a plan with ribs; empty for one without. */
    static byte[] bytes(CutPlan plan, UnitSystem units) {
        StringBuilder out = new StringBuilder();
        plan.check().ifPresent(check -> {
            int ribs = plan.rib().orElseThrow().count();
            out.append(check.uneven() ? UNEVEN : EVEN)
                    .append(" Overwrite them with what you measure; name this file in the\n")
                    .append(
                            "# scenario: as-built: {ribs: NAME}. Rib 1 points up, on anticlockwise as seen from the sun.\n")
                    .append("from_middle_")
                    .append(units == UnitSystem.METRIC ? "mm" : "in");
            IntStream.rangeClosed(1, ribs).forEach(k -> out.append(",rib_").append(k));
            out.append('\n');
            check.depths().forEach(depth -> row(depth, ribs, units, out));
            row(new BuildCheck.Depth(plan.rib().orElseThrow().rim(), 0), ribs, units, out);
        });
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void row(BuildCheck.Depth depth, int ribs, UnitSystem units, StringBuilder out) {
        String planned = number(depth.depth(), units);
        out.append(number(depth.radius(), units))
                .append(IntStream.range(0, ribs).mapToObj(k -> "," + planned).collect(Collectors.joining()))
                .append('\n');
    }

    private static String number(double metres, UnitSystem units) {
        return units == UnitSystem.METRIC
                ? String.format(Locale.ROOT, "%.1f", metres / MILLIMETRE)
                : String.format(Locale.ROOT, "%.3f", metres / units.shortUnitMetres());
    }
}
