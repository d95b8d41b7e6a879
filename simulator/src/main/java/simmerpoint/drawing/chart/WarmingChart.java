package simmerpoint.drawing.chart;

import java.util.List;
import java.util.function.ToDoubleFunction;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.drawing.Style;
import simmerpoint.study.trace.WarmingResult;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.units.UnitSystem;

/** Temperature of the water over the minutes: likely, and for the quick and the slow ones of such pans. */
public final class WarmingChart {
    private static final double MINUTE = 60;
    private static final double HEADROOM = 1.1;
    private static final double HEIGHT = 260;

    private final WarmingResult result;
    private final UnitSystem units;

    private WarmingChart(WarmingResult result, UnitSystem units) {
        this.result = result;
        this.units = units;
    }

    /** The chart of one pan. */
    public static LineChart of(WarmingResult result, UnitSystem units) {
        return new WarmingChart(result, units).chart();
    }

    private LineChart chart() {
        double last = result.points().get(result.points().size() - 1).seconds() / MINUTE;
        String unit = units == UnitSystem.INCH ? "\u00b0F" : "\u00b0C";
        double boils = shown(result.boilingCelsius());
        return new LineChart("The water: " + unit, "minutes", 0, last, boils * HEADROOM)
                .tall(HEIGHT)
                .curve(Style.CURVE_1, points(LikelyRange::high), "one such pan in ten is quicker")
                .curve(Style.WATTS_CURVE, points(LikelyRange::likely), "likely")
                .curve(Style.CURVE_3, points(LikelyRange::low), "one in ten is slower")
                .level(boils, "boils at " + new HeatWords(units).temperature(result.boilingCelsius()));
    }

    private List<double[]> points(ToDoubleFunction<LikelyRange> end) {
        return result.points().stream()
                .map(p -> new double[] {p.seconds() / MINUTE, shown(end.applyAsDouble(p.water()))})
                .toList();
    }

    private double shown(double celsius) {
        return units == UnitSystem.INCH ? celsius * 9 / 5 + 32 : celsius;
    }
}
