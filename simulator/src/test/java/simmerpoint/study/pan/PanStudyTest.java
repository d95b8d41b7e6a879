package simmerpoint.study.pan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.heat.HeatLevel;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;

class PanStudyTest {
    private static PanResult tea;

    @BeforeAll
    static void study() {
        tea = PanScenarios.study(PanScenarios.rings(50, 850));
    }

    private static PanMove move(PanResult result, MoveStudy.Move which) {
        return result.moves().stream()
                .filter(m -> m.move() == which)
                .findFirst()
                .orElseThrow();
    }

    /**
     * The whole dish at 50° and 25°, 1000 W/m²: light on underside and wall from an independent tracer written from the
     * geometry alone, 20 million rays (derived here). Bound: 0.1 % of the reflected 948 W and 4 standard errors of the
     * move's own light, which are those of the absorbed watts over the share absorbed, some 0.85.
     */
    @ParameterizedTest
    @CsvSource({"50, 845.78, 20.84", "25, 589.07, 169.54"})
    void theWholeDishComesOutAtOffsetZeroOfEveryMove(double elevation, double underside, double wall) {
        PanResult result = PanScenarios.study(PanScenarios.rings(elevation, 1000));
        double area = result.cooking().vessel().levelArea();
        for (PanMove move : result.moves()) {
            PanPosition p = move.at(0);
            double onUnderside = p.meanFlux() * area;
            double bound = 0.001 * 948 + 4 * p.absorbed().standardError() / 0.8;
            assertEquals(underside, onUnderside, bound, move.move() + ", underside");
            assertEquals(wall, onUnderside * p.wallShare() / p.undersideShare(), bound, move.move() + ", wall");
        }
        double bound = 0.001 * 948 + 4 * result.here().absorbed().standardError() / 0.8;
        assertEquals(underside, result.here().meanFlux() * area, bound, "where the pan stands");
    }

    @Test
    void everyMoveHas41PositionsAndOneOfThemIsThePresentOne() {
        for (PanMove move : tea.moves()) {
            assertEquals(PanStudy.POSITIONS, move.positions().size());
            assertTrue(
                    move.positions().stream().anyMatch(p -> p.offsetMetres() == 0),
                    move.move().toString());
            assertTrue(move.fromMetres() >= -0.4 - 1e-9 && move.toMetres() <= 0.4 + 1e-9);
        }
    }

    /** Curve and trace use the same figures; the curve of a quarter of the rays is good to 0.3 %. */
    @Test
    void thePresentPlaceIsTheSameInAllAnswers() {
        double traced = tea.here().absorbed().value();
        assertEquals(tea.base().ledger().absorbed().value(), traced, 1e-9);
        assertEquals(traced, tea.here().absorbedByFace().total(), 1e-6 * traced);
        for (PanMove move : tea.moves()) {
            assertEquals(traced, move.at(0).absorbed().value(), 0.003 * traced);
        }
    }

    @Test
    void bordersLieWhereTheLevelChangesAndNotOnTheGrid() {
        for (PanMove move : tea.moves()) {
            assertTrue(move.borders().size() >= 2, move.move() + " changes nothing");
            for (LevelBorder b : move.borders()) {
                PanPosition before = move.at(b.offsetMetres() - 1e-4);
                PanPosition after = move.at(b.offsetMetres() + 1e-4);
                assertEquals(b.before(), before.level());
                assertEquals(b.after(), after.level());
                List<HeatLevel> all = List.of(HeatLevel.values());
                assertEquals(1, Math.abs(all.indexOf(b.before()) - all.indexOf(b.after())));
                HeatLevel upper = b.before().compareTo(b.after()) > 0 ? b.before() : b.after();
                double spare = tea.cooking()
                        .heatLevels()
                        .spareWatts(upper, move.at(b.offsetMetres()).absorbedByFace());
                assertEquals(0, spare, 0.05, "watts to spare at the border");
                assertTrue(b.lowMetres() <= b.offsetMetres() && b.offsetMetres() <= b.highMetres());
                assertTrue(
                        move.positions().stream().noneMatch(p -> Math.abs(p.offsetMetres() - b.offsetMetres()) < 1e-7));
            }
        }
    }

    /** Light high on the wall counts less, being lost to the air before it gets to the water; it is left out here. */
    @Test
    void stretchesCoverTheMoveAndMoreHeatNeverMeansALowerLevel() {
        for (PanMove move : tea.moves()) {
            List<LevelStretch> stretches = move.stretches();
            assertEquals(move.fromMetres(), stretches.get(0).fromMetres());
            assertEquals(move.toMetres(), stretches.get(stretches.size() - 1).toMetres());
            for (int k = 1; k < stretches.size(); k++) {
                assertEquals(stretches.get(k - 1).toMetres(), stretches.get(k).fromMetres());
                assertEquals(
                        stretches.get(k - 1).level(), stretches.get(k).before().orElseThrow());
            }
            for (PanPosition p : move.positions()) {
                for (PanPosition q : move.positions()) {
                    boolean onUnderside = p.undersideShare() > 0.9 && q.undersideShare() > 0.9;
                    if (onUnderside
                            && p.absorbed().value() > 1.05 * q.absorbed().value()) {
                        assertTrue(p.level().compareTo(q.level()) >= 0, p + " against " + q);
                    }
                }
            }
        }
    }

    /**
     * A slide keeps the focus in the pan's level plane: the hot spot walks and stays as hot (derived from the definition), to 4 standard
     * errors and a hundredth for the grain of the map; a pull-back of 10 cm widens it, away from the dish more than towards it (0.67 and
     * 0.81 of it by traces of a million rays), to 4 standard errors and a fiftieth.
     */
    @Test
    void aSlideKeepsTheHotSpotAndAPullBackSoftensIt() {
        Estimate here = hotSpot(MoveStudy.Move.SLIDE, 0);
        for (double slide : new double[] {-0.05, 0.05}) {
            assertShare(1, here, hotSpot(MoveStudy.Move.SLIDE, slide), 0.01);
        }
        assertShare(0.81, here, hotSpot(MoveStudy.Move.PULL_BACK, -0.1), 0.02);
        assertShare(0.67, here, hotSpot(MoveStudy.Move.PULL_BACK, 0.1), 0.02);
    }

    private static Estimate hotSpot(MoveStudy.Move move, double offset) {
        TraceOptions many = PanScenarios.options().withRays(1 << 22);
        return PanStudy.traceAt(tea.base().scenario(), move, offset, many, Progress.NONE)
                .spot()
                .peakFlux();
    }

    private static void assertShare(double share, Estimate whole, Estimate part, double grain) {
        double error = Math.hypot(share * whole.standardError(), part.standardError());
        assertEquals(share * whole.value(), part.value(), 4 * error + grain * whole.value(), part + " of " + whole);
        assertTrue(4 * error < 0.04 * whole.value(), "too rough to tell: " + error);
    }

    /**
     * Hottest places between the positions that were looked at, against traces of another seed with eight times the rays: to
     * 4 standard errors (12 comparisons, false alarm 1e-3), and a twentieth for what a smooth curve passes over.
     */
    @Test
    void hotSpotsAgreeWithTracesBetweenThePositions() {
        TraceOptions many = PanScenarios.options().withSeed(5).withRays(1 << 20);
        for (PanMove move : tea.moves()) {
            for (double offset : new double[] {-0.15, -0.06, 0.04, 0.09}) {
                Estimate traced = PanStudy.traceAt(tea.base().scenario(), move.move(), offset, many, Progress.NONE)
                        .spot()
                        .peakFlux();
                Estimate curve = move.at(offset).peakFlux();
                double error = Math.hypot(traced.standardError(), curve.standardError());
                assertEquals(
                        traced.value(),
                        curve.value(),
                        4 * error + 0.05 * traced.value(),
                        move.move() + " " + offset + ": " + curve + " against " + traced);
            }
        }
    }

    /**
     * Under a long dish a wide pan can be pulled back a hand's breadth for a twentieth of its watts (4.5 % of the light on
     * its underside by a trace of four million rays), its hot spot less than half as hot.
     */
    @Test
    void boilingReadsTheWattsAndFryingTheFlux() {
        PanResult result = PanScenarios.study(PanScenarios.longDish());
        PanPosition there = move(result, MoveStudy.Move.PULL_BACK).at(0.09);
        assertTrue(there.absorbed().value() > 0.94 * result.here().absorbed().value(), there.toString());
        assertTrue(
                there.peakFlux().value() < 0.6 * result.here().peakFlux().value(), there + " against " + result.here());
        assertTrue(there.middleFlux() < result.here().middleFlux());
        assertEquals(result.here().level(), there.level());
    }

    @Test
    void theCurvesAgreeWithTracesOfAnotherSeedBetweenThePositions() {
        Scenario scenario = tea.base().scenario();
        for (PanMove move : tea.moves()) {
            for (double offset : new double[] {-0.087, 0.0713}) {
                TraceResult traced = PanStudy.traceAt(
                        scenario, move.move(), offset, PanScenarios.options().withSeed(5), Progress.NONE);
                double absorbed = traced.ledger().absorbed().value();
                assertEquals(absorbed, move.at(offset).absorbed().value(), 0.01 * absorbed, move.move() + " " + offset);
            }
        }
    }

    @Test
    void theRecommendedPlaceSimmersForAnotherSeedToo() {
        SimmerPlace place = tea.simmer().orElseThrow();
        assertTrue(place.stretch().fromMetres() < place.position().offsetMetres()
                && place.position().offsetMetres() < place.stretch().toMetres());
        assertTrue(place.position().hottestFlux() < 0.6 * tea.here().hottestFlux());
        Scenario there = PanStudy.moved(
                tea.base().scenario(), place.move(), place.position().offsetMetres());
        TraceResult traced = TraceStudy.run(there, PanScenarios.options().withSeed(9), Progress.NONE);
        assertEquals(HeatLevel.SIMMER, traced.heat().orElseThrow().level());
    }

    /** Light in proportion to the open mirror: with that share of it the pan is between simmer and boil. */
    @Test
    void theOpenShareGivesASimmer() {
        double open = tea.openShareForSimmer().orElseThrow();
        double watts = tea.directWatts() + open * (tea.here().absorbed().value() - tea.directWatts());
        assertEquals(
                HeatLevel.SIMMER,
                tea.cooking().heatLevels().level(tea.here().absorbedByFace().scaledTo(watts)));
    }

    @Test
    void aTinyDishSimmersNowhere() {
        PanResult tiny = PanScenarios.study(PanScenarios.smooth(0.3, 0.4, 600));
        assertTrue(tiny.simmer().isEmpty());
        assertTrue(tiny.openShareForSimmer().isEmpty());
    }

    @Test
    void threadsDoNotMatter() {
        Scenario scenario = PanScenarios.rings(50, 850);
        TraceOptions few = PanScenarios.options().withRays(1 << 13);
        PanResult one = PanStudy.run(scenario, few.withThreads(1), Progress.NONE);
        PanResult four = PanStudy.run(scenario, few.withThreads(4), Progress.NONE);
        for (int k = 0; k < one.moves().size(); k++) {
            assertEquals(one.moves().get(k).positions(), four.moves().get(k).positions());
            assertEquals(one.moves().get(k).borders(), four.moves().get(k).borders());
        }
        assertEquals(one.simmer(), four.simmer());
    }

    @Test
    void canBeStopped() {
        assertThrows(
                CancellationException.class,
                () -> PanStudy.run(PanScenarios.rings(50, 850), PanScenarios.options(), (done, detail) -> done < 0.5));
    }
}
