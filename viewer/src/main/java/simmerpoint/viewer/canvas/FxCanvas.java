package simmerpoint.viewer.canvas;

import java.nio.IntBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.WeakHashMap;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;
import javafx.scene.transform.NonInvertibleTransformException;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
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
import simmerpoint.viewer.theme.Theme;

/** Draws on a canvas of the window; a unit is a pixel. */
public final class FxCanvas extends Canvas {
    /** Images stay as long as somebody keeps their rasters. */
    private static final Map<Raster, Image> IMAGES = new WeakHashMap<>();

    private static final int OPAQUE = 0xFF;

    /** Lines that reach so much farther than the canvas are cut off at its edges before dashes are laid. */
    private static final double FAR = 8;

    private static final double ROOM = 20;
    private static final int CORNERS = 1440;

    private final GraphicsContext g;
    private final Theme theme;

    /** On a canvas's graphics in the colours of a theme; used on the FX thread only. */
    public FxCanvas(GraphicsContext g, Theme theme) {
        this.g = g;
        this.theme = theme;
        g.setTextBaseline(VPos.BASELINE);
        g.setLineJoin(StrokeLineJoin.ROUND);
        g.setFillRule(FillRule.EVEN_ODD);
    }

    private Color colour(Ink ink) {
        return InkColours.of(ink, theme);
    }

    @Override
    public TextMetrics metrics() {
        return FxMetrics::width;
    }

    @Override
    protected void paint(Style style, Shape shape) {
        style.fill().ifPresent(ink -> {
            g.setFill(colour(ink));
            fill(shape);
        });
        style.outline().ifPresent(stroke -> {
            set(stroke);
            if (stroke.dashes().length > 0 && shape instanceof Path path) {
                dashed(path, stroke.dashes());
            } else if (stroke.dashes().length > 0 && shape instanceof Circle circle && isFar(circle)) {
                dashed(corners(circle), stroke.dashes());
            } else {
                outline(shape);
            }
        });
    }

    /** Only what lies on the canvas: dashes are laid along the whole of a line, however long it is. */
    private void dashed(Path path, double[] dashes) {
        Box seen = seen();
        Box all = path.bounds();
        if (all.width() + all.height() < FAR * (seen.width() + seen.height())) {
            outline(path);
            return;
        }
        double period = Arrays.stream(dashes).sum();
        for (LineClip.Piece piece : LineClip.of(path, seen)) {
            g.setLineDashOffset(piece.before() % period);
            g.strokeLine(piece.x1(), piece.y1(), piece.x2(), piece.y2());
        }
        g.setLineDashOffset(0);
    }

    private boolean isFar(Circle circle) {
        Box seen = seen();
        return circle.radius() > FAR * (seen.width() + seen.height());
    }

    private static Path corners(Circle circle) {
        double[] xs = new double[CORNERS];
        double[] ys = new double[CORNERS];
        for (int k = 0; k < CORNERS; k++) {
            double angle = 2 * Math.PI * k / CORNERS;
            xs[k] = circle.x() + circle.radius() * Math.cos(angle);
            ys[k] = circle.y() + circle.radius() * Math.sin(angle);
        }
        return new Path(List.of(new Path.Part(xs, ys, true)));
    }

    /** What of the drawing's plane lies on the canvas, with room for the width of lines. */
    private Box seen() {
        try {
            Bounds at = g.getTransform()
                    .inverseTransform(new BoundingBox(
                            0, 0, g.getCanvas().getWidth(), g.getCanvas().getHeight()));
            return new Box(
                    at.getMinX() - ROOM, at.getMinY() - ROOM, at.getWidth() + 2 * ROOM, at.getHeight() + 2 * ROOM);
        } catch (NonInvertibleTransformException e) {
            return new Box(0, 0, 0, 0);
        }
    }

    private void set(Stroke stroke) {
        g.setStroke(colour(stroke.ink()));
        g.setLineWidth(stroke.width());
        g.setLineDashes(stroke.dashes());
        g.setLineCap(stroke.dashes().length == 0 ? StrokeLineCap.ROUND : StrokeLineCap.BUTT);
    }

    private void fill(Shape shape) {
        if (shape instanceof Box box) {
            g.fillRect(box.x(), box.y(), box.width(), box.height());
        } else if (shape instanceof RoundBox round) {
            Box box = round.box();
            g.fillRoundRect(box.x(), box.y(), box.width(), box.height(), 2 * round.corner(), 2 * round.corner());
        } else if (shape instanceof Circle c) {
            g.fillOval(c.x() - c.radius(), c.y() - c.radius(), 2 * c.radius(), 2 * c.radius());
        } else {
            trace((Path) shape);
            g.fill();
        }
    }

    private void outline(Shape shape) {
        if (shape instanceof Box box) {
            g.strokeRect(box.x(), box.y(), box.width(), box.height());
        } else if (shape instanceof RoundBox round) {
            Box box = round.box();
            g.strokeRoundRect(box.x(), box.y(), box.width(), box.height(), 2 * round.corner(), 2 * round.corner());
        } else if (shape instanceof Circle c) {
            g.strokeOval(c.x() - c.radius(), c.y() - c.radius(), 2 * c.radius(), 2 * c.radius());
        } else {
            trace((Path) shape);
            g.stroke();
        }
    }

    private void trace(Path path) {
        g.beginPath();
        for (Path.Part part : path.parts()) {
            for (int k = 0; k < part.xs().length; k++) {
                if (k == 0) {
                    g.moveTo(part.xs()[k], part.ys()[k]);
                } else {
                    g.lineTo(part.xs()[k], part.ys()[k]);
                }
            }
            if (part.closed()) {
                g.closePath();
            }
        }
    }

    @Override
    protected void letters(Text text) {
        g.setFont(FxMetrics.font(text.size(), text.style().bold()));
        g.setTextAlign(
                switch (text.anchor()) {
                    case START -> TextAlignment.LEFT;
                    case MIDDLE -> TextAlignment.CENTER;
                    case END -> TextAlignment.RIGHT;
                });
        if (text.degrees() == 0) {
            letters(text, text.x(), text.y());
        } else {
            g.save();
            g.translate(text.x(), text.y());
            g.rotate(text.degrees());
            letters(text, 0, 0);
            g.restore();
        }
    }

    private void letters(Text text, double x, double y) {
        text.style().rim().ifPresent(ink -> {
            set(new Stroke(ink, TextStyle.RIM));
            g.strokeText(text.words(), x, y);
        });
        g.setFill(colour(text.style().ink()));
        g.fillText(text.words(), x, y);
    }

    @Override
    public void image(Raster raster, Box box) {
        Image image = IMAGES.computeIfAbsent(raster, FxCanvas::image);
        g.setImageSmoothing(!raster.sharp());
        g.drawImage(image, box.x(), box.y(), box.width(), box.height());
    }

    /** With alpha multiplied in, so that nothing is converted any more. */
    private static Image image(Raster raster) {
        int[] argb = raster.argb();
        int[] pixels = new int[argb.length];
        for (int k = 0; k < pixels.length; k++) {
            int alpha = argb[k] >>> 24;
            pixels[k] = alpha == OPAQUE ? argb[k] : alpha == 0 ? 0 : premultiplied(argb[k], alpha);
        }
        return new WritableImage(new PixelBuffer<>(
                raster.width(), raster.height(), IntBuffer.wrap(pixels), PixelFormat.getIntArgbPreInstance()));
    }

    private static int premultiplied(int argb, int alpha) {
        return alpha << 24
                | ((argb >> 16 & 0xFF) * alpha / OPAQUE) << 16
                | ((argb >> 8 & 0xFF) * alpha / OPAQUE) << 8
                | (argb & 0xFF) * alpha / OPAQUE;
    }

    @Override
    public void clip(Box box, Runnable drawing) {
        g.save();
        g.beginPath();
        g.rect(box.x(), box.y(), box.width(), box.height());
        g.clip();
        drawing.run();
        g.restore();
    }

    @Override
    public void fade(double share, Runnable drawing) {
        double before = g.getGlobalAlpha();
        g.setGlobalAlpha(before * share);
        drawing.run();
        g.setGlobalAlpha(before);
    }
}
