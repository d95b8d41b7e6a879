package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.drawing.output.Paper;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.PanelPlace;

/**
 * A dish put together from its own patterns, as readers that are not ours read them, brings the watts of the dish that was
 * planned: panels are laid on ribs as a builder does, and the result is traced as a mesh of flat polygons.
 */
class RebuiltDishTest {
    private static final String COOKER =
            "mirror: {slope-error: 3 mrad}\nsun: {elevation: 55°}\npan: {diameter: 16 cm, height: 10 cm}\n";

    /** Ribs of 6 mm that are 40 mm high below the vertex are what the scenario's defaults say. */
    private static final double THICK = 0.006;

    private static final double BELOW = 0.040;

    /** Standard errors allowed. */
    private static final double ERRORS = 4;

    @TempDir
    Path folder;

    private static CheckedScenario read(String dish, Path base) throws Exception {
        return ScenarioReader.parse("test", dish + COOKER, base);
    }

    private static CutFiles files(CutPlan plan) {
        return CutFiles.of(plan, Paper.A4, UnitSystem.METRIC);
    }

    private static Estimate caught(CheckedScenario read) throws Exception {
        TraceOptions options = TraceOptions.defaults().withThreads(2).withRays(1 << 18);
        return TraceStudy.run(read.scenario(), options, Progress.NONE).ledger().caught();
    }

    /** Traces the mesh and holds its watts against the plan's; {@code more} is a share allowed beyond chance. */
    private void assertSameWatts(String dish, Obj mesh, double more) throws Exception {
        Files.writeString(folder.resolve("rebuilt.obj"), mesh.text.toString());
        String rebuilt = dish.replaceFirst(", (hub|gap): [^,]*", "")
                .replaceFirst("surface: .*", "surface: {cut: from-file, file: rebuilt.obj, unit: m}}");
        Estimate planned = caught(read(dish, folder));
        Estimate found = caught(read(rebuilt, folder));
        double allowed = ERRORS * Math.hypot(planned.standardError(), found.standardError());
        assertEquals(planned.value(), found.value(), allowed + more * planned.value());
        assertTrue(allowed < 2e-3 * planned.value(), "chance hides nothing: " + allowed);
    }

    /** Flat polygons as a mesh file has them, m. */
    private static final class Obj {
        private final StringBuilder text = new StringBuilder();
        private int points;

        void face(double[]... corners) {
            for (double[] c : corners) {
                text.append(String.format(Locale.ROOT, "v %.9f %.9f %.9f%n", c[0], c[1], c[2]));
            }
            text.append('f');
            IntStream.rangeClosed(1, corners.length)
                    .forEach(k -> text.append(' ').append(points + k));
            text.append(System.lineSeparator());
            points += corners.length;
        }
    }

    /** A point at a distance and height over the rib that stands at an angle. */
    private static double[] onRib(double angle, double radius, double height) {
        return new double[] {radius * Math.cos(angle), radius * Math.sin(angle), height};
    }

    /** Outline of every piece of a PDF by its name, in the order in which they are drawn. */
    private static Map<String, Polygon> pieces(byte[] pdf) throws IOException {
        Pattern name = Pattern.compile("^(?:A1 )?(.*), cut \\d+", Pattern.MULTILINE);
        Map<String, Polygon> pieces = new TreeMap<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                PDFTextStripper words = new PDFTextStripper();
                words.setStartPage(page + 1);
                words.setEndPage(page + 1);
                Matcher found = name.matcher(words.getText(document));
                List<Polygon> outlines = PdfLines.of(document.getPage(page)).closed();
                for (int k = 0; found.find(); k++) {
                    pieces.putIfAbsent(found.group(1).strip(), outlines.get(k));
                }
            }
        }
        return pieces;
    }

    /** Height above the vertex of a rib's edge, from its outline as printed. */
    private static final class Rib {
        private final List<Point> edge = new ArrayList<>();

        /** The longest straight line is its foot; the shorter end stands where ribs meet side by side. */
        Rib(Polygon printed, int count) {
            int foot = IntStream.range(0, printed.size())
                    .boxed()
                    .max(Comparator.comparingDouble(printed::edge))
                    .orElseThrow();
            Point a = printed.corner(foot);
            Point b = printed.corner(foot + 1);
            Polygon level = printed.turned(-Math.atan2(b.y() - a.y(), b.x() - a.x()));
            boolean hangs = level.corner(foot).y() > level.foot() + level.height() / 2;
            Polygon upright = (hangs ? level.turned(Math.PI) : level).atOrigin();
            boolean mirrored = printed.edge(foot + 1) < printed.edge(foot - 1)
                    == upright.corner(foot + 1).x() > 0.1;
            double inner = THICK / 2 / Math.tan(Math.PI / count);
            for (Point p : upright.corners()) {
                if (p.y() > 1e-6) {
                    edge.add(new Point(inner + (mirrored ? upright.width() - p.x() : p.x()), p.y() - BELOW));
                }
            }
            edge.sort(Comparator.comparingDouble(Point::x));
        }

        private static double at(Point a, Point b, double radius) {
            return a.y() + (radius - a.x()) / (b.x() - a.x()) * (b.y() - a.y());
        }

        double height(double radius) {
            for (int k = 1; k < edge.size(); k++) {
                if (radius <= edge.get(k).x() + 1e-6) {
                    return at(edge.get(k - 1), edge.get(k), radius);
                }
            }
            throw new IllegalArgumentException("beyond the rib: " + radius);
        }

        /** Distance from the axis of the place so far along the edge, beyond the one at {@code from}. */
        double radiusAt(double from, double along) {
            double left = along;
            Point at = new Point(from, height(from));
            for (Point next : edge) {
                if (next.x() > from) {
                    double step = at.distance(next);
                    if (step >= left - 1e-6 || next.equals(edge.get(edge.size() - 1))) {
                        assertTrue(left < step + 5e-5, "no longer than the rib");
                        return at.x() + Math.min(1, left / step) * (next.x() - at.x());
                    }
                    left -= step;
                    at = next;
                }
            }
            throw new IllegalArgumentException("longer than the rib: " + along);
        }
    }

    /** Each trapezoid of the PDF stands with its parallel edges between two ribs, where chords are as long as they. */
    @Test
    void flatRingsFromThePdf() throws Exception {
        int sectors = 12;
        double beta = Math.PI / sectors;
        String dish =
                "dish: {diameter: 90 cm, focal-length: 45 cm, hub: 60 mm, surface: {cut: flat-rings, sectors: 12, "
                        + "rings: 3}}\n";
        Map<String, Polygon> pieces = pieces(
                files(CutPlan.of(read(dish, folder), UnitSystem.METRIC)).pdf().get());
        Rib rib = new Rib(pieces.get("rib"), sectors);
        Obj mesh = new Obj();
        for (Polygon panel : List.of(pieces.get("panel A"), pieces.get("panel B"), pieces.get("panel C"))) {
            int legs = Math.abs(panel.edge(0) - panel.edge(2)) < 1e-5 ? 0 : 1;
            double inner = Math.min(panel.edge(legs + 1), panel.edge(legs + 3)) / 2 / Math.sin(beta);
            double outer = Math.max(panel.edge(legs + 1), panel.edge(legs + 3)) / 2 / Math.sin(beta);
            double leg = Math.hypot(outer - inner, rib.height(outer) - rib.height(inner));
            assertEquals(leg, panel.edge(legs), 1e-4, "its legs lie along the ribs");
            for (int k = 0; k < sectors; k++) {
                double left = 2 * beta * k;
                double right = left + 2 * beta;
                mesh.face(
                        onRib(left, inner, rib.height(inner)),
                        onRib(left, outer, rib.height(outer)),
                        onRib(right, outer, rib.height(outer)),
                        onRib(right, inner, rib.height(inner)));
            }
        }
        assertSameWatts(dish, mesh, 1e-4);
    }

    /**
     * A strip of the SVG is bent with its edges along two ribs of the PDF, and traced as flat rows a few millimetres wide: their
     * slopes are off by at most row ÷ 4f = 1.5 mrad, 0.9 mrad in the mean square, beside the sun's 2.3 and twice the slope error's 3.
     */
    @Test
    void bentStripsFromSvgAndPdf() throws Exception {
        int sectors = 16;
        double beta = Math.PI / sectors;
        String dish =
                "dish: {diameter: 1 m, focal-length: 60 cm, hub: 60 mm, surface: {cut: bent-strips, sectors: 16}}\n";
        CutFiles files = files(CutPlan.of(read(dish, folder), UnitSystem.METRIC));
        Rib rib = new Rib(pieces(files.pdf().get()).get("rib"), sectors);
        List<Polygon> strips = SvgLines.cuts(SvgLines.root(files.svg().get()), "panels");
        assertEquals(sectors, strips.size());
        Obj mesh = new Obj();
        for (int k = 0; k < sectors; k++) {
            addStrip(strips.get(k), rib, 2 * beta * k, beta, mesh);
        }
        assertSameWatts(dish, mesh, 5e-4);
    }

    /** From the rim, the longest single line, both long edges run inwards by equal steps. */
    private static void addStrip(Polygon strip, Rib rib, double angle, double beta, Obj mesh) {
        int rim = IntStream.range(0, strip.size())
                .boxed()
                .max(Comparator.comparingDouble(strip::edge))
                .orElseThrow();
        int rows = strip.size() / 2 - 1;
        double length = IntStream.rangeClosed(1, rows)
                .mapToDouble(k -> strip.edge(rim + k))
                .sum();
        double hub = strip.corner(rim + 1 + rows).distance(strip.corner(rim - rows)) / 2 / Math.sin(beta);
        double left = length;
        double[][] before = null;
        for (int k = 0; k <= rows; k++) {
            double radius = rib.radiusAt(hub, left);
            double wide = strip.corner(rim + 1 + k).distance(strip.corner(rim - k));
            assertEquals(2 * radius * Math.sin(beta), wide, 1e-4, "it reaches from rib to rib");
            double[][] row = {
                onRib(angle, radius, rib.height(radius)), onRib(angle + 2 * beta, radius, rib.height(radius))
            };
            if (before != null) {
                mesh.face(row[0], before[0], before[1], row[1]);
            }
            before = row;
            left -= strip.edge(rim + 1 + k);
        }
    }

    /** A tile of the PDF is glued at the place of the list, leaning towards the axis by the list's cant, its flats square to x. */
    @Test
    void tilesFromThePdf() throws Exception {
        String dish =
                "dish: {diameter: 80 cm, focal-length: 50 cm, gap: 1 mm, surface: {cut: hexagon-tiles, tile: 70 mm}}\n";
        CutPlan plan = CutPlan.of(read(dish, folder), UnitSystem.METRIC);
        Polygon tile = pieces(files(plan).pdf().get()).get("panel");
        Obj mesh = new Obj();
        for (PanelPlace place : plan.places()) {
            mesh.face(glued(tile, place));
        }
        assertSameWatts(dish, mesh, 1e-4);
    }

    private static double[][] glued(Polygon tile, PanelPlace place) {
        double cx = tile.corners().stream().mapToDouble(Point::x).average().orElseThrow();
        double cy = tile.corners().stream().mapToDouble(Point::y).average().orElseThrow();
        Point first = tile.corner(0);
        double turn = Math.PI / 6 - Math.atan2(first.y() - cy, first.x() - cx);
        double out = Math.atan2(place.middle().y(), place.middle().x());
        double[][] corners = new double[tile.size()][];
        for (int k = 0; k < corners.length; k++) {
            Point p = tile.moved(-cx, -cy).turned(turn).corner(k);
            double along = p.x() * Math.cos(out) + p.y() * Math.sin(out);
            double shift = along * (Math.cos(place.cantRadians()) - 1);
            corners[k] = new double[] {
                place.middle().x() + p.x() + shift * Math.cos(out),
                place.middle().y() + p.y() + shift * Math.sin(out),
                place.middle().z() + along * Math.sin(place.cantRadians())
            };
        }
        return corners;
    }
}
