package simmerpoint.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.design.DesignAnswer;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.chart.Ticks;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.design.DesignChoice;
import simmerpoint.study.design.DesignResult;
import simmerpoint.study.design.DishCandidate;
import simmerpoint.units.UnitSystem;

/** The trade between panels and diameter as a picture: one stair for each amount of watts. */
public final class DesignPicture {
    private static final int WIDTH = 1300;
    private static final int HEIGHT = 900;
    private static final double LEFT = 110;
    private static final double RIGHT = 1250;
    private static final double TOP = 190;
    private static final double BOTTOM = 760;
    /** Labels keep this far apart, pixels. */
    private static final double LABEL_WIDTH = 190;

    private static final double LABEL_HEIGHT = 26;

    private static final double INCHES_PER_CENTIMETRE = 1 / 2.54;
    /** Dark to light, each a step of lightness apart, and each with its own dashes: read without colour. */
    private static final Color[] COLOURS = {new Color(0x6E9ECF), new Color(0x1B4F8A), new Color(0xC25B12)};

    private static final float[][] DASHES = {{3, 5}, null, {12, 6}};

    private final DesignResult result;
    private final UnitSystem system;
    private final Graphics2D g;
    private final Brush brush;
    private final double mostPanels;
    private double labelX = -1000;
    private double labelY = -1000;
    private final double least;
    private final double most;

    private DesignPicture(DesignResult result, UnitSystem system, Graphics2D g) {
        this.result = result;
        this.system = system;
        this.g = g;
        brush = new Brush(g);
        List<DishCandidate> all = Stream.concat(
                        result.front().stream().map(DesignChoice::candidate),
                        result.fronts().stream().flatMap(f -> f.candidates().stream()))
                .toList();
        mostPanels =
                1.08 * all.stream().mapToInt(s -> s.layout().panels()).max().orElse(10);
        double low =
                all.stream().mapToInt(DishCandidate::diameterCentimetres).min().orElse(50);
        double high =
                all.stream().mapToInt(DishCandidate::diameterCentimetres).max().orElse(100);
        double room = Math.max(5, 0.12 * (high - low));
        least = Math.max(0, low - room);
        most = high + room;
    }

    /** The bytes of a PNG file for {@code result}, lengths in the units of {@code system}. */
    public static byte[] bytes(DesignResult result, UnitSystem system) {
        return Sheets.png(image(result, system));
    }

    /** The picture itself. */
    public static BufferedImage image(DesignResult result, UnitSystem system) {
        return Sheets.image(WIDTH, HEIGHT, g -> new DesignPicture(result, system, g).paint());
    }

    private double x(double panels) {
        return LEFT + (RIGHT - LEFT) * panels / mostPanels;
    }

    private double y(double centimetres) {
        return BOTTOM - (BOTTOM - TOP) * (centimetres - least) / (most - least);
    }

    private double shown(double centimetres) {
        return system == UnitSystem.METRIC ? centimetres : centimetres * INCHES_PER_CENTIMETRE;
    }

    private void paint() {
        heading();
        axes();
        for (int k = 0; k < result.fronts().size(); k++) {
            stair(k, result.fronts().get(k));
        }
        result.front().forEach(this::mark);
        legend();
    }

    private void heading() {
        g.setColor(Brush.INK);
        String title = OneLine.of(result.scenario().title());
        brush.line(title.isEmpty() ? "Dishes that do it" : title, Brush.bold(28), 14, 40, 52, WIDTH - 80.0);
        Answer answer = DesignAnswer.of(result, system);
        String first = ((Item.Sentence) answer.sections().get(0).items().get(0)).text();
        brush.paragraph(first, Brush.font(19), 40, 88, WIDTH - 80.0);
    }

    private void axes() {
        for (double panels : Ticks.upTo(mostPanels, 10)) {
            g.setColor(new Color(0xE4E6EA));
            g.draw(new Line2D.Double(x(panels), TOP, x(panels), BOTTOM));
            g.setColor(Brush.INK);
            brush.centred(FigureFormat.fixed(panels, 0), Brush.font(17), x(panels), BOTTOM + 26, 70);
        }
        double step = Ticks.below((shown(most) - shown(least)) / 6);
        for (double at = Math.ceil(shown(least) / step) * step; at <= shown(most); at += step) {
            double centimetres = system == UnitSystem.METRIC ? at : at / INCHES_PER_CENTIMETRE;
            g.setColor(new Color(0xE4E6EA));
            g.draw(new Line2D.Double(LEFT, y(centimetres), RIGHT, y(centimetres)));
            g.setColor(Brush.INK);
            brush.lineTo(
                    FigureFormat.fixed(at, step < 1 ? 1 : 0), Brush.font(17), 11, LEFT - 12, y(centimetres) + 6, 80);
        }
        g.setColor(Brush.INK);
        g.draw(new Rectangle2D.Double(LEFT, TOP, RIGHT - LEFT, BOTTOM - TOP));
        brush.centred("panels to cut", Brush.bold(18), (LEFT + RIGHT) / 2, BOTTOM + 56, 400);
        String unit = system == UnitSystem.METRIC ? "cm" : "in";
        brush.line("diameter, " + unit, Brush.bold(18), 11, 40, TOP - 16, 300);
    }

    private void stair(int k, DesignResult.Front front) {
        if (front.candidates().isEmpty()) {
            return;
        }
        Path2D path = new Path2D.Double();
        double at = y(front.candidates().get(0).diameterCentimetres());
        path.moveTo(x(front.candidates().get(0).layout().panels()), TOP);
        for (DishCandidate candidate : front.candidates()) {
            path.lineTo(x(candidate.layout().panels()), at);
            at = y(candidate.diameterCentimetres());
            path.lineTo(x(candidate.layout().panels()), at);
        }
        path.lineTo(RIGHT, at);
        g.setColor(COLOURS[k]);
        g.setStroke(new BasicStroke(2.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, DASHES[k], 0));
        g.draw(path);
        g.setStroke(new BasicStroke(1));
    }

    private void mark(DesignChoice choice) {
        double x = x(choice.candidate().layout().panels());
        double y = y(choice.candidate().diameterCentimetres());
        if (Math.abs(x - labelX) > LABEL_WIDTH || Math.abs(y - labelY) > LABEL_HEIGHT) {
            label(choice, x, y);
        }
        g.setColor(COLOURS[1]);
        g.fill(new Ellipse2D.Double(x - 7, y - 7, 14, 14));
    }

    private void label(DesignChoice choice, double x, double y) {
        labelX = x;
        labelY = y;
        String cut = DesignAnswer.cut(choice.candidate().layout());
        String aim = choice.tolerance()
                .drift()
                .map(e -> ", aim \u00b1" + FigureFormat.rounded(Math.toDegrees(e.value()), 2) + "\u00b0")
                .orElse("");
        String text = cut + aim;
        double width = g.getFontMetrics(Brush.font(16)).stringWidth(text);
        double left = Math.min(x + 10, RIGHT - width - 6);
        g.setColor(new Color(255, 255, 255, 200));
        g.fill(new Rectangle2D.Double(left - 3, y - 26, width + 6, 20));
        g.setColor(Brush.INK);
        brush.line(text, Brush.font(16), 11, left, y - 10, width + 1);
    }

    private void legend() {
        double x = LEFT;
        for (int k = 0; k < result.fronts().size(); k++) {
            g.setColor(COLOURS[k]);
            g.setStroke(new BasicStroke(2.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, DASHES[k], 0));
            g.draw(new Line2D.Double(x, BOTTOM + 90, x + 50, BOTTOM + 90));
            g.setStroke(new BasicStroke(1));
            g.setColor(Brush.INK);
            DesignResult.Front front = result.fronts().get(k);
            String words = FigureFormat.rounded(front.watts(), 3) + " W"
                    + (front.candidates().isEmpty() ? " (none within the limits)" : "");
            brush.line(words, Brush.font(17), 11, x + 60, BOTTOM + 96, 300);
            x += 380;
        }
        g.setColor(Brush.GREY);
        brush.line(
                "Each stair: the smallest dish for its number of panels, with the focal length that suits it best. Dots:"
                        + " traced anew; aim \u00b1: drift that costs a tenth of the watts.",
                Brush.font(16),
                11,
                LEFT,
                BOTTOM + 126,
                RIGHT - LEFT);
    }
}
