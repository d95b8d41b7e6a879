package simmerpoint.trial.spot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import simmerpoint.dish.DishPlan;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.study.light.StoredLight;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;

/**
 * The light of one dish on bare cards square to its axis, the dish aimed dead on. It is cast once for cards at all distances; where panels may
 * hide one another it is traced for each. Where measures or a file say how large the dish is, its focal length is not varied.
 */
public final class CardLight {
    /** Width of the disc that stands in for the card; maps reach half as far again, m. */
    private static final double CARD = 0.34;

    private static final double OF_DISH = 0.4;
    private static final double NEARLY_ALL = 0.99;

    /** Cells of the maps are a quarter of it, m. */
    private static final double PEAK_RADIUS = 0.012;

    private final ScenarioValues bare;
    private final TraceOptions options;
    private final boolean sizedByKeys;

    /** Of the dish of a scenario, for cards at those distances from its middle, m. */
    CardLight(ScenarioValues values, TraceOptions options, double... distances) throws ScenarioException {
        DishPlan dish = CheckedScenario.scenario(values).dish();
        sizedByKeys = dish.cut().ownSize().isEmpty();
        double card = Math.max(Math.min(CARD, OF_DISH * dish.diameterMetres()), widest(dish, distances));
        bare = values.without(List.of(
                        "pan",
                        "plane",
                        "air",
                        "heat-levels",
                        "aim.turn",
                        "aim.drift",
                        "stand.slide",
                        "stand.raise",
                        "stand.side"))
                .with(Map.of("plane.disc", card + " m"));
        this.options =
                new TraceOptions(options.rays(), options.precision(), options.seed(), options.threads(), PEAK_RADIUS);
    }

    /** Width of the widest cone from the rim through the focus to any of the cards, by similar triangles, at most nearly that of the dish, m. */
    private static double widest(DishPlan dish, double... distances) {
        double focal = dish.focalLengthMetres();
        double fromRim = focal - dish.diameterMetres() * dish.diameterMetres() / (16 * focal);
        double off =
                Arrays.stream(distances).map(d -> Math.abs(d - focal)).max().orElse(0);
        return dish.diameterMetres() * (off < NEARLY_ALL * fromRim ? off / fromRim : NEARLY_ALL);
    }

    /**
     * Maps at all distances.
     *
     * @param slopeError rad
     * @param focalLength m
     * @param distances of cards from the middle of the dish, m
     */
    List<SpotMap> maps(double slopeError, double focalLength, double[] distances) throws ScenarioException {
        StoredLight light = StoredLight.cast(card(slopeError, focalLength, distances[0]), options, Progress.NONE);
        List<SpotMap> maps = new ArrayList<>();
        for (double distance : distances) {
            Scenario there = card(slopeError, focalLength, distance);
            TraceResult result = light.serves(there)
                    ? light.catchFor(there, Progress.NONE)
                    : TraceStudy.run(there, options, Progress.NONE);
            maps.add(SpotMap.of(result.maps().crossing()));
        }
        return maps;
    }

    /**
     * Widths of the spot of the dish that some values give, at half of its brightness, m.
     *
     * @param options rays for all of it
     * @param distances of cards from the middle of the dish, m
     * @throws ScenarioException if the values do not go together, or a card cannot stand so
     */
    public static double[] widths(ScenarioValues values, TraceOptions options, double... distances)
            throws ScenarioException {
        Scenario dish = CheckedScenario.scenario(values);
        return new CardLight(values, options, distances)
                .maps(dish.mirror().slopeErrorRadians(), dish.dish().focalLengthMetres(), distances).stream()
                        .mapToDouble(
                                map -> map.profile(Double.POSITIVE_INFINITY).width())
                        .toArray();
    }

    private Scenario card(double slopeError, double focalLength, double distance) throws ScenarioException {
        Map<String, Double> numbers =
                new HashMap<>(Map.of("mirror.slope-error", slopeError, "stand.pull-back", distance - focalLength));
        if (sizedByKeys) {
            numbers.put("dish.focal-length", focalLength);
        }
        return CheckedScenario.scenario(bare.withNumbers(numbers));
    }
}
