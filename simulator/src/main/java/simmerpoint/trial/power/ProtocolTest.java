package simmerpoint.trial.power;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.heat.balance.ParaboloidProtocol;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.trial.log.Reading;
import simmerpoint.trial.log.Series;
import simmerpoint.trial.log.TrialLog;

/**
 * The two factors of the protocol for paraboloid cookers, {@link ParaboloidProtocol}.
 *
 * @param lossWattsPerKelvin loss of the whole pan
 * @param low least of its 95 % interval, W/K
 * @param high most of it, W/K
 * @param fromCooling whether a cooling log tells it; otherwise the slope of the standard's line does
 * @param factors both factors; empty without measured light
 * @param boilSeconds by these factors from the air's temperature to boiling in the mean light of the log; infinite if it never boils
 */
public record ProtocolTest(
        double lossWattsPerKelvin,
        double low,
        double high,
        boolean fromCooling,
        Optional<ParaboloidProtocol> factors,
        OptionalDouble boilSeconds) {
    /** From what the logs tell; empty if they tell nothing of losses. */
    public static Optional<ProtocolTest> of(
            Optional<TrialLog> heating, List<TrialLog> cooling, PowerTest power, HeatedPan pan) {
        Optional<CoolingTest> cooled = CoolingTest.of(cooling, pan);
        if (cooled.isPresent()) {
            CoolingTest c = cooled.get();
            return Optional.of(of(heating, pan, c.wattsPerKelvin(), c.low(), c.high(), true));
        }
        return power.line().filter(line -> line.wattsPerKelvin() < 0).map(line -> fromLine(line, heating, power, pan));
    }

    /** The line's slope is that of the water alone, at 700 W/m²: −loss · the water's share · 700 ÷ irradiance. */
    private static ProtocolTest fromLine(
            StandardCookingPower.Line line, Optional<TrialLog> heating, PowerTest power, HeatedPan pan) {
        double mean = power.used().stream()
                .mapToDouble(i -> i.interval().irradiance())
                .average()
                .orElseThrow();
        double per = mean / StandardCookingPower.STANDARD_IRRADIANCE / pan.waterShare();
        double loss = -line.wattsPerKelvin() * per;
        double off = line.fit().reach(PowerTest.CONFIDENCE) * line.fit().slopeError() * per;
        return of(heating, pan, loss, loss - off, loss + off, false);
    }

    private static ProtocolTest of(
            Optional<TrialLog> heating, HeatedPan pan, double loss, double low, double high, boolean cooling) {
        Optional<Heating> heated = heating.filter(TrialLog::hasLight).flatMap(log -> Heating.of(log, pan));
        Optional<ParaboloidProtocol> factors = heated.flatMap(h -> h.factors(pan, loss));
        OptionalDouble boil = factors.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(factors.get()
                        .secondsToBoil(
                                pan.boilingCelsius() - heated.get().airCelsius(),
                                heated.get().irradiance()));
        return new ProtocolTest(loss, low, high, cooling, factors, boil);
    }

    /** A heating curve from its first reading to the last that is 5 K below boiling, in the mean of its light. */
    private record Heating(
            double seconds, double startAboveAir, double endAboveAir, double irradiance, double airCelsius) {
        private static final double BELOW_BOILING = 5;
        private static final double LEAST_SECONDS = 600;

        static Optional<Heating> of(TrialLog log, HeatedPan pan) {
            List<Reading> below = log.water().stream()
                    .takeWhile(r -> r.waterCelsius() <= pan.boilingCelsius() - BELOW_BOILING)
                    .toList();
            if (below.size() < 2) {
                return Optional.empty();
            }
            Reading first = below.get(0);
            Reading last = below.get(below.size() - 1);
            Series air = log.series(Reading::airCelsius).or(Series.constant(pan.airCelsius()));
            double light = log.light().mean(first.seconds(), last.seconds());
            double mean = air.mean(first.seconds(), last.seconds());
            Heating found = new Heating(
                    last.seconds() - first.seconds(),
                    first.waterCelsius() - mean,
                    last.waterCelsius() - mean,
                    light,
                    mean);
            return found.seconds() >= LEAST_SECONDS && light > TrialLog.DARK && pan.boilingCelsius() > mean
                    ? Optional.of(found)
                    : Optional.empty();
        }

        /** Both factors; empty where the water took up no light. */
        Optional<ParaboloidProtocol> factors(HeatedPan pan, double loss) {
            double factor = loss / pan.area();
            double optical = ParaboloidProtocol.opticalFactor(
                    factor,
                    pan.area(),
                    pan.apertureArea(),
                    pan.heatCapacity() / loss,
                    startAboveAir,
                    endAboveAir,
                    irradiance,
                    seconds);
            return optical > 0
                    ? Optional.of(
                            new ParaboloidProtocol(pan.heatCapacity(), pan.area(), pan.apertureArea(), factor, optical))
                    : Optional.empty();
        }
    }
}
