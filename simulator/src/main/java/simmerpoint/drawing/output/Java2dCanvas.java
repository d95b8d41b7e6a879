package simmerpoint.drawing.output;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
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

/** Draws with Java2D, whose user space must be in units already. */
public final class Java2dCanvas extends Canvas {
    private static final FontRenderContext FINE = new FontRenderContext(new AffineTransform(), true, true);

    private final Graphics2D g;
    private final ColourScheme theme;

    /** A canvas of that graphics in those colours. */
    public Java2dCanvas(Graphics2D g, ColourScheme theme) {
        this.g = g;
        this.theme = theme;
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    }

    private static Font font(double size, boolean bold) {
        return new Font(Font.SANS_SERIF, bold ? Font.BOLD : Font.PLAIN, 1).deriveFont((float) size);
    }

    private static double width(String words, double size, boolean bold) {
        return font(size, bold).getStringBounds(words, FINE).getWidth();
    }

    private Color colour(Ink ink) {
        return new Color(theme.argb(ink), true);
    }

    /** How wide text gets in every picture. */
    static TextMetrics textMetrics() {
        return Java2dCanvas::width;
    }

    @Override
    public TextMetrics metrics() {
        return textMetrics();
    }

    @Override
    protected void paint(Style style, Shape shape) {
        java.awt.Shape drawn = shape(shape);
        style.fill().ifPresent(ink -> {
            g.setColor(colour(ink));
            g.fill(drawn);
        });
        style.outline().ifPresent(stroke -> {
            g.setColor(colour(stroke.ink()));
            g.setStroke(stroke(stroke));
            g.draw(drawn);
        });
    }

    private static BasicStroke stroke(Stroke stroke) {
        float[] dashes = new float[stroke.dashes().length];
        for (int k = 0; k < dashes.length; k++) {
            dashes[k] = (float) stroke.dashes()[k];
        }
        return new BasicStroke(
                (float) stroke.width(),
                dashes.length == 0 ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_ROUND,
                1,
                dashes.length == 0 ? null : dashes,
                0);
    }

    private static java.awt.Shape shape(Shape shape) {
        if (shape instanceof Box box) {
            return new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height());
        }
        if (shape instanceof RoundBox round) {
            Box box = round.box();
            double corner = 2 * round.corner();
            return new RoundRectangle2D.Double(box.x(), box.y(), box.width(), box.height(), corner, corner);
        }
        if (shape instanceof Circle circle) {
            double r = circle.radius();
            return new Ellipse2D.Double(circle.x() - r, circle.y() - r, 2 * r, 2 * r);
        }
        return path((Path) shape);
    }

    private static Path2D path(Path path) {
        Path2D out = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (Path.Part part : path.parts()) {
            for (int k = 0; k < part.xs().length; k++) {
                if (k == 0) {
                    out.moveTo(part.xs()[k], part.ys()[k]);
                } else {
                    out.lineTo(part.xs()[k], part.ys()[k]);
                }
            }
            if (part.closed()) {
                out.closePath();
            }
        }
        return out;
    }

    @Override
    protected void letters(Text text) {
        TextStyle style = text.style();
        double back = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> 0.5;
            case END -> 1;
        };
        double x = -back * width(text.words(), text.size(), style.bold());
        AffineTransform before = g.getTransform();
        g.translate(text.x(), text.y());
        g.rotate(Math.toRadians(text.degrees()));
        Font font = font(text.size(), style.bold());
        style.rim().ifPresent(ink -> {
            g.setColor(colour(ink));
            g.setStroke(new BasicStroke((float) TextStyle.RIM, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(font.createGlyphVector(FINE, text.words()).getOutline((float) x, 0));
        });
        g.setColor(colour(style.ink()));
        g.setFont(font);
        g.drawString(text.words(), (float) x, 0);
        g.setTransform(before);
    }

    @Override
    public void image(Raster raster, Box box) {
        AffineTransform place = AffineTransform.getTranslateInstance(box.x(), box.y());
        place.scale(box.width() / raster.width(), box.height() / raster.height());
        Object before = g.getRenderingHint(RenderingHints.KEY_INTERPOLATION);
        if (raster.sharp()) {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR);
        }
        g.drawImage(image(raster), place, null);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, before);
    }

    /** The raster as a picture of Java2D. */
    static BufferedImage image(Raster raster) {
        BufferedImage image = new BufferedImage(raster.width(), raster.height(), BufferedImage.TYPE_INT_ARGB);
        image.setRGB(0, 0, raster.width(), raster.height(), raster.argb(), 0, raster.width());
        return image;
    }

    @Override
    public void clip(Box box, Runnable drawing) {
        java.awt.Shape before = g.getClip();
        g.clip(shape(box));
        drawing.run();
        g.setClip(before);
    }

    @Override
    public void fade(double share, Runnable drawing) {
        Composite before = g.getComposite();
        g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, (float) share));
        drawing.run();
        g.setComposite(before);
    }
}
