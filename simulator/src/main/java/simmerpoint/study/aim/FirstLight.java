package simmerpoint.study.aim;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.doubts.ScenarioDoubts;
import simmerpoint.study.light.CardSpot;
import simmerpoint.study.light.ReflectedLight;
import simmerpoint.study.light.ReflectedRay;
import simmerpoint.study.likely.CookerDraws;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.uncertainty.Quantiles;

/**
 * How to find the true focus of a finished dish before any pan stands in it: all of the mirror is covered but for two holes, and their two
 * spots on a card become one where the card is at the focus. Ranges are over all doubts about the dish; it is aimed dead on.
 *
 * @param holes in the cloth
 * @param watts that come through both
 * @param meet where the spots become one, from the middle of the dish along its axis, m
 * @param fluxThere in the middle of that one spot, W/m²
 * @param times so many times as much light comes from all of the mirror
 * @param cards what is seen on cards at several distances, the nearest to the dish first
 */
public record FirstLight(
        CardHoles holes, LikelyRange watts, LikelyRange meet, LikelyRange fluxThere, double times, List<OnCard> cards) {
    private static final int COOKERS = 5;
    private static final long RAYS = 1 << 14;
    private static final long RAYS_AS_GIVEN = 1 << 16;

    /** What is called the width of a spot holds so much of its light. */
    private static final double MOST_OF_IT = 0.8;

    /** The brightest part of a spot. */
    private static final double BRIGHTEST = 0.2;

    private static final double STEP = 0.05;
    private static final int STEPS = 2;

    /** Keeps a copy of the list. */
    public FirstLight {
        cards = List.copyOf(cards);
    }

    /**
     * Two spots on a card.
     *
     * @param distanceMetres of the card from the middle of the dish, along the axis
     * @param apart from middle to middle, m
     * @param width of each: the circle that holds four fifths of its light, m
     */
    public record OnCard(double distanceMetres, LikelyRange apart, LikelyRange width) {}

    /** One dish as it may turn out. */
    private record Draw(CardSpot first, CardSpot second) {
        double watts() {
            return first.watts() + second.watts();
        }

        double apart(double distance) {
            return first.middle(distance).minus(second.middle(distance)).length();
        }

        double width(double distance) {
            return first.radius(distance, MOST_OF_IT) + second.radius(distance, MOST_OF_IT);
        }

        /** Where the spots are nearest to each other: their way to one another is straight in the distance. */
        double meet() {
            Vec here = first.middle(0).minus(second.middle(0));
            Vec change = first.middle(1).minus(second.middle(1)).minus(here);
            return -here.dot(change) / change.dot(change);
        }

        double flux() {
            return 2 * first.flux(meet(), BRIGHTEST);
        }
    }

    /** Of the dish that was read; empty where its mirror has no room for the holes. */
    static Optional<FirstLight> of(CheckedScenario read, TraceOptions options) {
        List<ReflectedRay> given = rays(read.scenario(), options.withRays(RAYS_AS_GIVEN), options.seed());
        return CardHoles.of(given).flatMap(holes -> of(read, options, given, holes));
    }

    private static Optional<FirstLight> of(
            CheckedScenario read, TraceOptions options, List<ReflectedRay> given, CardHoles holes) {
        List<Draw> draws = CookerDraws.of(ScenarioDoubts.of(read), COOKERS, options.withRays(RAYS))
                .each(
                        cooker -> through(
                                holes,
                                rays(cooker.scenario(), options.withRays(RAYS), cooker.buildSeed(options.seed()))),
                        Progress.NONE)
                .stream()
                .flatMap(Optional::stream)
                .filter(draw -> draw.first().watts() > 0 && draw.second().watts() > 0)
                .toList();
        if (draws.isEmpty()) {
            return Optional.empty();
        }
        Draw asGiven = through(holes, given);
        double all = given.stream().mapToDouble(ReflectedRay::watts).sum();
        List<OnCard> cards = distances(read.scenario().dish().focalLengthMetres())
                .mapToObj(z -> new OnCard(z, range(draws, d -> d.apart(z)), range(draws, d -> d.width(z))))
                .toList();
        return Optional.of(new FirstLight(
                holes,
                range(draws, Draw::watts),
                range(draws, Draw::meet),
                range(draws, Draw::flux),
                all / asGiven.watts(),
                cards));
    }

    private static Draw through(CardHoles holes, List<ReflectedRay> rays) {
        return new Draw(new CardSpot(holes.rays(holes.first(), rays)), new CardSpot(holes.rays(holes.second(), rays)));
    }

    /** Round figures about the focal length, some eighth of it apart. */
    private static DoubleStream distances(double focalLength) {
        double step = STEP * Math.max(1, Math.round(focalLength / 8 / STEP));
        return IntStream.rangeClosed(-STEPS, STEPS).mapToDouble(k -> STEP * Math.round(focalLength / STEP) + k * step);
    }

    private static LikelyRange range(List<Draw> draws, ToDoubleFunction<Draw> figure) {
        return new Quantiles(draws.stream().mapToDouble(figure).toArray()).likelyRange();
    }

    private static List<ReflectedRay> rays(Scenario scenario, TraceOptions options, long buildSeed) {
        return ReflectedLight.deadOn(scenario, options, buildSeed)
                .rays(Progress.NONE)
                .toList();
    }
}
