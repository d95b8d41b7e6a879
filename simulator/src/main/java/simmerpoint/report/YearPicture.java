package simmerpoint.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.day.YearAnswer;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.heat.HeatLevel;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;
import simmerpoint.study.day.YearResult;
import simmerpoint.units.UnitSystem;

/** A year as a picture: month by hour, each cell in the colour of its heat level with its watts printed in it. */
public final class YearPicture {
    /** Width of the picture, pixels. */
    public static final int WIDTH = 1400;

    private static final int HEIGHT = 1000;
    private static final int LEFT = 96;
    private static final int TOP = 210;
    private static final int ROW = 54;
    private static final int SUMS = 190;

    private final YearResult result;
    private final Graphics2D g;
    private final Brush brush;
    private final List<Integer> hours;
    private final double column;

    private YearPicture(YearResult result, Graphics2D g) {
        this.result = result;
        this.g = g;
        brush = new Brush(g);
        TreeSet<Integer> clock = new TreeSet<>();
        result.days().forEach(d -> d.hours().forEach(h -> clock.add(h.time().getHour())));
        hours = List.copyOf(clock);
        column = (WIDTH - LEFT - SUMS - 30) / (double) Math.max(1, hours.size());
    }

    /** The bytes of a PNG file for {@code result}, its words in the units of {@code system}. */
    public static byte[] bytes(YearResult result, UnitSystem system) {
        return Sheets.png(image(result, system));
    }

    /** The picture itself. */
    public static BufferedImage image(YearResult result, UnitSystem system) {
        return Sheets.image(WIDTH, HEIGHT, g -> new YearPicture(result, g).paint(system));
    }

    private void paint(UnitSystem system) {
        heading(system);
        for (int k = 0; k < hours.size(); k++) {
            String label = String.format(Locale.ROOT, "%02d:00", hours.get(k));
            brush.centred(label, Brush.font(17), LEFT + (k + 0.5) * column, TOP - 14, column - 4);
        }
        double sums = LEFT + hours.size() * column + 20;
        brush.line("hours a day", Brush.bold(16), 11, sums, TOP - 36, SUMS);
        brush.line("(clear month)", Brush.font(16), 11, sums, TOP - 14, SUMS);
        for (int m = 0; m < result.days().size(); m++) {
            month(m, sums);
        }
        legend();
    }

    private void heading(UnitSystem system) {
        g.setColor(Brush.INK);
        String title = OneLine.of(result.scenario().title());
        brush.line(
                (title.isEmpty() ? "The year " : title + ", ") + result.year(),
                Brush.bold(28),
                14,
                40,
                52,
                WIDTH - 80.0);
        Answer answer = YearAnswer.of(result, system);
        String first = ((Item.Sentence) answer.sections().get(0).items().get(0)).text();
        brush.paragraph(first, Brush.font(19), 40, 88, WIDTH - 80.0);
    }

    private void month(int m, double sums) {
        DayResult day = result.days().get(m);
        double y = TOP + m * ROW;
        g.setColor(Brush.INK);
        String name = day.plan().date().getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
        brush.lineTo(name, Brush.bold(19), 12, LEFT - 14, y + 34, 70);
        for (int k = 0; k < hours.size(); k++) {
            cell(YearAnswer.at(day, hours.get(k)), LEFT + k * column, y);
        }
        g.setColor(Brush.INK);
        String hoursADay = FigureFormat.fixed(day.cookingHours(), 1) + " h ("
                + FigureFormat.fixed(result.clearMonthHours(m), 0) + " h)";
        brush.line(hoursADay, Brush.font(18), 11, sums, y + 34, SUMS);
    }

    private void cell(Optional<DayHour> hour, double x, double y) {
        int left = (int) Math.round(x);
        int width = (int) Math.round(x + column) - left - 2;
        Optional<HourLight> light = hour.flatMap(DayHour::light);
        Color colour = light.map(l -> LevelColours.of(l.level().likely())).orElse(LevelColours.NONE);
        g.setColor(colour);
        g.fillRect(left, (int) y, width, ROW - 2);
        light.ifPresent(l -> {
            g.setColor(new Color(0xB8BCC4));
            g.drawRect(left, (int) y, width - 1, ROW - 3);
            g.setColor(LevelColours.textOn(l.level().likely()));
            String watts = FigureFormat.rounded(l.absorbed().value(), 2);
            brush.centred(watts, Brush.font(18), x + column / 2 - 1, y + 34, column - 6);
        });
    }

    private void legend() {
        double x = LEFT;
        double y = TOP + 12 * ROW + 44;
        for (HeatLevel level : HeatLevel.values()) {
            g.setColor(LevelColours.of(level));
            g.fillRect((int) x, (int) y - 20, 34, 26);
            g.setColor(Brush.GREY);
            g.drawRect((int) x, (int) y - 20, 34, 26);
            g.setColor(Brush.INK);
            brush.line(LevelWords.of(level), Brush.font(18), 12, x + 44, y, 160);
            x += 200;
        }
        g.setColor(Brush.GREY);
        brush.line(
                "Watts taken up by the pan on the 21st of the month under a clear sky, at full hours of the clock of "
                        + result.days().get(0).day().site().zone()
                        + "; hours in which it simmers or better.",
                Brush.font(16),
                11,
                LEFT,
                y + 44,
                WIDTH - LEFT - 40.0);
    }
}
