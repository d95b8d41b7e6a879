package simmerpoint.heat.balance;

import java.util.OptionalDouble;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.losses.Losses;

/**
 * Time to warm up as the integral of heat capacity ÷ surplus over temperature, by Simpson's rule over temperatures that crowd at
 * the end, where the surplus is least. Thirteen looks at the losses instead of some hundred, good to half a per cent where the
 * surplus at the end is more than a tenth of that at the start; for the range over many pans.
 */
final class WarmingQuadrature {
    private static final int STEPS = 12;

    private WarmingQuadrature() {}

    /** Time from {@code fromCelsius} up to {@code toCelsius}, s; empty if it does not get there within a day. */
    static OptionalDouble seconds(PotModel pot, AbsorbedLight absorbed, double fromCelsius, double toCelsius) {
        double rise = toCelsius - fromCelsius;
        if (!(rise > 0)) {
            return OptionalDouble.of(0);
        }
        double water = pot.waterKilograms();
        double steamBefore = 0;
        double sum = 0;
        for (int k = 0; k <= STEPS; k++) {
            double left = 1 - (double) k / STEPS;
            double celsius = toCelsius - rise * left * left;
            Losses losses = pot.losses().at(celsius, absorbed);
            double surplus = absorbed.total() - losses.total();
            if (!(surplus > 0)) {
                return OptionalDouble.empty();
            }
            double now = pot.heatCapacity(water) / surplus * 2 * rise * left;
            double steam = PotModel.steamRate(losses.steamWatts(), celsius) * now;
            sum += now * (k == 0 || k == STEPS ? 1 : k % 2 == 1 ? 4 : 2);
            water -= k == 0 ? 0 : 0.5 * (steamBefore + steam) / STEPS;
            steamBefore = steam;
        }
        double seconds = sum / (3 * STEPS);
        return seconds <= WarmingTime.LONGEST_SECONDS && water > HeatingIntegrator.DRY_SHARE * pot.waterKilograms()
                ? OptionalDouble.of(seconds)
                : OptionalDouble.empty();
    }
}
