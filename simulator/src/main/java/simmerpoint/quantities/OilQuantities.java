package simmerpoint.quantities;

import simmerpoint.heat.balance.DeepOil;
import simmerpoint.study.trace.OilResult;

/** Oil for deep frying. */
final class OilQuantities {
    private static final Fields<DeepOil.Point> POINT = Fields.<DeepOil.Point>none()
            .number("seconds", "since the start", DeepOil.Point::seconds)
            .number("oil_C", "temperature of the oil", DeepOil.Point::celsius);

    static final Fields<OilResult> FIELDS = Fields.<OilResult>none()
            .number("depth_m", "of the oil", OilResult::depthMetres)
            .number("mass_kg", "of the oil", OilResult::kilograms)
            .range("end_*_C", "where it ends if nobody turns the dish away", OilResult::endCelsius)
            .optionalNumber("hot_low_s", "time until it has 180 \u00b0C, soonest", OilResult::soonestSeconds)
            .optionalNumber("hot_likely_s", "the same, likely", OilResult::likelySeconds)
            .optionalNumber("hot_high_s", "the same, latest", OilResult::latestSeconds)
            .number("hottest_C", "hottest place of the bottom under oil of 180 \u00b0C", OilResult::hottestCelsius)
            .rows("curve", "warming up to 180 \u00b0C, likely", OilResult::curve, POINT);

    private OilQuantities() {}
}
