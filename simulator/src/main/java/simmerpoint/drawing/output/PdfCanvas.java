package simmerpoint.drawing.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.WeakHashMap;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.ColourScheme;
import simmerpoint.drawing.Ink;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Raster;
import simmerpoint.drawing.RoundBox;
import simmerpoint.drawing.Shape;
import simmerpoint.drawing.Stroke;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;

/** Draws on a page of a PDF file whose space is in units downwards already. */
final class PdfCanvas extends Canvas {
    /** Handle of the cubic that comes nearest to a quarter of a circle (to 0.03 % of its radius; derived here: 4/3 (√2 − 1)). */
    private static final double QUARTER = 4.0 / 3 * (Math.sqrt(2) - 1);

    /** What bold letters are thickened by, as a share of their size. */
    private static final double BOLD = 0.035;

    private static final double OPAQUE = 255;
    private static final int ROUND = 1;

    private final PDDocument document;
    private final PDPageContentStream content;
    private final PdfLetters letters;
    private final Map<Raster, PDImageXObject> images = new WeakHashMap<>();
    private double share = 1;

    PdfCanvas(PDDocument document, PDPageContentStream content, PdfLetters letters) throws IOException {
        this.document = document;
        this.content = content;
        this.letters = letters;
        content.setLineJoinStyle(ROUND);
    }

    /** What writes into the page and may fail to. */
    private interface Writing {
        void run() throws IOException;
    }

    private static void write(Writing writing) {
        try {
            writing.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes with the page's state as it was before. */
    private void apart(Writing writing) {
        write(() -> {
            content.saveGraphicsState();
            writing.run();
            content.restoreGraphicsState();
        });
    }

    @Override
    public TextMetrics metrics() {
        return letters;
    }

    @Override
    protected void paint(Style style, Shape shape) {
        style.fill()
                .ifPresent(ink -> apart(() -> {
                    fill(ink);
                    trace(shape);
                    content.fillEvenOdd();
                }));
        style.outline()
                .ifPresent(stroke -> apart(() -> {
                    stroke(stroke);
                    trace(shape);
                    content.stroke();
                }));
    }

    private void fill(Ink ink) throws IOException {
        int argb = ColourScheme.PRINT.argb(ink);
        content.setNonStrokingColor(colour(argb));
        see(argb);
    }

    private void stroke(Stroke stroke) throws IOException {
        int argb = ColourScheme.PRINT.argb(stroke.ink());
        content.setStrokingColor(colour(argb));
        see(argb);
        content.setLineWidth((float) stroke.width());
        content.setLineCapStyle(stroke.dashes().length == 0 ? ROUND : 0);
        float[] dashes = new float[stroke.dashes().length];
        for (int k = 0; k < dashes.length; k++) {
            dashes[k] = (float) stroke.dashes()[k];
        }
        content.setLineDashPattern(dashes, 0);
    }

    private static PDColor colour(int argb) {
        float[] rgb = {
            (float) ((argb >> 16 & 0xFF) / OPAQUE),
            (float) ((argb >> 8 & 0xFF) / OPAQUE),
            (float) ((argb & 0xFF) / OPAQUE)
        };
        return new PDColor(rgb, PDDeviceRGB.INSTANCE);
    }

    /** How much of a colour covers what lies below. */
    private void see(int argb) throws IOException {
        double alpha = share * (argb >>> 24) / OPAQUE;
        if (alpha < 1) {
            PDExtendedGraphicsState state = new PDExtendedGraphicsState();
            state.setNonStrokingAlphaConstant((float) alpha);
            state.setStrokingAlphaConstant((float) alpha);
            content.setGraphicsStateParameters(state);
        }
    }

    private void trace(Shape shape) throws IOException {
        if (shape instanceof Box box) {
            content.addRect((float) box.x(), (float) box.y(), (float) box.width(), (float) box.height());
        } else if (shape instanceof RoundBox round) {
            round(round.box(), round.corner());
        } else if (shape instanceof Circle circle) {
            double r = circle.radius();
            round(new Box(circle.x() - r, circle.y() - r, 2 * r, 2 * r), r);
        } else {
            for (Path.Part part : ((Path) shape).parts()) {
                trace(part);
            }
        }
    }

    private void trace(Path.Part part) throws IOException {
        for (int k = 0; k < part.xs().length; k++) {
            if (k == 0) {
                content.moveTo((float) part.xs()[k], (float) part.ys()[k]);
            } else {
                content.lineTo((float) part.xs()[k], (float) part.ys()[k]);
            }
        }
        if (part.closed()) {
            content.closePath();
        }
    }

    private void round(Box box, double r) throws IOException {
        double left = box.x();
        double top = box.y();
        content.moveTo((float) (left + r), (float) top);
        corner(box.right() - r, top, box.right(), top, box.right(), top + r);
        corner(box.right(), box.bottom() - r, box.right(), box.bottom(), box.right() - r, box.bottom());
        corner(left + r, box.bottom(), left, box.bottom(), left, box.bottom() - r);
        corner(left, top + r, left, top, left + r, top);
        content.closePath();
    }

    /** A line to where a corner begins, then a quarter of a circle about it to where it ends. */
    private void corner(double fromX, double fromY, double x, double y, double toX, double toY) throws IOException {
        content.lineTo((float) fromX, (float) fromY);
        content.curveTo(
                (float) (fromX + QUARTER * (x - fromX)),
                (float) (fromY + QUARTER * (y - fromY)),
                (float) (toX + QUARTER * (x - toX)),
                (float) (toY + QUARTER * (y - toY)),
                (float) toX,
                (float) toY);
    }

    @Override
    protected void letters(Text text) {
        String words = letters.writable(text.words());
        double back = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> 0.5;
            case END -> 1;
        };
        double x = -back * letters.width(words, text.size(), text.style().bold());
        apart(() -> {
            content.transform(Matrix.getTranslateInstance((float) text.x(), (float) text.y()));
            content.transform(Matrix.getRotateInstance(Math.toRadians(text.degrees()), 0, 0));
            if (text.style().rim().isPresent()) {
                stroke(new Stroke(text.style().rim().get(), TextStyle.RIM));
                show(words, x, text.size(), RenderingMode.STROKE);
            }
            fill(text.style().ink());
            stroke(new Stroke(text.style().ink(), BOLD * text.size()));
            show(words, x, text.size(), text.style().bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        });
    }

    /** Letters stand upright in a space that runs downwards. */
    private void show(String words, double x, double size, RenderingMode mode) throws IOException {
        content.beginText();
        content.setRenderingMode(mode);
        content.setFont(letters.font(), (float) size);
        content.setTextMatrix(new Matrix(1, 0, 0, -1, (float) x, 0));
        content.showText(words);
        content.endText();
    }

    @Override
    public void image(Raster raster, Box box) {
        apart(() -> {
            PDImageXObject image = images.get(raster);
            if (image == null) {
                image = LosslessFactory.createFromImage(document, Java2dCanvas.image(raster));
                images.put(raster, image);
            }
            content.drawImage(
                    image, new Matrix((float) box.width(), 0, 0, (float) -box.height(), (float) box.x(), (float)
                            box.bottom()));
        });
    }

    @Override
    public void clip(Box box, Runnable drawing) {
        apart(() -> {
            trace(box);
            content.clip();
            drawing.run();
        });
    }

    @Override
    public void fade(double by, Runnable drawing) {
        double before = share;
        share *= by;
        drawing.run();
        share = before;
    }
}
