package simmerpoint.safety.kitchen;

import java.util.Optional;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.safety.field.Yard;
import simmerpoint.safety.field.YardLight;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.PlateResult;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.uncertainty.LikelyRange;

/**
 * What the light does to food, pan and handle.
 *
 * @param emptyCelsius hottest place of the bottom of the pan, empty but for a film of oil, lid off
 * @param emptyMiddleCelsius middle of that bottom
 * @param foodCelsius hottest place of the bottom under food that lies still
 * @param dryHours from the first boil until all water is steam, h; empty where it makes next to none
 * @param handle most light on a handle that sticks out level, sun included, W/m²
 * @param handleRadians where it would point, level, from the way towards the sun to the right
 */
public record KitchenRisks(
        double emptyCelsius,
        double emptyMiddleCelsius,
        double foodCelsius,
        Optional<LikelyRange> dryHours,
        double handle,
        double handleRadians) {
    /** Non-stick coating begins to fail above this temperature, °C: common practice, as printed on such pans. */
    public static final double NON_STICK_CELSIUS = 260;

    /** Thin aluminium melts at 660 °C; it sags and its handles come off well before: common practice. */
    public static final double ALUMINIUM_CELSIUS = 500;

    /** Food browns fast from here and burns on soon after, °C: from memory. */
    public static final double SCORCH_CELSIUS = 145;

    /** Less steam than this is none, kg/h. */
    private static final double LEAST_STEAM = 0.02;

    private static final int DIRECTIONS = 24;
    private static final double[] ALONG = {0.03, 0.07, 0.12};
    private static final double HEIGHT = 0.8;

    /** Of a trace of the same scenario and its light; empty for a bare disc and a pan in a second skin. */
    public static Optional<KitchenRisks> of(TraceResult trace, YardLight light) {
        if (!(trace.scenario().target() instanceof Pan pan)) {
            return Optional.empty();
        }
        return trace.plate()
                .flatMap(plate -> trace.heat().map(heat -> risks(plate, heat, trace.scenario(), pan, light)));
    }

    private static KitchenRisks risks(PlateResult plate, HeatResult heat, Scenario scenario, Pan pan, YardLight light) {
        double[] handle = handle(scenario, pan, light);
        return new KitchenRisks(
                plate.empty().hottestCelsius(),
                plate.empty().middleCelsius(),
                plate.underFoodCelsius(),
                dry(heat),
                handle[0],
                handle[1]);
    }

    /** Water over steam; the most steam dries it soonest. */
    private static Optional<LikelyRange> dry(HeatResult heat) {
        double water = heat.cooking().contents().waterKilograms();
        LikelyRange steam = heat.steam().boiled();
        return steam.low() > LEAST_STEAM
                ? Optional.of(new LikelyRange(water / steam.high(), water / steam.likely(), water / steam.low()))
                : Optional.empty();
    }

    /** The strongest light beside the upper part of the wall, where handles are, and its direction. */
    private static double[] handle(Scenario scenario, Pan pan, YardLight light) {
        Setup setup = scenario.setup();
        Yard yard = Yard.of(scenario);
        YardLight.Probe probe = light.new Probe();
        double[] worst = {0, 0};
        for (int k = 0; k < DIRECTIONS; k++) {
            double angle = 2 * Math.PI * k / DIRECTIONS;
            for (double along : ALONG) {
                double r = pan.radiusMetres() + along;
                Vec place = new Vec(r * Math.cos(angle), r * Math.sin(angle), HEIGHT * pan.heightMetres());
                double here =
                        probe.at(yard.place(setup.target().toParent(place))).together();
                if (here > worst[0]) {
                    // The target frame's x points away from the sun, its y to the right.
                    worst = new double[] {here, Math.atan2(Math.sin(angle), -Math.cos(angle))};
                }
            }
        }
        return worst;
    }
}
