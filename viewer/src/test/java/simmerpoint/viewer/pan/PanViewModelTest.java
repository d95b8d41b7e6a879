package simmerpoint.viewer.pan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.chart.MoveCurve;
import simmerpoint.drawing.chart.Scale;
import simmerpoint.drawing.map.Place;
import simmerpoint.drawing.map.UnrolledWall;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.setup.Stand;
import simmerpoint.study.pan.BestPlace;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.pan.PanStudy;
import simmerpoint.study.pan.SimmerPlace;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.live.StudyState;

/** Scale, readout, curve and play, without a window. */
class PanViewModelTest {
    private final PanScenes scene = new PanScenes();

    @Test
    void aHeldScaleStaysWhateverTheLightDoes() {
        ScaleChoice held = ScaleChoice.ALL.stream()
                .filter(c -> c.words().equals("up to 50\u00a0kW/m\u00b2"))
                .findFirst()
                .orElseThrow();
        assertEquals(50_000, held.top(12_345));
        assertEquals(12_345, ScaleChoice.FOLLOWS.top(12_345));
        assertEquals(
                ScaleChoice.ALL.size(),
                ScaleChoice.ALL.stream().map(ScaleChoice::words).distinct().count());
    }

    @Test
    void onlyAMuchDarkerWallHasColoursOfItsOwnAndNeverOnAHeldScale() {
        double[] errors = new double[9];
        double[] flux = new double[9];
        java.util.Arrays.fill(flux, 1000);
        FluxMap dim = new FluxMap(3, 3, 0.01, 0.01, 0, 0, flux, errors);
        assertEquals(Optional.of(1000.0), ScaleChoice.FOLLOWS.ownTop(dim, 20_000, 900));
        assertEquals(Optional.empty(), ScaleChoice.FOLLOWS.ownTop(dim, 2_000, 100));
        assertEquals(Optional.empty(), new ScaleChoice(Optional.of(20_000.0)).ownTop(dim, 20_000, 900));
        FluxMap dark = new FluxMap(3, 3, 0.01, 0.01, 0, 0, new double[9], errors);
        assertEquals(Optional.empty(), ScaleChoice.FOLLOWS.ownTop(dark, 20_000, 900));
    }

    /** A few stray rays on a wall are not stretched over all the colours: these reach the sun's own light at least. */
    @Test
    void aHardlyLitWallDoesNotLookAblaze() {
        FluxMap stray = new FluxMap(3, 3, 0.01, 0.01, 0, 0, new double[] {0, 0, 0, 0, 0.03, 0, 0, 0, 0}, new double[9]);
        assertEquals(Optional.of(850.0), ScaleChoice.FOLLOWS.ownTop(stray, 20_000, 850));
        assertEquals("up to about 1\u00a0W/m\u00b2", UnrolledWall.words(stray, new FigureFormat(UnitSystem.METRIC)));
    }

    /** Either the drawing has a flag and the words explain it, or the words say where else the pan should go. */
    @Test
    void thePlaceForASimmerIsToldWhereverItLies() {
        Scenario base = scene.scenario();
        PanResult study = PanScenes.study(base);
        SimmerPlace found = study.simmer().orElseThrow();
        for (MoveStudy.Move move : new MoveStudy.Move[] {MoveStudy.Move.PULL_BACK, MoveStudy.Move.RAISE}) {
            PanResult there = new PanResult(
                    study.base(),
                    study.here(),
                    study.moves(),
                    Optional.of(new SimmerPlace(move, found.stretch(), found.position())),
                    study.best(),
                    study.directWatts(),
                    study.run());
            PullState state = PullState.next(Optional.empty(), base, PanScenes.studied(there), false);
            String said = new CurveState(state, Optional.empty(), Optional.empty(), UnitSystem.METRIC).sentence();
            boolean along = move == MoveStudy.Move.PULL_BACK;
            assertEquals(along, said.contains("The flag marks the place recommended for a simmer."), said);
            assertEquals(!along, said.matches(".* For a simmer (raise|lower) the pan by .*"), said);
        }
    }

    /** A pan that gets a third more elsewhere is told so; one that gets no more is not sent about. */
    @Test
    void thePlaceOfMostHeatIsToldWhereItIsWorthAMove() {
        Scenario base = scene.scenario();
        PanResult study = PanScenes.study(base);
        PanPosition at = study.best().position();
        for (double times : new double[] {1, 1.34}) {
            Estimate watts = new Estimate(times * study.here().cookingPower().value(), 1);
            BestPlace best = new BestPlace(MoveStudy.Move.RAISE, with(at, watts), 0.03, 0.07, Optional.empty());
            PanResult there = new PanResult(
                    study.base(), study.here(), study.moves(), study.simmer(), best, study.directWatts(), study.run());
            PullState state = PullState.next(Optional.empty(), base, PanScenes.studied(there), false);
            String said = new RibbonState(state, Optional.empty(), UnitSystem.METRIC).sentence();
            assertTrue(said.startsWith("Here it will boil. For a simmer, "), said);
            assertEquals(
                    times > 1,
                    said.matches(".*; for most heat, raise the pan 5\u00a0cm \\(about \\d+\u00a0W more\\)\\.$"),
                    said);
        }
    }

    private static PanPosition with(PanPosition at, Estimate watts) {
        return new PanPosition(
                0.05,
                at.absorbed(),
                at.absorbedByFace(),
                watts,
                at.level(),
                at.peakFlux(),
                at.wallPeakFlux(),
                at.meanFlux(),
                at.wallShare(),
                at.undersideShare(),
                at.middleFlux(),
                at.evenness(),
                at.frying());
    }

    @Test
    void readsTheCellUnderThePointWithItsErrorAndSaysWhereItIs() {
        TraceResult result = PanScenes.answer(scene.scenario()).result().orElseThrow();
        FluxMap map = result.maps().crossing();
        int i = map.columns() / 2 + 3;
        int j = map.rows() / 2 - 5;
        int cell = j * map.columns() + i;
        Estimate flux = new Estimate(map.flux()[cell], map.standardError()[cell]);
        String said = new MapReadout(result, UnitSystem.METRIC).plane(new Place(map.first(i), map.second(j)));
        assertTrue(said.endsWith(new FigureFormat(UnitSystem.METRIC).flux(flux)), said);
        assertTrue(said.contains("\u00a0cm away from the sun, ") && said.contains("\u00a0cm left"), said);
        String inch = new MapReadout(result, UnitSystem.INCH).plane(new Place(-0.0254, 0.0508));
        assertTrue(inch.startsWith("1\u00a0in towards the sun, 2\u00a0in right: "), inch);
        String beside = new MapReadout(result, UnitSystem.METRIC).plane(new Place(0.13, 0));
        assertTrue(beside.startsWith("beside the pan, 13\u00a0cm away from the sun"), beside);
    }

    @Test
    void saysWhichSideOfTheWallIsRead() {
        TraceResult result = PanScenes.answer(scene.scenario()).result().orElseThrow();
        FluxMap wall = UnrolledWall.of(result).orElseThrow();
        MapReadout readout = new MapReadout(result, UnitSystem.METRIC);
        double quarter = Math.PI / 2 * result.scenario().target().radiusMetres();
        assertTrue(readout.wall(wall, new Place(0, 0.041)).startsWith("4.1\u00a0cm up the wall, away from the sun: "));
        assertTrue(readout.wall(wall, new Place(quarter, 0.041)).contains("wall, right: "));
        assertTrue(readout.wall(wall, new Place(-quarter, 0.041)).contains("wall, left: "));
        assertTrue(readout.wall(wall, new Place(1.99 * quarter, 0.041)).contains("wall, towards the sun: "));
        assertTrue(readout.wall(wall, new Place(1.5 * quarter, 0.041)).contains("wall, towards the sun, right: "));
    }

    @Test
    void thePlaceOfAPointOnTheCurveIsWhereItIsDrawn() {
        CurveFrame frame = new CurveFrame(new Scale(-0.2, 0.3, 58, 458), new Box(58, 20, 400, 150));
        for (double place = -0.2; place <= 0.3; place += 0.05) {
            assertEquals(place, frame.pullBack(frame.x(place)), 1e-12);
        }
        assertEquals(-0.2, frame.pullBack(0), 1e-12);
        assertEquals(0.3, frame.pullBack(9999), 1e-12);
        assertTrue(frame.hits(0.1, frame.x(0.1) + 8, 60));
        assertFalse(frame.hits(0.1, frame.x(0.1) + 12, 60));
        assertTrue(frame.inside(200, 60) && !frame.inside(30, 60) && !frame.inside(200, 190));
    }

    @Test
    void playsFromWhereItStandsToBothEndsAndBack() {
        PlayClock clock = new PlayClock(-0.1, 0.3, 0.05);
        assertEquals(0.05, clock.at(0), 1e-12);
        assertTrue(clock.at(0.1) > clock.at(0), "outwards first");
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (double t = 0; t < 2 * PlayClock.SECONDS_ONE_WAY; t += 0.01) {
            low = Math.min(low, clock.at(t));
            high = Math.max(high, clock.at(t));
        }
        assertEquals(-0.1, low, 1e-5);
        assertEquals(0.3, high, 1e-5);
        assertEquals(clock.at(1), clock.at(1 + 2 * PlayClock.SECONDS_ONE_WAY), 1e-12);
    }

    @Test
    void theCurveStaysWhileOnlyThePullBackChangesAndIsAnEarlierOneAfterAnyOtherChange() {
        Scenario base = scene.scenario();
        PanResult study = PanScenes.study(base);
        StudyState studies = PanScenes.studied(study);
        PullState first = PullState.next(Optional.empty(), base, studies, false);
        assertTrue(first.fits());
        Scenario pulled = base.withStand(new Stand(0.05, 0, 0, 0));
        PullState second = PullState.next(Optional.of(first), pulled, StudyState.NOTHING_YET, false);
        assertTrue(second.fits());
        assertSame(first.line().orElseThrow(), second.line().orElseThrow());
        assertEquals(0.05, second.presentMetres());
        Scenario raised = base.withStand(new Stand(0, 0, 0.05, 0));
        PullState third = PullState.next(Optional.of(second), raised, studies, false);
        assertFalse(third.fits());
        assertSame(first.line().orElseThrow(), third.line().orElseThrow());
    }

    /** The curve at the pan's place against a trace there: two ways of tracing the same light, 5 standard errors. */
    @Test
    void theCurveIsWhatATraceGivesThere() {
        Scenario base = scene.scenario();
        PanResult study = PanScenes.study(base);
        MoveCurve line = MoveCurve.of(study, MoveStudy.Move.PULL_BACK);
        PanPosition there = line.at(0.08);
        Estimate traced = PanScenes.answer(base.withStand(new Stand(0.08, 0, 0, 0)))
                .result()
                .orElseThrow()
                .useful();
        double error = Math.hypot(there.cookingPower().standardError(), traced.standardError());
        assertEquals(traced.value(), there.cookingPower().value(), 5 * error + 1e-3 * traced.value());
    }

    @Test
    void aDragIsUndoneInOneStepAndTypedInTheUnitsShown() {
        scene.answered();
        PullControl control = new PullControl(scene.document, scene.live, scene.studies, scene.units);
        control.take();
        control.pullTo(0.03);
        control.pullTo(0.0512);
        control.letGo();
        assertEquals(Optional.of("5.1 cm"), scene.document.state().typed("stand.pull-back"));
        scene.document.undo();
        assertEquals(0, scene.scenario().stand().pullBackMetres());
        scene.units.set(UnitSystem.INCH);
        control.step(1, true);
        assertEquals(Optional.of("1 in"), scene.document.state().typed("stand.pull-back"));
        control.step(-1, false);
        assertEquals(Optional.of("0.75 in"), scene.document.state().typed("stand.pull-back"));
        control.pullTo(99);
        assertTrue(scene.scenario().stand().pullBackMetres()
                <= control.stateProperty().get().highMetres() + 0.001);
    }

    @Test
    void playNeverStartsByItselfAndStopsWhenSomethingElseIsChanged() {
        scene.answered();
        PullControl control = new PullControl(scene.document, scene.live, scene.studies, scene.units);
        control.frame(1);
        assertEquals(0, scene.scenario().stand().pullBackMetres());
        assertFalse(control.playingProperty().get());
        control.play(10);
        control.frame(10.3);
        control.frame(10.6);
        control.frame(10.9);
        double there = scene.scenario().stand().pullBackMetres();
        assertTrue(there > 0.01, "moved to " + there);
        scene.document.change(Map.of("dish.hub", "70 mm"));
        assertFalse(control.playingProperty().get());
        control.frame(12);
        assertEquals(there, scene.scenario().stand().pullBackMetres());
        scene.document.undo();
        scene.document.undo();
        assertEquals(0, scene.scenario().stand().pullBackMetres());
    }

    @Test
    void aBareDiscHasNoCurve() throws ScenarioException {
        Scenario scenario = ScenarioReader.parse(
                        "disc",
                        "dish: {diameter: 1.0 m, focal-length: 0.6 m, surface: {cut: smooth}}\nplane: {disc: 20 cm}\n",
                        Path.of(""))
                .scenario();
        PullState state = PullState.next(Optional.empty(), scenario, StudyState.NOTHING_YET, false);
        CurveState seen = new CurveState(state, Optional.empty(), Optional.empty(), UnitSystem.METRIC);
        assertTrue(seen.sentence().startsWith("A bare disc"));
        assertTrue(state.highMetres() > state.lowMetres());
    }

    @Test
    void aCurveOnItsWaySaysSo() {
        Scenario base = scene.scenario();
        PanResult study = PanScenes.study(base);
        PullState first = PullState.next(Optional.empty(), base, PanScenes.studied(study), false);
        Scenario raised = base.withStand(new Stand(0, 0, 0.05, 0));
        StudyState working = new StudyState(
                Optional.of(raised),
                Optional.of(study),
                Optional.empty(),
                Optional.empty(),
                true,
                0.42,
                Optional.empty());
        PullState now = PullState.next(Optional.of(first), raised, working, false);
        CurveState seen = new CurveState(now, Optional.empty(), Optional.empty(), UnitSystem.METRIC);
        assertEquals("An earlier curve; the new one is being computed.", seen.sentence());
        assertNotSame(Optional.empty(), now.line());
    }

    /** Back at a place that has a study of its own, which looks at another stretch: the flag must be that one's. */
    @Test
    void theCurveOfThisVeryPlaceReplacesOneThatLooksElsewhere() {
        Scenario base = scene.scenario();
        Scenario pulled = base.withStand(new Stand(0.3, 0, 0, 0));
        PanResult far = PanStudy.run(pulled, TraceOptions.defaults().withRays(1 << 12), Progress.NONE);
        PanResult here = PanScenes.study(base);
        PullState first = PullState.next(Optional.empty(), pulled, PanScenes.studied(far), false);
        PullState held = PullState.next(Optional.of(first), base, PanScenes.studied(here), true);
        assertSame(far, held.line().orElseThrow().result());
        PullState back = PullState.next(Optional.of(first), base, PanScenes.studied(here), false);
        assertSame(here, back.line().orElseThrow().result());
    }
}
