package simmerpoint.trial.fit;

import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.balance.PotModel;
import simmerpoint.heat.losses.Losses;
import simmerpoint.study.likely.LitPan;

/**
 * Heats a pan by the light of a log, by the classical method of Runge and Kutta in steps of at most {@value #STEP} s; equations as in {@code
 * heat.balance}. Losses come from a table by temperature, in full light and in none, and are straight in the light between; when the air
 * is warmer than its mean by some kelvin, so is the scale of the table.
 */
final class LogHeating {
    private static final double STEP = 60;
    private static final int NODES = 24;
    private static final double BELOW = 10;

    private final PotModel pot;
    private final AbsorbedLight absorbed;
    private final LogWeather weather;
    private final double low;
    private final double step;
    private final double[][] dark = new double[2][NODES + 1];
    private final double[][] lit = new double[2][NODES + 1];

    private LogHeating(LitPan pan, LogWeather weather) {
        pot = pan.kitchen().cooking().pot(pan.losses());
        absorbed = weather.sunless() ? AbsorbedLight.NOTHING : pan.absorbed();
        this.weather = weather;
        double start = pan.kitchen().contents().startCelsius();
        low = Math.max(-40, Math.min(start, pan.kitchen().around().airCelsius()) - BELOW);
        step = (pot.boilingCelsius() - low) / NODES;
        for (int k = 0; k <= NODES; k++) {
            double celsius = low + k * step;
            fill(dark, k, pot.losses().at(celsius, AbsorbedLight.NOTHING), celsius);
            fill(lit, k, pot.losses().at(celsius, absorbed), celsius);
        }
    }

    private static void fill(double[][] table, int k, Losses losses, double celsius) {
        table[0][k] = losses.total();
        table[1][k] = PotModel.steamRate(losses.steamWatts(), celsius);
    }

    /**
     * The water's temperature at given times, °C.
     *
     * @param pan in the mean light of the log
     * @param weather of the log
     * @param seconds rising, from 0 on
     */
    static double[] celsius(LitPan pan, LogWeather weather, double[] seconds) {
        return new LogHeating(pan, weather).run(pan.kitchen().contents().startCelsius(), seconds);
    }

    private double[] run(double start, double[] seconds) {
        double[] found = new double[seconds.length];
        double[] y = {start, pot.waterKilograms()};
        double now = 0;
        for (int k = 0; k < seconds.length; k++) {
            int steps = Math.max(1, (int) Math.ceil((seconds[k] - now) / STEP));
            double h = (seconds[k] - now) / steps;
            for (int s = 0; s < steps && h > 0; s++) {
                advance(now + s * h, h, y);
            }
            now = seconds[k];
            found[k] = y[0];
        }
        return found;
    }

    private void advance(double t, double h, double[] y) {
        double[] a = rate(t, y[0], y[1]);
        double[] b = rate(t + h / 2, y[0] + h / 2 * a[0], y[1] + h / 2 * a[1]);
        double[] c = rate(t + h / 2, y[0] + h / 2 * b[0], y[1] + h / 2 * b[1]);
        double[] d = rate(t + h, y[0] + h * c[0], y[1] + h * c[1]);
        y[0] = Math.min(pot.boilingCelsius(), y[0] + h / 6 * (a[0] + 2 * b[0] + 2 * c[0] + d[0]));
        y[1] = Math.max(pot.waterKilograms() / 20, y[1] + h / 6 * (a[1] + 2 * b[1] + 2 * c[1] + d[1]));
    }

    private double[] rate(double t, double celsius, double water) {
        double light = weather.lightShare(t);
        double place = Math.max(0, Math.min(NODES - 1e-9, (celsius - weather.warmerAir(t) - low) / step));
        int k = (int) place;
        double part = place - k;
        double losses = between(0, k, part, light);
        double steam = between(1, k, part, light);
        return new double[] {(light * absorbed.total() - losses) / pot.heatCapacity(water), -steam};
    }

    private double between(int figure, int k, double part, double light) {
        double without = dark[figure][k] + part * (dark[figure][k + 1] - dark[figure][k]);
        double with = lit[figure][k] + part * (lit[figure][k + 1] - lit[figure][k]);
        return without + light * (with - without);
    }
}
