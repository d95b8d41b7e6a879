package simmerpoint.drawing.chart;

import java.util.List;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Style;
import simmerpoint.heat.HeatLevel;

/**
 * One low band of heat levels with their names, which all ribbons share.
 *
 * @param side room left and right of it, units
 * @param top room above it
 * @param height of the band
 */
record LevelBand(double side, double top, double height) {
    /** Height of a line of names with its distance from the band's edge. */
    private static final double LINE = 22;

    /**
     * One level.
     *
     * @param level what happens there
     * @param from where it begins, units
     * @param to where it ends
     */
    record Stretch(HeatLevel level, double from, double to) {}

    /** Where it lies in a box. */
    Box in(Box box) {
        return new Box(box.x() + side, box.y() + top, Math.max(1, box.width() - 2 * side), height);
    }

    /** Draws levels; names keep clear of {@code mark}. */
    void draw(Canvas canvas, Box band, Box mark, List<Stretch> stretches) {
        Box line = new Box(band.x(), band.y() + (height - LINE) / 2, band.width(), band.height());
        BandNames names = new BandNames(canvas, line, mark);
        for (Stretch stretch : stretches) {
            double wide = Math.max(0, stretch.to() - stretch.from());
            canvas.draw(Style.of(stretch.level()), new Box(stretch.from(), band.y(), wide, band.height()));
            names.writeLow(stretch.level(), stretch.from(), stretch.to());
        }
    }
}
