package simmerpoint.heat.balance;

import java.util.OptionalDouble;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.losses.Losses;

/**
 * Time to warm up as the integral of heat capacity ÷ surplus over temperature, by Simpson's rule over temperatures that crowd at
 * the end, where the surplus is least. Thirteen looks at the losses instead of some hundred, good to 3 in 10,000 where there is 15 % more light than
 * boiling takes; for the range over many pans.
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
            double perHeat = 2 * rise * left / surplus;
            double steamRate = PotModel.steamRate(losses.steamWatts(), celsius);
            double steam = steamRate * pot.heatCapacity(water) * perHeat;
            water -= k == 0 ? 0 : 0.5 * (steamBefore + steam) / STEPS;
            double now = pot.heatCapacity(water) * perHeat;
            sum += now * (k == 0 || k == STEPS ? 1 : k % 2 == 1 ? 4 : 2);
            steamBefore = steamRate * now;
        }
        double seconds = sum / (3 * STEPS);
        return seconds <= WarmingTime.LONGEST_SECONDS && water > HeatingIntegrator.DRY_SHARE * pot.waterKilograms()
                ? OptionalDouble.of(seconds)
                : OptionalDouble.empty();
    }
}
