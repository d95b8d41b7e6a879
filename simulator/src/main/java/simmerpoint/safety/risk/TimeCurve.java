package simmerpoint.safety.risk;

import java.util.OptionalDouble;

/** Times against fluxes of a table, between its knots straight over logarithms of both; exact at the knots. Immutable. */
final class TimeCurve {
    private final double[] fluxes;
    private final double[] seconds;

    /** From the least flux to the greatest. */
    TimeCurve(double[] fluxes, double[] seconds) {
        this.fluxes = fluxes.clone();
        this.seconds = seconds.clone();
    }

    /** The time at a flux: empty below the table, the shortest of it above. */
    OptionalDouble seconds(double flux) {
        int last = fluxes.length - 1;
        if (!(flux >= fluxes[0])) {
            return OptionalDouble.empty();
        }
        if (flux >= fluxes[last]) {
            return OptionalDouble.of(seconds[last]);
        }
        int k = 0;
        while (flux >= fluxes[k + 1]) {
            k++;
        }
        double share = Math.log(flux / fluxes[k]) / Math.log(fluxes[k + 1] / fluxes[k]);
        return OptionalDouble.of(seconds[k] * Math.pow(seconds[k + 1] / seconds[k], share));
    }

    /** The shortest time of the table. */
    double shortest() {
        return seconds[seconds.length - 1];
    }
}
