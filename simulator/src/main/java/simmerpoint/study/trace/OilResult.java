package simmerpoint.study.trace;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.ThermalPan;
import simmerpoint.heat.balance.DeepOil;
import simmerpoint.heat.plate.CookingOil;
import simmerpoint.heat.plate.PanSheet;
import simmerpoint.uncertainty.LikelyRange;

/**
 * The pan with oil for deep frying in it, lid off, instead of its water. Ranges go by the light that such cookers take up for each
 * watt that they lose.
 *
 * @param depthMetres of the oil
 * @param kilograms of oil
 * @param endCelsius where it ends if nobody turns the dish away
 * @param soonestSeconds time until it has {@link CookingOil#FRYING_CELSIUS} with the most light of the range; empty if never
 * @param likelySeconds the same in the middle of the range
 * @param latestSeconds the same with the least light
 * @param hottestCelsius hottest place of the bottom's inside when the oil has {@link CookingOil#FRYING_CELSIUS}
 * @param curve warming in the middle of the range up to that
 */
public record OilResult(
        double depthMetres,
        double kilograms,
        LikelyRange endCelsius,
        OptionalDouble soonestSeconds,
        OptionalDouble likelySeconds,
        OptionalDouble latestSeconds,
        double hottestCelsius,
        List<DeepOil.Point> curve) {
    /** Share of the pan's height that is filled at most, since oil foams up when food goes in: common practice. */
    private static final double FILLED = 1.0 / 3;

    /** Keeps a copy of the curve. */
    public OilResult {
        curve = List.copyOf(curve);
    }

    static double depth(ThermalPan vessel) {
        return FILLED * vessel.pan().heightMetres();
    }

    static OilResult of(HeatResult heat, Optional<LikelyRange> likely, PanSheet underOil) {
        ThermalPan vessel = heat.cooking().vessel();
        AbsorbedLight given = heat.absorbed();
        LikelyRange light = likely.orElseGet(() -> LikelyRange.exact(given.total()));
        DeepOil most = oil(heat, given.scaledTo(light.high()));
        DeepOil middle = oil(heat, given.scaledTo(light.likely()));
        DeepOil least = oil(heat, given.scaledTo(light.low()));
        double fry = CookingOil.FRYING_CELSIUS;
        return new OilResult(
                depth(vessel),
                middle.oilKilograms(),
                new LikelyRange(least.endCelsius(), middle.endCelsius(), most.endCelsius()),
                most.secondsUntil(fry),
                middle.secondsUntil(fry),
                least.secondsUntil(fry),
                underOil.hottestInsideCelsius(),
                middle.curve(fry));
    }

    private static DeepOil oil(HeatResult heat, AbsorbedLight light) {
        ThermalPan vessel = heat.cooking().vessel();
        return DeepOil.of(vessel, depth(vessel), heat.cooking().around(), light);
    }
}
