package simmerpoint.report;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.CutterSheets;

/**
 * Sheets as DXF in millimetres, release 12, which nearly every program reads: closed POLYLINEs on layers RIBS, PANELS, FILM, the
 * sheets' edges on layers of their own. Group codes: Autodesk's DXF reference.
 */
final class CutterDxf {
    private static final int CLOSED = 1;
    private static final int MILLIMETRES = 4;
    private final StringBuilder out = new StringBuilder();

    private CutterDxf() {}

    static byte[] bytes(CutPlan plan) {
        return new CutterDxf().text(CutterSheets.of(plan)).getBytes(StandardCharsets.US_ASCII);
    }

    private String text(CutterSheets sheets) {
        put(0, "SECTION").put(2, "HEADER");
        put(9, "$ACADVER").put(1, "AC1009");
        put(9, "$INSUNITS").put(70, MILLIMETRES);
        put(0, "ENDSEC");
        put(0, "SECTION").put(2, "ENTITIES");
        for (CutterSheets.Layer layer : sheets.layers()) {
            layer.sheets().forEach(sheet -> polyline(layer.name() + "_SHEETS", sheet));
            layer.cuts().forEach(cut -> polyline(layer.name(), cut));
        }
        put(0, "ENDSEC").put(0, "EOF");
        return out.toString();
    }

    private void polyline(String layer, Polygon polygon) {
        put(0, "POLYLINE").put(8, layer).put(66, 1);
        put(10, "0.0").put(20, "0.0").put(30, "0.0").put(70, CLOSED);
        for (Point corner : polygon.corners()) {
            put(0, "VERTEX").put(8, layer);
            put(10, millimetres(corner.x())).put(20, millimetres(corner.y())).put(30, "0.0");
        }
        put(0, "SEQEND").put(8, layer);
    }

    private static String millimetres(double metres) {
        return String.format(Locale.ROOT, "%.6f", 1000 * metres);
    }

    private CutterDxf put(int code, int value) {
        return put(code, Integer.toString(value));
    }

    private CutterDxf put(int code, String value) {
        out.append(String.format(Locale.ROOT, "%3d", code))
                .append("\r\n")
                .append(value)
                .append("\r\n");
        return this;
    }
}
