package simmerpoint.report;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;

/** Lines on a page as PDFBox reads them, m. */
final class PdfLines extends PDFGraphicsStreamEngine {
    private static final double POINT = 0.0254 / 72;

    private final List<Polygon> closed = new ArrayList<>();
    private final List<Double> open = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();
    private boolean isClosed;

    private PdfLines(PDPage page) {
        super(page);
    }

    static PdfLines of(PDPage page) throws IOException {
        PdfLines lines = new PdfLines(page);
        lines.processPage(page);
        return lines;
    }

    /** Closed lines. */
    List<Polygon> closed() {
        return closed;
    }

    /** Lengths of single straight lines. */
    List<Double> open() {
        return open;
    }

    @Override
    public void moveTo(float x, float y) {
        endPath();
        isClosed = false;
        lineTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        points.add(new Point(x * POINT, y * POINT));
    }

    @Override
    public void closePath() {
        isClosed = true;
    }

    @Override
    public void strokePath() {
        if (isClosed && points.size() > 2) {
            closed.add(new Polygon(points));
        } else if (points.size() == 2) {
            open.add(points.get(0).distance(points.get(1)));
        }
        endPath();
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        lineTo(x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        Point last = points.isEmpty() ? new Point(0, 0) : points.get(points.size() - 1);
        return new Point2D.Double(last.x() / POINT, last.y() / POINT);
    }

    @Override
    public void endPath() {
        points.clear();
    }

    @Override
    public void fillPath(int windingRule) {
        endPath();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        strokePath();
    }

    @Override
    public void clip(int windingRule) {
        endPath();
    }

    @Override
    public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
        endPath();
    }

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void shadingFill(COSName name) {}
}
