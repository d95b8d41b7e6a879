package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import simmerpoint.drawing.output.Paper;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.Piece;

/** Patterns read back by readers that are not ours: PDFBox and the JDK's XML. Lengths to a hundredth of a millimetre. */
class CutFilesTest {
    private static final double NEAR = 0.01;
    private static CutPlan plan;
    private static CutFiles files;

    @BeforeAll
    static void files() throws Exception {
        String text =
                "title: Test\ndish: {diameter: 900 mm, focal-length: 450 mm, hub: 60 mm, surface: {cut: flat-rings, "
                        + "sectors: 12, rings: 3}}\nbuild: {film-edge: 4 mm}\n";
        plan = CutPlan.of(ScenarioReader.parse("test", text, Path.of("")));
        files = CutFiles.of(plan, Paper.A4, UnitSystem.METRIC);
    }

    /** Polygon of a piece as it must be read back, edge by edge, mm. */
    private static double[] edges(Polygon polygon) {
        double[] all = new double[polygon.size()];
        for (int k = 0; k < all.length; k++) {
            all[k] = 1000 * polygon.edge(k);
        }
        return all;
    }

    @Test
    void pdfPagesAreTrueToScale() throws IOException {
        byte[] pdf = files.pdf().get();
        assertArrayEquals(
                pdf, CutFiles.of(plan, Paper.A4, UnitSystem.METRIC).pdf().get(), "the same plan, the same bytes");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<double[]> found = new ArrayList<>();
            for (PDPage page : document.getPages()) {
                assertEquals(210, page.getMediaBox().getWidth() * 25.4 / 72, NEAR);
                assertEquals(297, page.getMediaBox().getHeight() * 25.4 / 72, NEAR);
                Lines lines = new Lines(page);
                lines.processPage(page);
                found.addAll(lines.closed);
                assertTrue(lines.open.stream().anyMatch(l -> Math.abs(l - 100) < NEAR), "a ruler of 100 mm");
                assertTrue(lines.open.stream().anyMatch(l -> Math.abs(l - 101.6) < NEAR), "a ruler of 4 in");
            }
            for (Piece piece : plan.pieces()) {
                double[] edges = edges(piece.outline());
                assertTrue(found.stream().anyMatch(read -> near(edges, read)), piece.name() + " at full size");
            }
        }
    }

    private static boolean near(double[] edges, double[] read) {
        boolean all = edges.length == read.length;
        for (int k = 0; all && k < edges.length; k++) {
            all = Math.abs(edges[k] - read[k]) < NEAR;
        }
        return all;
    }

    /** Lengths of lines on a page, mm; of closed ones edge by edge. */
    private static final class Lines extends PDFGraphicsStreamEngine {
        private final List<double[]> closed = new ArrayList<>();
        private final List<Double> open = new ArrayList<>();
        private final List<Point2D> points = new ArrayList<>();
        private boolean isClosed;

        Lines(PDPage page) {
            super(page);
        }

        @Override
        public void moveTo(float x, float y) {
            points.clear();
            isClosed = false;
            points.add(new Point2D.Double(x, y));
        }

        @Override
        public void lineTo(float x, float y) {
            points.add(new Point2D.Double(x, y));
        }

        @Override
        public void closePath() {
            isClosed = true;
        }

        @Override
        public void strokePath() {
            if (isClosed) {
                double[] edges = new double[points.size()];
                for (int k = 0; k < edges.length; k++) {
                    edges[k] = millimetres(k, (k + 1) % edges.length);
                }
                closed.add(edges);
            } else if (points.size() == 2) {
                open.add(millimetres(0, 1));
            }
            points.clear();
        }

        private double millimetres(int from, int to) {
            return points.get(from).distance(points.get(to)) * 25.4 / 72;
        }

        @Override
        public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
            points.clear();
        }

        @Override
        public void drawImage(PDImage image) {}

        @Override
        public void clip(int windingRule) {
            points.clear();
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            lineTo(x3, y3);
        }

        @Override
        public Point2D getCurrentPoint() {
            return points.isEmpty() ? new Point2D.Double() : points.get(points.size() - 1);
        }

        @Override
        public void endPath() {
            points.clear();
        }

        @Override
        public void fillPath(int windingRule) {
            points.clear();
        }

        @Override
        public void fillAndStrokePath(int windingRule) {
            strokePath();
        }

        @Override
        public void shadingFill(COSName name) {}
    }

    @Test
    void svgHoldsEveryPieceInMillimetres() throws Exception {
        Element svg = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(files.svg().get()))
                .getDocumentElement();
        String[] box = svg.getAttribute("viewBox").split(" ");
        assertEquals(svg.getAttribute("width"), box[2] + "mm", "a unit is a millimetre");
        NodeList groups = svg.getElementsByTagName("g");
        double area = 0;
        int count = 0;
        for (int k = 0; k < groups.getLength(); k++) {
            Element group = (Element) groups.item(k);
            NodeList paths = group.getElementsByTagName("path");
            for (int l = 0; !group.getAttribute("id").endsWith("-sheets") && l < paths.getLength(); l++) {
                area += shoelace(((Element) paths.item(l)).getAttribute("d"));
                count++;
            }
        }
        assertEquals(plan.pieces().stream().mapToInt(Piece::count).sum(), count);
        double wanted = plan.pieces().stream().mapToDouble(Piece::totalArea).sum() * 1e6;
        assertEquals(1, area / wanted, 1e-5);
    }

    private static double shoelace(String path) {
        List<Point> points = new ArrayList<>();
        for (String each : path.substring(1, path.length() - 1).split("L")) {
            String[] xy = each.split(" ");
            points.add(new Point(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])));
        }
        return Math.abs(new Polygon(points).area());
    }

    /** Pairs of group code and value, as the format has them; a reader of another maker reads the same file in the pages' tests. */
    @Test
    void dxfIsInMillimetres() {
        String[] lines = new String(files.dxf().get(), StandardCharsets.US_ASCII).split("\r\n");
        assertEquals(0, lines.length % 2, "pairs");
        int polylines = 0;
        for (int k = 0; k < lines.length; k += 2) {
            int code = Integer.parseInt(lines[k].strip());
            polylines += code == 0 && lines[k + 1].equals("POLYLINE") ? 1 : 0;
            if (lines[k + 1].equals("$INSUNITS")) {
                assertEquals("4", lines[k + 3], "millimetres");
            }
        }
        int sheets = plan.sheets() + plan.filmSheets().sheets().size();
        assertEquals(sheets + plan.pieces().stream().mapToInt(Piece::count).sum(), polylines);
        assertEquals("EOF", lines[lines.length - 1]);
    }
}
