package simmerpoint.drawing.output;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.TextMetrics;

/** Drawings as a PDF file to print, one on each page. The same drawings give the same bytes. */
public final class PdfFile {
    /** A unit on pages that are true to scale, mm: usual letters are then 3.6 mm (10 points) high. */
    public static final double UNIT_MILLIMETRES = 0.3;

    /** Left free at every edge, since few printers reach it, mm. */
    public static final double MARGIN_MILLIMETRES = 10;

    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

    private PdfFile() {}

    /** Pages on which a unit is {@link #UNIT_MILLIMETRES} exactly: each drawing fills the paper within its margins. */
    public static byte[] trueToScale(Paper paper, List<? extends Drawing> drawings) {
        return bytes(drawings, (drawing, metrics) -> {
            double margins = 2 * MARGIN_MILLIMETRES;
            Box box = new Box(
                    0,
                    0,
                    (paper.widthMillimetres() - margins) / UNIT_MILLIMETRES,
                    (paper.heightMillimetres() - margins) / UNIT_MILLIMETRES);
            return new Layout(paper, box, UNIT_MILLIMETRES);
        });
    }

    /** Pages on which a drawing that is {@code units} wide is as large as the paper allows. */
    public static byte[] fitted(Paper paper, double units, List<? extends Drawing> drawings) {
        return bytes(drawings, (drawing, metrics) -> {
            double height = drawing.height(units, metrics);
            double margins = 2 * MARGIN_MILLIMETRES;
            double scale = Math.min(
                    (paper.widthMillimetres() - margins) / units, (paper.heightMillimetres() - margins) / height);
            return new Layout(paper, new Box(0, 0, units, height), scale);
        });
    }

    /** A drawing's box in units on its paper, a unit so many millimetres. */
    private record Layout(Paper paper, Box box, double millimetres) {}

    /** Lays a drawing out. */
    private interface Layouts {
        Layout of(Drawing drawing, TextMetrics metrics);
    }

    private static byte[] bytes(List<? extends Drawing> drawings, Layouts layouts) {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(0L);
            PdfLetters letters = new PdfLetters(document);
            for (Drawing drawing : drawings) {
                page(document, drawing, layouts.of(drawing, letters), letters);
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void page(PDDocument document, Drawing drawing, Layout layout, PdfLetters letters)
            throws IOException {
        float width = (float) (layout.paper().widthMillimetres() * POINTS_PER_MILLIMETRE);
        float height = (float) (layout.paper().heightMillimetres() * POINTS_PER_MILLIMETRE);
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        float unit = (float) (layout.millimetres() * POINTS_PER_MILLIMETRE);
        float margin = (float) (MARGIN_MILLIMETRES * POINTS_PER_MILLIMETRE);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            // Units to the right and downwards.
            content.transform(new Matrix(unit, 0, 0, -unit, margin, height - margin));
            drawing.draw(new PdfCanvas(document, content, letters), layout.box());
        }
    }
}
