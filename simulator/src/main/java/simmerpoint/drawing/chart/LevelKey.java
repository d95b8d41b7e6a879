package simmerpoint.drawing.chart;

import simmerpoint.answer.LevelWords;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.heat.HeatLevel;

/** The names of all heat levels with their colours, in one line. */
public final class LevelKey implements Drawing {
    private static final double LINE = 22;
    private static final double SWATCH = 10;
    private static final double GAP = 4;
    private static final double WIDE = 34;

    @Override
    public double height(double width, TextMetrics metrics) {
        return LINE;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double words = 0;
        for (HeatLevel level : HeatLevel.values()) {
            words += SWATCH + GAP + canvas.metrics().width(name(level));
        }
        double spare = (box.width() - words) / HeatLevel.values().length;
        double x = box.x() + GAP;
        double y = box.y() + LINE - 6;
        for (HeatLevel level : HeatLevel.values()) {
            Box swatch = new Box(x, y - SWATCH + 1, SWATCH, SWATCH);
            canvas.draw(Style.of(level), swatch);
            canvas.draw(Style.SWATCH, swatch);
            Text name = name(level).moved(x + SWATCH + GAP, y);
            canvas.write(name);
            x = name.x() + canvas.metrics().width(name) + Math.max(GAP, Math.min(WIDE, spare));
        }
    }

    private static Text name(HeatLevel level) {
        return Text.at(0, 0, LevelWords.of(level));
    }
}
