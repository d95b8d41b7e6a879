package simmerpoint.trial.power;

import java.util.List;
import java.util.Optional;
import simmerpoint.heat.balance.ParaboloidProtocol;
import simmerpoint.trial.log.Reading;
import simmerpoint.trial.log.Series;
import simmerpoint.trial.log.TrialLog;
import simmerpoint.uncertainty.StraightLine;

/**
 * What a pan loses, from a log of cooling without sun: heat capacity times the slope of ln(water − air), see {@link ParaboloidProtocol}.
 *
 * @param wattsPerKelvin loss of the whole pan
 * @param errorWattsPerKelvin its standard error
 * @param reach standard errors of a 95 % interval to each side
 * @param timeConstantSeconds of the pan with its water
 */
public record CoolingTest(double wattsPerKelvin, double errorWattsPerKelvin, double reach, double timeConstantSeconds) {
    private static final double LEAST_ABOVE_AIR = 5;
    private static final int LEAST = 3;

    /** Of the first cooling log that is good for it. */
    static Optional<CoolingTest> of(List<TrialLog> cooling, HeatedPan pan) {
        return cooling.stream()
                .map(log -> of(log, pan))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<CoolingTest> of(TrialLog log, HeatedPan pan) {
        Series air = log.series(Reading::airCelsius).or(Series.constant(pan.airCelsius()));
        List<ParaboloidProtocol.Reading> curve = log.water().stream()
                .filter(r -> r.waterCelsius() - air.at(r.seconds()) >= LEAST_ABOVE_AIR)
                .map(r -> new ParaboloidProtocol.Reading(r.seconds(), r.waterCelsius() - air.at(r.seconds())))
                .toList();
        if (curve.size() < LEAST
                || curve.get(curve.size() - 1).kelvinAboveAir() >= curve.get(0).kelvinAboveAir()) {
            return Optional.empty();
        }
        StraightLine line = ParaboloidProtocol.coolingLine(curve);
        return Optional.of(new CoolingTest(
                -line.slope() * pan.heatCapacity(),
                line.slopeError() * pan.heatCapacity(),
                line.reach(PowerTest.CONFIDENCE),
                -1 / line.slope()));
    }

    /** Least of the 95 % interval, W/K. */
    public double low() {
        return wattsPerKelvin - reach * errorWattsPerKelvin;
    }

    /** Most of it, W/K. */
    public double high() {
        return wattsPerKelvin + reach * errorWattsPerKelvin;
    }
}
