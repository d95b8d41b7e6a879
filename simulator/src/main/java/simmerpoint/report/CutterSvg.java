package simmerpoint.report;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import simmerpoint.drawing.output.XmlWriter;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.CutterSheets;

/** Sheets as SVG in millimetres: a unit of the picture is one, so that a cutter gets true lengths. */
final class CutterSvg {
    private CutterSvg() {}

    static byte[] bytes(CutPlan plan) {
        CutterSheets sheets = CutterSheets.of(plan);
        XmlWriter writer = new XmlWriter();
        String width = millimetres(sheets.width());
        String height = millimetres(sheets.height());
        writer.open(
                        "svg",
                        "xmlns",
                        "http://www.w3.org/2000/svg",
                        "width",
                        width + "mm",
                        "height",
                        height + "mm",
                        "viewBox",
                        "0 0 " + width + " " + height,
                        "fill",
                        "none",
                        "stroke-width",
                        "0.1")
                .line();
        for (CutterSheets.Layer layer : sheets.layers()) {
            writer.open("g", "id", layer.name().toLowerCase(Locale.ROOT) + "-sheets", "stroke", "#888888")
                    .line();
            layer.sheets().forEach(sheet -> path(writer, sheet, sheets.height()));
            writer.close("g").line();
            writer.open("g", "id", layer.name().toLowerCase(Locale.ROOT), "stroke", "#000000")
                    .line();
            layer.cuts().forEach(cut -> path(writer, cut, sheets.height()));
            writer.close("g").line();
        }
        writer.close("svg").line();
        return writer.written().getBytes(StandardCharsets.UTF_8);
    }

    private static void path(XmlWriter writer, Polygon polygon, double height) {
        StringBuilder way = new StringBuilder();
        for (Point corner : polygon.corners()) {
            way.append(way.length() == 0 ? 'M' : 'L')
                    .append(millimetres(corner.x()))
                    .append(' ')
                    .append(millimetres(height - corner.y()));
        }
        writer.empty("path", "d", way.append('Z').toString()).line();
    }

    private static String millimetres(double metres) {
        return String.format(Locale.ROOT, "%.4f", 1000 * metres);
    }
}
