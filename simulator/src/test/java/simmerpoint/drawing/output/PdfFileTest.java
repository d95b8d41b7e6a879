package simmerpoint.drawing.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;

/** Files are read back by PDFBox. A point is 1/72 inch (ISO 32000-1, 8.3.2.3), an inch 25.4 mm. */
class PdfFileTest {
    private static final double MILLIMETRES_PER_POINT = 25.4 / 72;

    /** A line of 150 mm, a circle of 60 mm across, words. */
    private static final Drawing RULER = new Drawing() {
        @Override
        public double height(double width, TextMetrics metrics) {
            return width;
        }

        @Override
        public void draw(Canvas canvas, Box box) {
            double unit = PdfFile.UNIT_MILLIMETRES;
            canvas.line(Style.DIMENSION, 20 / unit, 30 / unit, 170 / unit, 30 / unit);
            canvas.draw(Style.DIMENSION, new Circle(100 / unit, 100 / unit, 30 / unit));
            canvas.write(Text.at(20 / unit, 40 / unit, "θ = 12.5° ± 0.2, 1.13 m² × 3 → −4 “漢”"));
        }
    };

    /** The points at which lines begin and end, in points from the page's lower left corner. */
    private static List<Point2D> points(PDPage page) throws IOException {
        List<Point2D> points = new ArrayList<>();
        new PDFGraphicsStreamEngine(page) {
            @Override
            public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
                points.addAll(List.of(p0, p1, p2, p3));
            }

            @Override
            public void drawImage(PDImage image) {
                // Only lines are measured.
            }

            @Override
            public void clip(int rule) {
                // Only lines are measured.
            }

            @Override
            public void moveTo(float x, float y) {
                points.add(new Point2D.Double(x, y));
            }

            @Override
            public void lineTo(float x, float y) {
                points.add(new Point2D.Double(x, y));
            }

            @Override
            public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
                points.add(new Point2D.Double(x3, y3));
            }

            @Override
            public Point2D getCurrentPoint() {
                return points.get(points.size() - 1);
            }

            @Override
            public void closePath() {
                // Adds no point.
            }

            @Override
            public void endPath() {
                // Adds no point.
            }

            @Override
            public void strokePath() {
                // Only points are asked for.
            }

            @Override
            public void fillPath(int rule) {
                // Only points are asked for.
            }

            @Override
            public void fillAndStrokePath(int rule) {
                // Only points are asked for.
            }

            @Override
            public void shadingFill(COSName name) {
                // Only points are asked for.
            }
        }.processPage(page);
        return points;
    }

    @Test
    void aLengthIsTrueToATenthOfAMillimetre() throws IOException {
        try (PDDocument document = Loader.loadPDF(PdfFile.trueToScale(Paper.A4, List.of(RULER)))) {
            PDPage page = document.getPage(0);
            assertEquals(210, page.getMediaBox().getWidth() * MILLIMETRES_PER_POINT, 0.01);
            assertEquals(297, page.getMediaBox().getHeight() * MILLIMETRES_PER_POINT, 0.01);
            List<Point2D> points = points(page);
            assertEquals(150, points.get(0).distance(points.get(1)) * MILLIMETRES_PER_POINT, 0.1);
            double left =
                    points.stream().skip(2).mapToDouble(Point2D::getX).min().orElseThrow();
            double right =
                    points.stream().skip(2).mapToDouble(Point2D::getX).max().orElseThrow();
            assertEquals(60, (right - left) * MILLIMETRES_PER_POINT, 0.1);
            // 20 mm and 30 mm into the drawing, which begins at the margin.
            assertEquals(30, points.get(0).getX() * MILLIMETRES_PER_POINT, 0.1);
            assertEquals(297 - 40, points.get(0).getY() * MILLIMETRES_PER_POINT, 0.1);
        }
    }

    @Test
    void signsOfTheTradeAreReadBackAndStrangersAreReplaced() throws IOException {
        try (PDDocument document = Loader.loadPDF(PdfFile.trueToScale(Paper.LETTER, List.of(RULER)))) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("θ = 12.5° ± 0.2, 1.13 m² × 3 → −4 “?”"), text);
            document.getPage(0).getResources().getFontNames().forEach(name -> assertEmbedded(document, name));
        }
    }

    private static void assertEmbedded(PDDocument document, COSName name) {
        try {
            assertTrue(document.getPage(0).getResources().getFont(name).isEmbedded());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void theSameDrawingGivesTheSameBytes() {
        assertArrayEquals(
                PdfFile.fitted(Paper.A4.landscape(), 360, List.of(RULER, RULER)),
                PdfFile.fitted(Paper.A4.landscape(), 360, List.of(RULER, RULER)));
    }
}
