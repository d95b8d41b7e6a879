package simmerpoint.drawing.chart;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.heat.HeatLevel;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;

/**
 * A day as one ribbon of heat levels over the local clock, and the hour that the scenario stands at.
 *
 * @param result a day whose curve is not empty
 * @param now the scenario's own hour
 * @param shown how strongly it is drawn, 0 to 1
 */
public record DayRibbon(DayResult result, Optional<ZonedDateTime> now, double shown) implements Drawing {
    /** Its usual height, units. */
    public static final double HEIGHT = 62;

    private static final LevelBand BAND = new LevelBand(20, 12, 28);
    private static final double LABEL = 40;

    @Override
    public double height(double width, TextMetrics metrics) {
        return HEIGHT;
    }

    private HourAxis axis() {
        List<DayHour> all = result.curve();
        return HourAxis.around(all.get(0).time(), all.get(all.size() - 1).time());
    }

    /** The time at a place of a drawing in that box, between the ends. */
    public ZonedDateTime time(Box box, double x) {
        Box band = BAND.in(box);
        double share = Math.max(0, Math.min(1, (x - band.x()) / band.width()));
        ZonedDateTime first = axis().hours().get(0);
        ZonedDateTime last = axis().hours().get(axis().hours().size() - 1);
        return first.plusSeconds(
                Math.round(share * Duration.between(first, last).toSeconds()));
    }

    private double x(Box band, ZonedDateTime time) {
        return band.x() + Math.max(0, Math.min(1, axis().share(time))) * band.width();
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        Box band = BAND.in(box);
        canvas.draw(Style.CHART_GROUND, band);
        canvas.fade(shown, () -> levels(canvas, band));
        canvas.draw(Style.FRAME, band);
        hours(canvas, band);
        now.ifPresent(time -> {
            double x = x(band, time);
            canvas.line(Style.PRESENT_HELD, x, band.y() - 4, x, band.bottom() + 2);
            canvas.draw(Style.HANDLE, new Circle(x, band.y() - 3, 7));
        });
    }

    private void levels(Canvas canvas, Box band) {
        Box mark = now.map(time -> new Box(x(band, time) - 9, band.y(), 18, band.height()))
                .orElse(new Box(band.x() - 99, 0, 1, 1));
        BAND.draw(canvas, band, mark, stretches(band));
    }

    private List<LevelBand.Stretch> stretches(Box band) {
        List<LevelBand.Stretch> stretches = new ArrayList<>();
        List<DayHour> curve = result.curve();
        int k = 0;
        while (k < curve.size()) {
            int end = k;
            while (end + 1 < curve.size() && level(curve.get(end + 1)).equals(level(curve.get(k)))) {
                end++;
            }
            double from = k == 0 ? x(band, curve.get(0).time()) : middle(band, curve.get(k - 1), curve.get(k));
            double to = end == curve.size() - 1
                    ? x(band, curve.get(end).time())
                    : middle(band, curve.get(end), curve.get(end + 1));
            level(curve.get(k)).ifPresent(level -> stretches.add(new LevelBand.Stretch(level, from, to)));
            k = end + 1;
        }
        return stretches;
    }

    private double middle(Box band, DayHour one, DayHour other) {
        return (x(band, one.time()) + x(band, other.time())) / 2;
    }

    private static Optional<HeatLevel> level(DayHour hour) {
        return hour.light().map(HourLight::level).map(range -> range.likely());
    }

    private void hours(Canvas canvas, Box band) {
        HourAxis axis = axis();
        int step = axis.step(band.width(), LABEL);
        for (int k = 0; k < axis.hours().size(); k++) {
            double x = x(band, axis.hours().get(k));
            boolean named = k % step == 0;
            canvas.line(Style.TICK, x, band.bottom(), x, band.bottom() + (named ? 4 : 2));
            if (named) {
                canvas.write(Text.at(x, band.bottom() + 16, axis.label(k))
                        .in(TextStyle.SOFT)
                        .middle());
            }
        }
    }
}
