package simmerpoint.drawing.chart;

import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import simmerpoint.answer.day.YearAnswer;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.heat.HeatLevel;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.YearResult;

/** A year: month by hour, each cell in the colour of its heat level with its watts in it; hours of cooking at the right. */
public final class YearChart implements Drawing {
    private static final double HEAD = 36;
    private static final double ROW = 38;
    private static final double LEFT = 46;
    private static final double SUMS = 122;
    private static final double BETWEEN = 1.5;
    private static final double LETTERS = 13;

    private final YearResult result;
    private final List<Integer> hours;

    /** Of a result. */
    public YearChart(YearResult result) {
        this.result = result;
        TreeSet<Integer> clock = new TreeSet<>();
        result.days().forEach(d -> d.hours().forEach(h -> clock.add(h.time().getHour())));
        hours = List.copyOf(clock);
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return HEAD + result.days().size() * ROW;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double top = box.y() + HEAD;
        double column = (box.width() - LEFT - SUMS) / Math.max(1, hours.size());
        for (int k = 0; k < hours.size(); k++) {
            String label = String.format(Locale.ROOT, "%02d:00", hours.get(k));
            double x = box.x() + LEFT + (k + 0.5) * column;
            canvas.write(Text.at(x, top - 9, label).middle().within(column - 3));
        }
        double sums = box.right() - SUMS + 12;
        canvas.write(Text.at(sums, top - 24, "hours a day")
                .in(simmerpoint.drawing.TextStyle.HEADING)
                .within(SUMS - 12));
        canvas.write(Text.at(sums, top - 9, "(clear month)").within(SUMS - 12));
        for (int m = 0; m < result.days().size(); m++) {
            Box row = new Box(box.x() + LEFT, top + m * ROW, column, ROW);
            month(canvas, result.days().get(m), row);
            String words =
                    FigureFormat.fixed(result.days().get(m).cookingHours().likely(), 1) + " h ("
                            + FigureFormat.fixed(result.clearMonthHours(m), 0) + " h)";
            canvas.write(Text.at(sums, row.middleY() + 5, words).size(LETTERS).within(SUMS - 12));
        }
    }

    /** A row of cells, of which {@code cell} is the first. */
    private void month(Canvas canvas, DayResult day, Box cell) {
        String name = day.plan().date().getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
        canvas.write(Text.at(cell.x() - 10, cell.middleY() + 5, name)
                .in(simmerpoint.drawing.TextStyle.HEADING)
                .size(LETTERS)
                .end());
        for (int k = 0; k < hours.size(); k++) {
            Optional<DayHour> hour = YearAnswer.at(day, hours.get(k));
            double x = cell.x() + k * cell.width();
            Box place = new Box(x, cell.y(), cell.width() - BETWEEN, cell.height() - BETWEEN);
            hour.flatMap(DayHour::light).ifPresent(light -> {
                HeatLevel level = light.level().likely();
                canvas.draw(Style.of(level), place);
                canvas.draw(Style.SWATCH, place);
                canvas.write(Text.at(
                                place.middleX(),
                                place.middleY() + 5,
                                FigureFormat.rounded(Math.rint(light.power().likely()) + 0.0, 2))
                        .in(simmerpoint.drawing.TextStyle.on(level))
                        .size(LETTERS)
                        .middle()
                        .within(place.width() - 4));
            });
        }
    }
}
