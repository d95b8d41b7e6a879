package simmerpoint.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.day.DayAnswer;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.heat.HeatLevel;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;
import simmerpoint.units.UnitSystem;

/** A day as a picture: the sun's elevation, the beam, and the watts taken up before bands of the heat levels. */
public final class DayPicture {
    /** Width of the picture, pixels. */
    public static final int WIDTH = 1400;

    private static final int HEIGHT = 1190;
    private static final int LEFT = 110;
    private static final int PLOT = 1110;
    private static final double HEADROOM = 1.12;
    private static final Color RANGE = new Color(60, 90, 140, 70);
    private static final Color RANGE_ON_BANDS = new Color(255, 255, 255, 150);

    private final DayResult result;
    private final Graphics2D g;
    private final Brush brush;
    private final List<DayHour> lit;

    private DayPicture(DayResult result, Graphics2D g) {
        this.result = result;
        this.g = g;
        brush = new Brush(g);
        lit = result.curve().stream().filter(h -> h.light().isPresent()).toList();
    }

    /** The bytes of a PNG file for {@code result}, its words in the units of {@code system}. */
    public static byte[] bytes(DayResult result, UnitSystem system) {
        return Sheets.png(image(result, system));
    }

    /** The picture itself. */
    public static BufferedImage image(DayResult result, UnitSystem system) {
        return Sheets.image(WIDTH, HEIGHT, g -> new DayPicture(result, g).paint(system));
    }

    private void paint(UnitSystem system) {
        heading(system);
        if (result.curve().isEmpty()) {
            return;
        }
        List<DayHour> all = result.curve();
        HourAxis axis =
                HourAxis.around(all.get(0).time(), all.get(all.size() - 1).time());
        elevation(axis);
        beam(axis);
        watts(axis);
        g.setColor(Brush.GREY);
        brush.line(
                "Clock of " + result.day().site().zone()
                        + ". Clear sky; dots: traced hours; pale bands about the curves: how far models of a clear sky differ.",
                Brush.font(16),
                11,
                LEFT,
                HEIGHT - 34,
                WIDTH - LEFT - 40);
    }

    private void heading(UnitSystem system) {
        g.setColor(Brush.INK);
        String title = OneLine.of(result.scenario().title());
        String date = TimeWords.date(result.plan().date());
        brush.line(title.isEmpty() ? "The day, " + date : title + ", " + date, Brush.bold(28), 14, 40, 52, WIDTH - 80);
        brush.paragraph(first(DayAnswer.of(result, system)), Brush.font(19), 40, 88, WIDTH - 80.0);
    }

    private static String first(Answer answer) {
        return ((Item.Sentence) answer.sections().get(0).items().get(0)).text();
    }

    private void elevation(HourAxis axis) {
        TimePlot plot = new TimePlot(g, new Rectangle(LEFT, 200, PLOT, 170), axis, 90);
        plot.frame(false);
        plot.title("Sun above the horizon, degrees");
        plot.curve(result.curve(), h -> Math.toDegrees(h.elevationRadians()), result.hours());
    }

    /** The strongest beam by any model of a clear sky, W/m². */
    static double mostBeam(DayResult result) {
        return result.curve().stream()
                .mapToDouble(h -> h.beam().highWattsPerSquareMetre())
                .max()
                .orElse(0);
    }

    /** The most that the pan takes up by any model of a clear sky, W. */
    static double mostWatts(DayResult result) {
        return result.curve().stream()
                .flatMap(h -> h.light().stream())
                .mapToDouble(HourLight::highWatts)
                .max()
                .orElse(0);
    }

    private void beam(HourAxis axis) {
        double top = mostBeam(result);
        TimePlot plot = new TimePlot(g, new Rectangle(LEFT, 430, PLOT, 170), axis, Math.max(1, top * HEADROOM));
        plot.frame(false);
        plot.title("Beam, W/m²");
        plot.band(
                result.curve(),
                h -> h.beam().lowWattsPerSquareMetre(),
                h -> h.beam().highWattsPerSquareMetre(),
                RANGE);
        plot.curve(result.curve(), h -> h.beam().likelyWattsPerSquareMetre(), result.hours());
    }

    private void watts(HourAxis axis) {
        double top = mostWatts(result);
        Rectangle box = new Rectangle(LEFT, 660, PLOT, 430);
        TimePlot plot = new TimePlot(g, box, axis, Math.max(1, top * HEADROOM));
        bands(plot);
        plot.frame(true);
        plot.title("Taken up by the pan, W, and the heat level that makes");
        for (List<DayHour> run : runs(result)) {
            plot.band(run, h -> light(h).lowWatts(), h -> light(h).highWatts(), RANGE_ON_BANDS);
            plot.curve(
                    run,
                    h -> light(h).absorbed().value(),
                    result.hours().stream().filter(run::contains).toList());
        }
        names(plot, box);
    }

    /** Stretches of the day without a gap in the light. */
    static List<List<DayHour>> runs(DayResult result) {
        List<List<DayHour>> runs = new ArrayList<>();
        List<DayHour> run = new ArrayList<>();
        for (DayHour hour : result.curve()) {
            if (hour.light().isPresent()) {
                run.add(hour);
            } else if (!run.isEmpty()) {
                runs.add(run);
                run = new ArrayList<>();
            }
        }
        if (!run.isEmpty()) {
            runs.add(run);
        }
        return runs;
    }

    private static HourLight light(DayHour hour) {
        return hour.light().orElseThrow();
    }

    private void bands(TimePlot plot) {
        for (List<DayHour> run : runs(result)) {
            for (HeatLevel level : HeatLevel.values()) {
                plot.band(run, h -> begins(h, level), h -> ends(h, level), LevelColours.of(level));
            }
        }
    }

    /** Watts at which a level begins at an hour with light. */
    static double begins(DayHour hour, HeatLevel level) {
        return light(hour).begins().get(level);
    }

    /** Watts at which it ends. */
    static double ends(DayHour hour, HeatLevel level) {
        return switch (level) {
            case TOO_COOL -> begins(hour, HeatLevel.KEEP_WARM);
            case KEEP_WARM -> begins(hour, HeatLevel.SIMMER);
            case SIMMER -> begins(hour, HeatLevel.BOIL);
            case BOIL -> begins(hour, HeatLevel.FAST_BOIL);
            case FAST_BOIL -> Double.POSITIVE_INFINITY;
        };
    }

    /** The names of the levels beside their bands, where they lie in the middle of the day. */
    private void names(TimePlot plot, Rectangle box) {
        if (lit.isEmpty()) {
            return;
        }
        DayHour at = lit.get(lit.size() / 2);
        double above = box.y + box.height + 30.0;
        for (HeatLevel level : HeatLevel.values()) {
            double low = plot.y(begins(at, level));
            double high = plot.y(ends(at, level));
            if (low - high < 3) {
                continue;
            }
            double y = Math.min(above - 26, (low + high) / 2 + 6);
            int x = box.x + box.width + 14;
            g.setColor(LevelColours.of(level));
            g.fillRect(x, (int) y - 15, 20, 18);
            g.setColor(Brush.GREY);
            g.drawRect(x, (int) y - 15, 20, 18);
            g.setColor(Brush.INK);
            brush.line(LevelWords.of(level), Brush.font(17), 11, x + 28.0, y, WIDTH - x - 32.0);
            above = y;
        }
    }
}
