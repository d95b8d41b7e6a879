package simmerpoint.report;

import java.nio.charset.StandardCharsets;
import simmerpoint.answer.Words;
import simmerpoint.pan.Pan;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;

/**
 * The flux maps as a table: one row per cell, for a spreadsheet or a script. Lines that start with # say what the columns
 * are. Always in millimetres and kW/m², whatever units the answer is in, with a decimal point.
 */
public final class CsvReport {
    private static final int DIGITS = 6;
    private static final double MILLIMETRES = 1000;
    private static final double KILOWATTS = 1e-3;

    private final StringBuilder out = new StringBuilder(1 << 20);

    private CsvReport() {}

    /** The bytes of the file for {@code result}, in UTF-8. */
    public static byte[] bytes(TraceResult result) {
        return new CsvReport().write(result).getBytes(StandardCharsets.UTF_8);
    }

    private String write(TraceResult result) {
        boolean isPan = result.scenario().target() instanceof Pan;
        head(result, isPan);
        out.append("surface,x_mm,y_mm,flux_kW_m2,flux_se_kW_m2\n");
        rows("plane", result.maps().crossing());
        rows(isPan ? "underside" : "disc", result.maps().caught());
        result.maps().wall().ifPresent(map -> rows("wall", map));
        result.maps().lid().ifPresent(map -> rows("lid", map));
        return out.toString();
    }

    private void head(TraceResult result, boolean isPan) {
        comment("Simmerpoint " + Version.text() + " flux maps");
        comment("title: " + Words.oneLine(result.scenario().title()));
        comment("seed: " + result.seed() + "; replicates: " + result.replicates());
        comment("x_mm, y_mm: middle of a cell; flux_kW_m2: mean flux over the cell; flux_se_kW_m2: its standard error");
        if (isPan) {
            comment(
                    "origin: middle of the pan's underside; x: level, away from the sun; y: to the right facing the sun");
            comment("plane: all light that crosses the plane of the underside from below; caught or not");
            comment("underside: the part of it that the underside catches");
            comment("wall: x_mm is measured round the wall from the side away from the sun over the right; y_mm is the "
                    + "height above the underside");
            comment("lid: as seen from above; x and y as for the underside");
        } else {
            comment("origin: middle of the disc; x: towards the dish's upper edge; y: to the right facing the sun");
            comment("plane: all light that crosses the plane of the disc from the dish's side; caught or not");
            comment("disc: the part of it that the disc catches");
        }
        cells("plane and " + (isPan ? "underside" : "disc"), result.maps().crossing());
        result.maps().wall().ifPresent(map -> cells("wall", map));
        result.maps().lid().ifPresent(map -> cells("lid", map));
    }

    private void cells(String name, FluxMap map) {
        comment("cells of " + name + ": " + map.columns() + " x " + map.rows() + " of "
                + number(map.cellWidth() * MILLIMETRES) + " mm x " + number(map.cellHeight() * MILLIMETRES) + " mm");
    }

    private void comment(String text) {
        out.append("# ").append(text.replace(",", ";")).append('\n');
    }

    private void rows(String surface, FluxMap map) {
        for (int j = 0; j < map.rows(); j++) {
            String y = number(map.second(j) * MILLIMETRES);
            for (int i = 0; i < map.columns(); i++) {
                int cell = j * map.columns() + i;
                out.append(surface).append(',');
                out.append(number(map.first(i) * MILLIMETRES)).append(',');
                out.append(y).append(',');
                out.append(number(map.flux()[cell] * KILOWATTS)).append(',');
                out.append(number(map.standardError()[cell] * KILOWATTS)).append('\n');
            }
        }
    }

    private static String number(double x) {
        return StableNumber.of(x, DIGITS);
    }
}
