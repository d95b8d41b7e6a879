package simmerpoint.scenario.doubts;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.heat.SurfaceOptics;
import simmerpoint.heat.ThermalPan;
import simmerpoint.heat.losses.LossFactors;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.sun.Sunlight;

/** Gathers the values of one draw and makes the cooker that they mean. */
final class CookerBuilder {
    /** What has no key. */
    static final String BEAM = "beam";

    static final String AIM_UP = "aim.up";
    static final String AIM_SIDE = "aim.side";
    static final String FINISH = "pan.absorptance";
    static final String DRY = "losses.dry";
    static final String EVAPORATION = "losses.evaporation";

    private final Map<String, Double> numbers = new HashMap<>();
    private final Map<String, Double> others = new HashMap<>();

    /** Sets what a cause comes to: the number of a key, or a factor or difference of what has none. */
    void set(String cause, double value) {
        boolean other = switch (cause) {
            case BEAM, AIM_UP, AIM_SIDE, FINISH, DRY, EVAPORATION -> true;
            default -> false;
        };
        (other ? others : numbers).put(cause, value);
    }

    /** The cooker, whose builder takes it for one cut as {@code planned}; empty if these values do not go together. */
    Optional<DrawnCooker> build(ScenarioValues values, Cut planned, int draw, long build) {
        try {
            Scenario scenario = CheckedScenario.scenario(values.withNumbers(numbers));
            DishPlan dish = scenario.dish();
            scenario = scenario.withDish(dish.withCut(dish.cut().supposedAs(planned)));
            scenario = scenario.withAim(scenario.aim().plusTurn(other(AIM_UP, 0), other(AIM_SIDE, 0)))
                    .withSun(scaled(scenario.sun(), other(BEAM, 1)));
            double darker = other(FINISH, 0);
            return Optional.of(new DrawnCooker(
                    darker == 0 ? scenario : painted(scenario, darker),
                    other(BEAM, 1),
                    new LossFactors(other(DRY, 1), other(EVAPORATION, 1)),
                    draw,
                    build));
        } catch (ScenarioException e) {
            return Optional.empty();
        }
    }

    private double other(String cause, double without) {
        return others.getOrDefault(cause, without);
    }

    private static Sunlight scaled(Sunlight sun, double factor) {
        return new Sunlight(sun.elevationRadians(), factor * sun.beamWattsPerSquareMetre(), sun.shape());
    }

    private static Scenario painted(Scenario scenario, double darker) {
        Scenario other = scenario.target() instanceof Pan pan ? scenario.withTarget(painted(pan, darker)) : scenario;
        return other.withCooking(other.cooking().map(kitchen -> painted(kitchen, darker)));
    }

    private static Pan painted(Pan pan, double darker) {
        Finish finish = pan.finish();
        return new Pan(
                2 * pan.radiusMetres(),
                pan.heightMetres(),
                new Finish(finish.name(), share(finish.absorptance() + darker)),
                pan.castsShadow(),
                pan.support());
    }

    private static CookingSetup painted(CookingSetup kitchen, double darker) {
        ThermalPan v = kitchen.vessel();
        ThermalPan vessel = new ThermalPan(
                painted(v.pan(), darker),
                v.material(),
                v.massKilograms(),
                painted(v.underside(), darker),
                painted(v.wetWall(), darker),
                painted(v.dryWall(), darker),
                v.lidThrough() > 0 ? v.lid() : painted(v.lid(), darker),
                v.lidOn(),
                v.lidThrough(),
                v.ownPlate(),
                v.cover(),
                v.openShare());
        return new CookingSetup(vessel, kitchen.contents(), kitchen.around(), kitchen.levels());
    }

    private static SurfaceOptics painted(SurfaceOptics optics, double darker) {
        return new SurfaceOptics(share(optics.absorptance() + darker), optics.emissivity());
    }

    private static double share(double value) {
        return Math.max(0, Math.min(1, value));
    }
}
