package simmerpoint.drawing.map;

import java.util.function.DoubleToIntFunction;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.FluxColours;
import simmerpoint.drawing.Raster;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.target.FluxMap;
import simmerpoint.trial.spot.SpotComparison;
import simmerpoint.trial.spot.SpotMap;
import simmerpoint.trial.spot.SpotProfile;
import simmerpoint.units.UnitSystem;

/** A photograph of the spot on a card, the traced light of the fitted dish, and their difference, side by side to one scale. */
public final class SpotMaps implements Drawing {
    private static final double GAP = 16;
    private static final double HEAD = 40;

    private final SpotComparison maps;
    private final UnitSystem units;
    private final String title;

    /**
     * Of one photograph.
     *
     * @param maps what is drawn
     * @param distance of the card from the middle of the dish, m
     */
    public SpotMaps(SpotComparison maps, double distance, UnitSystem units) {
        this.maps = maps;
        this.units = units;
        title = "Card " + new FigureFormat(units).length(distance, 3) + " from the middle of the dish";
    }

    private static double side(double width) {
        return Math.floor((width - 2 * GAP) / 3);
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return HEAD + side(width);
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        canvas.write(Text.at(box.x(), box.y() + 13, title).in(TextStyle.HEADING).within(box.width()));
        double most = Math.max(maps.measured().most(), maps.traced().most());
        DoubleToIntFunction flux = value -> FluxColours.argb(value / most);
        light(canvas, place(box, 0), maps.measured(), flux, "measured");
        light(canvas, place(box, 1), maps.traced(), flux, "fitted, traced");
        Box third = place(box, 2);
        head(canvas, third, "measured less fitted");
        double[] less = less();
        canvas.image(raster(less, maps.measured().columns(), v -> DifferenceColours.argb(v / (most / 2))), third);
        canvas.draw(Style.FRAME, third);
    }

    private double[] less() {
        double[] less = maps.measured().light().clone();
        for (int k = 0; k < less.length; k++) {
            less[k] -= maps.traced().light()[k];
        }
        return less;
    }

    private static Box place(Box box, int number) {
        double side = side(box.width());
        return new Box(box.x() + number * (side + GAP), box.y() + HEAD, side, side);
    }

    private static void head(Canvas canvas, Box box, String words) {
        canvas.write(Text.at(box.x(), box.y() - 6, words).within(box.width()));
    }

    /** With the circles that hold half and nine tenths of its light. */
    private void light(Canvas canvas, Box box, SpotMap map, DoubleToIntFunction colours, String words) {
        head(canvas, box, words);
        canvas.image(raster(map.light(), map.columns(), colours), box);
        MarkedMap marks = new MarkedMap(canvas, new MapFrame(empty(map), Facing.FIRST_RIGHT, box));
        SpotProfile profile = map.profile(Double.POSITIVE_INFINITY);
        canvas.clip(box, () -> {
            marks.circle(Style.OUTLINE_DASHED, profile.radius50());
            marks.circle(Style.OUTLINE_DOTTED, profile.radius90());
        });
        marks.scaleBar(units);
        canvas.draw(Style.FRAME, box);
    }

    /** A map of that size for marks to lie on. */
    private static FluxMap empty(SpotMap map) {
        double low = -map.columns() * map.cell() / 2;
        return new FluxMap(map.columns(), map.rows(), map.cell(), map.cell(), low, low, new double[0], new double[0]);
    }

    private static Raster raster(double[] values, int columns, DoubleToIntFunction colours) {
        int[] argb = new int[values.length];
        for (int k = 0; k < argb.length; k++) {
            argb[k] = colours.applyAsInt(values[k]);
        }
        return Raster.cells(columns, argb.length / columns, argb);
    }
}
