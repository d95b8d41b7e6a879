package simmerpoint.heat.plate;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/**
 * Heat that leaves a surface by its temperature, W/m²: straight lines through given points, which makes value and slope quick
 * to read, and the last line beyond each end.
 */
public final class FluxCurve {
    private static final double COLDEST_CELSIUS = -60;
    private static final double HOTTEST_CELSIUS = 1500;
    private static final double AIR_STEP = 5;

    private final double[] celsius;
    private final double[] flux;

    private FluxCurve(double[] celsius, double[] flux) {
        this.celsius = celsius;
        this.flux = flux;
    }

    /** Through points of {@code flux} (W/m² by °C) every {@code step} K. */
    public static FluxCurve of(double fromCelsius, double toCelsius, double step, DoubleUnaryOperator flux) {
        int points = 1 + (int) Math.ceil((toCelsius - fromCelsius) / step);
        double[] at = new double[points];
        Arrays.setAll(at, k -> fromCelsius + k * step);
        return new FluxCurve(at, DoubleStream.of(at).map(flux).toArray());
    }

    /** What a face gives off to the air, between any winter and glowing metal. */
    static FluxCurve ofAir(DoubleUnaryOperator flux) {
        return of(COLDEST_CELSIUS, HOTTEST_CELSIUS, AIR_STEP, flux);
    }

    /** A constant coefficient, W/(m² K), to something of that temperature. */
    public static FluxCurve linear(double coefficient, double towardsCelsius) {
        return of(towardsCelsius, towardsCelsius + 1, 1, t -> coefficient * (t - towardsCelsius));
    }

    /** No heat at all. */
    public static FluxCurve none() {
        return linear(0, 0);
    }

    /** Both together. */
    public FluxCurve plus(FluxCurve other) {
        double[] at = DoubleStream.concat(DoubleStream.of(celsius), DoubleStream.of(other.celsius))
                .sorted()
                .distinct()
                .toArray();
        return new FluxCurve(
                at, DoubleStream.of(at).map(t -> at(t) + other.at(t)).toArray());
    }

    /** The same seen from behind a layer of that thermal resistance, m² K/W. */
    public FluxCurve behind(double resistance) {
        double[] shifted = new double[celsius.length];
        Arrays.setAll(shifted, k -> celsius[k] + resistance * flux[k]);
        return new FluxCurve(shifted, flux);
    }

    /** W/m² at a temperature. */
    public double at(double t) {
        int k = segment(t);
        return flux[k] + slope(k) * (t - celsius[k]);
    }

    /** W/(m² K) at a temperature. */
    public double slopeAt(double t) {
        return slope(segment(t));
    }

    private double slope(int k) {
        return (flux[k + 1] - flux[k]) / (celsius[k + 1] - celsius[k]);
    }

    private int segment(double t) {
        int found = Arrays.binarySearch(celsius, t);
        int after = found >= 0 ? found : -found - 2;
        return Math.max(0, Math.min(celsius.length - 2, after));
    }
}
