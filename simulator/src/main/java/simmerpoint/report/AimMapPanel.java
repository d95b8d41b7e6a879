package simmerpoint.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;
import simmerpoint.drawing.FluxColours;
import simmerpoint.drawing.chart.Ticks;
import simmerpoint.study.aim.AimMap;

/** One map of watts over two angles, with the line of the tolerance. */
final class AimMapPanel {
    private static final Color MISSING = new Color(0xB8B8B8);
    private static final int MARKS = 2;

    private final Graphics2D g;
    private final Brush brush;
    private final Rectangle box;
    private final AimField field;
    private final double top;

    AimMapPanel(Graphics2D g, Rectangle box, AimMap map, double top) {
        this.g = g;
        this.brush = new Brush(g);
        this.box = box;
        this.field = new AimField(map);
        this.top = top;
    }

    /** Colours, tolerance and axes. */
    void paint(String title, double toleranceWatts, String up, String right) {
        g.setColor(Brush.INK);
        brush.line(title, Brush.bold(20), 12, box.x, box.y - 40, box.width);
        brush.line("\u2191 " + up, Brush.font(17), 11, box.x, box.y - 12, box.width);
        brush.lineTo(right + " \u2192", Brush.font(17), 11, box.getMaxX(), box.getMaxY() + 52, box.width * 0.5);
        brush.line("degrees", Brush.font(17), 11, box.x, box.getMaxY() + 52, box.width * 0.4);
        colours();
        AffineTransform place = AffineTransform.getTranslateInstance(box.x, box.y);
        place.scale(box.width, box.height);
        Shape line = place.createTransformedShape(field.isoline(toleranceWatts));
        brush.outlined(line, null);
        brush.outlined(SpotMarks.cross(x(0), y(0)), null);
        axes();
    }

    private void colours() {
        BufferedImage image = new BufferedImage(box.width, box.height, BufferedImage.TYPE_INT_RGB);
        for (int j = 0; j < box.height; j++) {
            for (int i = 0; i < box.width; i++) {
                double up = angle(1 - (j + 0.5) / box.height);
                double watts = field.at(up, angle((i + 0.5) / box.width));
                image.setRGB(i, j, Double.isNaN(watts) ? MISSING.getRGB() : FluxColours.rgb(watts / top));
            }
        }
        g.drawImage(image, box.x, box.y, null);
        g.setColor(Brush.GREY);
        g.drawRect(box.x - 1, box.y - 1, box.width + 1, box.height + 1);
    }

    private double angle(double share) {
        return field.first() + share * (field.last() - field.first());
    }

    private double x(double radians) {
        return box.x + (radians - field.first()) / (field.last() - field.first()) * box.width;
    }

    private double y(double radians) {
        return box.getMaxY() - (radians - field.first()) / (field.last() - field.first()) * box.height;
    }

    private void axes() {
        g.setColor(Brush.INK);
        for (double mark : Ticks.upTo(Math.toDegrees(field.last()), MARKS)) {
            tick(mark);
            if (mark > 0) {
                tick(-mark);
            }
        }
    }

    private void tick(double mark) {
        double at = Math.toRadians(mark);
        g.draw(new Line2D.Double(x(at), box.getMaxY(), x(at), box.getMaxY() + 6));
        brush.centred(LinePlot.text(mark), Brush.font(17), x(at), box.getMaxY() + 25, 60);
        g.draw(new Line2D.Double(box.x - 6.0, y(at), box.x, y(at)));
        brush.lineTo(LinePlot.text(mark), Brush.font(17), 11, box.x - 10.0, y(at) + 6, 60);
    }

    /** A way over the map: dashed, with dots at some of its points (up, side; rad). */
    void way(List<double[]> points, List<double[]> dots, String words) {
        Path2D path = new Path2D.Double();
        path.moveTo(x(0), y(0));
        points.forEach(p -> path.lineTo(x(p[1]), y(p[0])));
        Shape clip = g.getClip();
        g.clip(box);
        brush.outlined(path, new float[] {7, 5});
        for (double[] dot : dots) {
            Ellipse2D spot = new Ellipse2D.Double(x(dot[1]) - 5, y(dot[0]) - 5, 10, 10);
            g.setColor(Color.WHITE);
            g.fill(spot);
            g.setColor(Color.BLACK);
            g.setStroke(new BasicStroke(1.5f));
            g.draw(spot);
            g.setStroke(new BasicStroke(1));
        }
        g.setClip(clip);
        brush.plate(words, Brush.font(16), box.x + 12.0, box.getMaxY() - 14);
    }
}
