package simmerpoint.study.day;

import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.setup.FocusTravel;
import simmerpoint.setup.StandGeometry;
import simmerpoint.study.aim.AimAgain;
import simmerpoint.study.likely.LikelyMoment;
import simmerpoint.sun.BeamRange;
import simmerpoint.sun.SunMoment;
import simmerpoint.uncertainty.LikelyRange;

/**
 * One instant of a day.
 *
 * @param moment when, and where the sun stands
 * @param beam the beam then
 * @param stand how dish and pan stand
 * @param walk how often to aim ({@link AimAgain}, a tenth) and how the focus walks; empty if nothing is lost so soon
 * @param light what the pan gets; empty if dish and pan cannot stand so, or there is no beam
 * @param hindrance why there is no light, one sentence without its full stop; empty if there is
 */
public record DayHour(
        SunMoment moment,
        BeamRange beam,
        StandGeometry stand,
        Optional<FocusTravel> walk,
        Optional<HourLight> light,
        String hindrance) {
    /** When, by the clock of the place. */
    public ZonedDateTime time() {
        return moment.time();
    }

    /** Elevation of the sun as one sees it, rad. */
    public double elevationRadians() {
        return moment.position().elevationRadians();
    }

    /** The same with what is likely. */
    DayHour withLikely(LikelyMoment found) {
        return new DayHour(moment, beam, stand, walk, light.map(l -> l.withLikely(found)), hindrance);
    }

    /** Watts beyond those of a simmer by one end of their range; minus infinity without light. */
    double simmerSpareWatts(ToDoubleFunction<LikelyRange> end) {
        return light.map(l -> end.applyAsDouble(l.simmerSpareWatts())).orElse(Double.NEGATIVE_INFINITY);
    }

    /** Likely cooking power, W; minus infinity without light. */
    public double cookingPowerWatts() {
        return light.map(l -> l.power().likely()).orElse(Double.NEGATIVE_INFINITY);
    }
}
