package simmerpoint.study.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.dish.shape.ShapeError;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.build.ShapeTolerance.Place;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/** Tolerances in millimetres against traces of dishes that are off by so much, with other samples and more of them. */
class ShapeTolerancesTest {
    private static final TraceOptions OPTIONS = TraceOptions.defaults().withRays(1 << 15);
    private static final TraceOptions OTHERS = OPTIONS.withRays(1 << 16).withSeed(77);

    private static Scenario read(String changes) throws ScenarioException {
        Map<String, String> keys = List.of(changes.split(";")).stream()
                .map(each -> each.split("="))
                .collect(Collectors.toMap(pair -> pair[0].strip(), pair -> pair[1].strip()));
        return ScenarioReader.builtIn().with(keys).scenario();
    }

    /** The scenario off by that, made here. */
    private static Scenario off(Scenario s, ShapeTolerance t, double times) {
        Mirror mirror = s.mirror();
        double size = times * t.metres();
        double angle = size / 2 / t.span();
        return switch (t.place()) {
            case SHEET_HANGING -> s.withShape(s.shape().with(ShapeError.SHEET_SAG, size));
            case SHEET_BULGING -> s.withShape(s.shape().with(ShapeError.SHEET_BULGE, size));
            case DEPTH -> s.withShape(s.shape().with(ShapeError.SPRINGBACK, size));
            case TWIST -> s.withShape(s.shape().with(ShapeError.TWIST, size));
            case RIM -> s.withShape(s.shape().with(ShapeError.RIM_PULLED_IN, size));
            case PANEL_SIDE -> s.withMirror(mirror.withPanelTilt(Math.hypot(mirror.panelTiltRadians(), angle)));
            case WAVES -> s.withMirror(mirror.withSlopeError(Math.hypot(mirror.slopeErrorRadians(), angle)));
        };
    }

    /** What a dish may be off does not hang on how one such dish happens to be glued. */
    @Test
    void luckInGluingDoesNotDecide() throws ScenarioException {
        Scenario loose = read("dish.surface.cut=bent-strips; dish.surface.sectors=12; mirror.panel-tilt=15 mrad");
        List<Double> askew = IntStream.range(1, 5)
                .mapToDouble(seed -> ShapeTolerances.of(loose, OPTIONS.withSeed(seed), Progress.NONE).stream()
                        .filter(each -> each.place() == Place.PANEL_SIDE)
                        .findFirst()
                        .orElseThrow()
                        .metres())
                .boxed()
                .sorted()
                .toList();
        assertTrue(askew.get(3) < 1.1 * askew.get(0), askew.toString());
    }

    /**
     * A twentieth is lost between 0.85 and 1.15 times what is told, but for 4 standard errors; of panels askew on the average of dishes
     * whose panels are really turned, each by a seed of its own.
     */
    @ParameterizedTest
    @CsvSource({
        "dish.surface.sectors=24",
        "dish.surface.cut=bent-strips; dish.surface.sectors=16",
        "dish.surface.cut=square-tiles; dish.surface.tile=6 cm",
        "dish.surface.cut=smooth; mirror.panel-tilt=0 mrad; dish.gap=0 mm"
    })
    void eachCostsATwentieth(String changes) throws ScenarioException {
        Scenario scenario = read(changes);
        List<ShapeTolerance> found = ShapeTolerances.of(scenario, OPTIONS, Progress.NONE);
        assertTrue(found.size() >= 4);
        for (ShapeTolerance each : found) {
            assertTrue(each.metres() > 0.0002 && each.metres() <= 0.03, each.toString());
            if (each.isMore()) {
                continue;
            }
            // Of panels askew the mean of dishes glued by other seeds; all else with one other seed.
            int dishes = each.place() == Place.PANEL_SIDE ? 12 : 1;
            List<List<PairedWatts>> watts = IntStream.range(0, dishes)
                    .mapToObj(k -> PairedStudy.watts(
                            List.of(scenario, off(scenario, each, 0.85), off(scenario, each, 1.15)),
                            OTHERS.withSeed(77 + k),
                            Progress.NONE))
                    .toList();
            Estimate less = cost(watts, 1);
            Estimate more = cost(watts, 2);
            double lost = ShapeTolerance.LOSS
                    * watts.stream()
                            .mapToDouble(dish -> dish.get(0).useful().value())
                            .average()
                            .orElseThrow();
            assertTrue(less.value() < lost + 4 * less.standardError(), each + " costs " + less + " at less");
            assertTrue(more.value() > lost - 4 * more.standardError(), each + " costs " + more + " at more");
        }
    }

    /** Of the k-th scenario: of one dish with its sampling error, of several their mean with that of the mean. */
    private static Estimate cost(List<List<PairedWatts>> dishes, int k) {
        List<Estimate> costs = dishes.stream()
                .map(dish -> dish.get(k).usefulBeyond(dish.get(0)).times(-1))
                .toList();
        if (costs.size() == 1) {
            return costs.get(0);
        }
        SummaryStatistics all = new SummaryStatistics();
        costs.forEach(cost -> all.addValue(cost.value()));
        return new Estimate(all.getMean(), all.getStandardDeviation() / Math.sqrt(costs.size()));
    }

    @Test
    void everyCutHasThoseThatMeanSomething() throws ScenarioException {
        Set<Place> whole = EnumSet.of(Place.DEPTH, Place.TWIST, Place.RIM);
        Set<Place> tiles = EnumSet.copyOf(whole);
        tiles.add(Place.PANEL_SIDE);
        Set<Place> ribs = EnumSet.copyOf(tiles);
        ribs.addAll(EnumSet.of(Place.SHEET_HANGING, Place.SHEET_BULGING));
        Set<Place> metal = EnumSet.copyOf(whole);
        metal.add(Place.WAVES);
        assertEquals(ribs, places("dish.surface.sectors=12"));
        assertEquals(tiles, places("dish.surface.cut=hexagon-tiles; dish.surface.tile=8 cm"));
        assertEquals(metal, places("dish.surface.cut=smooth; mirror.panel-tilt=0 mrad; dish.gap=0 mm"));
    }

    private static Set<Place> places(String changes) throws ScenarioException {
        return ShapeTolerances.of(read(changes), TraceOptions.defaults().withRays(1 << 10), Progress.NONE).stream()
                .map(ShapeTolerance::place)
                .collect(Collectors.toSet());
    }

    /** A cooker that brings nothing has nothing to lose. */
    @Test
    void withoutWattsThereIsNoTolerance() throws ScenarioException {
        Scenario idle = read("air.temperature=-30 °C; sun.beam=60 W/m²; air.wind=10 m/s");
        assertEquals(List.of(), ShapeTolerances.of(idle, OPTIONS, Progress.NONE));
    }
}
