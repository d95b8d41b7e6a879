package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import simmerpoint.drawing.output.Paper;
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
        plan = CutPlan.of(ScenarioReader.parse("test", text, Path.of("")), UnitSystem.METRIC);
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
                PdfLines lines = PdfLines.of(page);
                lines.closed().forEach(polygon -> found.add(edges(polygon)));
                assertTrue(lines.open().stream().anyMatch(l -> Math.abs(1000 * l - 100) < NEAR), "a ruler of 100 mm");
                assertTrue(lines.open().stream().anyMatch(l -> Math.abs(1000 * l - 101.6) < NEAR), "a ruler of 4 in");
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

    @Test
    void svgHoldsEveryPieceInMillimetres() throws Exception {
        Element svg = SvgLines.root(files.svg().get());
        String[] box = svg.getAttribute("viewBox").split(" ");
        assertEquals(svg.getAttribute("width"), box[2] + "mm", "a unit is a millimetre");
        List<Polygon> cuts = SvgLines.cuts(svg, "");
        assertEquals(plan.pieces().stream().mapToInt(Piece::count).sum(), cuts.size());
        double area = cuts.stream().mapToDouble(Polygon::area).sum();
        double wanted = plan.pieces().stream().mapToDouble(Piece::totalArea).sum();
        assertEquals(1, area / wanted, 1e-5);
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
