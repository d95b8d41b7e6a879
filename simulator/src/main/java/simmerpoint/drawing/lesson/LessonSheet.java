package simmerpoint.drawing.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.heat.PhysicalConstants;
import simmerpoint.quantities.OneLine;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.Scenario;
import simmerpoint.units.UnitSystem;

/** One page for a class that tries its cookers: what to do, a blank log, and the sum that makes watts of it. */
public final class LessonSheet implements Drawing {
    private static final double SIZE = 12;
    private static final double LINE = 16.5;
    private static final double ROW = 26;
    private static final int ROWS = 17;
    private static final int STEP = 5;
    private static final double[] WIDTHS = {0.09, 0.13, 0.13, 0.15, 0.15, 0.35};

    private final Scenario scenario;
    private final CookingSetup kitchen;
    private final boolean fahrenheit;
    private final HeatWords words;

    /** For the pan and water of a scenario that has them. */
    public LessonSheet(Scenario scenario, UnitSystem units) {
        this.scenario = scenario;
        kitchen = scenario.cooking().orElseThrow();
        fahrenheit = units == UnitSystem.INCH;
        words = new HeatWords(units);
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return 923;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        canvas.write(Text.at(box.x(), box.y() + 22, "How many watts does our cooker deliver?")
                .in(TextStyle.HEADING)
                .size(22)
                .within(box.width()));
        canvas.write(Text.at(box.x(), box.y() + 42, OneLine.of(scenario.title()))
                .in(TextStyle.SOFT)
                .within(box.width()));
        blank(canvas, box.x(), box.y() + 70, box.width() * 0.45, "our cooker");
        blank(canvas, box.x() + box.width() * 0.5, box.y() + 70, box.width() * 0.22, "date");
        blank(canvas, box.x() + box.width() * 0.76, box.y() + 70, box.width() * 0.24, "start");
        double y = paragraphs(canvas, box, box.y() + 98, steps());
        y = table(canvas, new Box(box.x(), y + 6, box.width(), 0));
        y = paragraphs(canvas, box, y + 24, sums());
        working(canvas, box, y + 4);
        canvas.paragraph(Text.at(box.x(), box.bottom() - 18, foot())
                .in(TextStyle.SOFT)
                .size(11)
                .within(box.width()));
    }

    private static void blank(Canvas canvas, double x, double y, double width, String words) {
        canvas.write(Text.at(x, y, words).in(TextStyle.SOFT));
        double from = x + 8 + canvas.metrics().width(words, Text.SIZE, false);
        canvas.line(Style.TICK, from, y + 3, x + width, y + 3);
    }

    private static double paragraphs(Canvas canvas, Box box, double from, List<String> paragraphs) {
        double y = from;
        for (String words : paragraphs) {
            Text text = Text.at(box.x(), y, words).size(SIZE).within(box.width());
            canvas.paragraph(text);
            y += LINE * canvas.metrics().lines(text).size() + 3;
        }
        return y;
    }

    private List<String> steps() {
        String water = words.water(kitchen.contents().waterKilograms());
        String cool = fahrenheit ? "9\u00a0°F" : "5\u00a0°C";
        return List.of(
                "1. Focused sunlight blinds and burns. Never look into the mirror. Stand to the side, hands and faces out of the beam; an adult"
                        + " stands by. Cover the mirror before anybody touches the pan.",
                "2. Put " + water
                        + " into the pan, weighed or measured. Lid on, thermometer through the lid, its tip in the"
                        + " water and off the bottom.",
                "3. Aim the dish, start the clock, write the first line. Then a line every five minutes until the water is "
                        + cool + " below the boil. Aim again as often as usual.",
                "4. Air: in the shade, beside the cooker. Wind: in m/s, or 0 for smoke that rises straight, 1 for smoke that drifts,"
                        + " 2 for leaves that rustle. Sun: a meter that faces the sun, if there is one. Write down clouds, gusts, a lid"
                        + " that was lifted.");
    }

    private double table(Canvas canvas, Box box) {
        String unit = fahrenheit ? "°F" : "°C";
        String[] heads = {"min", "water " + unit, "air " + unit, "sun W/m²", "wind m/s", "notes"};
        double y = box.y();
        double bottom = y + (ROWS + 1) * ROW;
        double x = box.x();
        for (int c = 0; c < heads.length; c++) {
            canvas.write(Text.at(x + 5, y + 17, heads[c]).in(TextStyle.HEADING));
            canvas.line(Style.TICK, x, y, x, bottom);
            x += WIDTHS[c] * box.width();
        }
        canvas.line(Style.TICK, x, y, x, bottom);
        for (int r = 0; r <= ROWS + 1; r++) {
            canvas.line(Style.TICK, box.x(), y + r * ROW, x, y + r * ROW);
            if (r >= 1 && r <= ROWS) {
                canvas.write(Text.at(box.x() + 5, y + r * ROW + 18, Integer.toString((r - 1) * STEP)));
            }
        }
        return bottom;
    }

    private List<String> sums() {
        double perKelvin = kitchen.contents().waterKilograms() * PhysicalConstants.WATER_SPECIFIC_HEAT / 600;
        double each = fahrenheit ? perKelvin / 1.8 : perKelvin;
        List<String> sums = new ArrayList<>();
        sums.add("Watts into the water over ten minutes: how much warmer it got, times "
                + String.format(Locale.ROOT, "%.1f", each) + " (its kilograms times 4186 ÷ 600"
                + (fahrenheit ? " ÷ 1.8" : "")
                + "). With a meter, times 700 ÷ its mean reading. Which ten minutes bring most,"
                + " and why do the last ones bring less?");
        return sums;
    }

    private void working(Canvas canvas, Box box, double y) {
        String unit = fahrenheit ? "°F" : "°C";
        String[] rows = {"from 10 to 20 min", "from 20 to 30 min", "from 30 to 40 min"};
        for (int k = 0; k < rows.length; k++) {
            double at = y + 12 + k * ROW;
            canvas.write(Text.at(box.x(), at, rows[k]));
            blank(canvas, box.x() + 0.22 * box.width(), at, 0.26 * box.width(), "warmer by, " + unit);
            blank(canvas, box.x() + 0.51 * box.width(), at, 0.2 * box.width(), "watts");
            blank(canvas, box.x() + 0.74 * box.width(), at, 0.26 * box.width(), "at 700 W/m²");
        }
    }

    private String foot() {
        return "To type: first line time_min," + (fahrenheit ? "water_F,air_F" : "water_C,air_C")
                + ",irradiance_W_m2,wind_m_s,notes and below it a line for each of the table\u2019s. Put all logs into one"
                + " folder; the ranking: simmerpoint trial FILE FOLDER";
    }
}
