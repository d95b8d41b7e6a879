package simmerpoint.study.likely;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import simmerpoint.answer.words.HeatSentences;
import simmerpoint.heat.HeatLevel;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.study.aim.AimPlan;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimStudy;
import simmerpoint.study.compare.CompareStudy;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.pan.LevelBorder;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.pan.PanStudy;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.units.UnitSystem;

/** Every command's range is that of {@link LikelyStudy} for the cooker, the place and the aim that it speaks of. */
class LikelyVerdictsTest {
    private static final TraceOptions OPTIONS =
            TraceOptions.defaults().withRays(1L << 15).withThreads(2);
    private static final String DISH =
            "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: flat-rings, sectors: 24, rings: 6}}\n"
                    + "mirror: {panel-tilt: 4 mrad}\npan: {diameter: 24 cm, height: 11 cm, water: 2 l, finish: black enamel}\n";

    private static CheckedScenario read(String text) throws Exception {
        return ScenarioReader.parse("t.yaml", text, Path.of(""));
    }

    private static LikelyResult trace(CheckedScenario read) {
        return LikelyStudy.run(read, LikelyStudy.FOR_RANGE, OPTIONS, Progress.NONE);
    }

    private static void near(LikelyRange wanted, LikelyRange got, double widths) {
        double allowed = widths * wanted.width();
        assertEquals(wanted.low(), got.low(), allowed);
        assertEquals(wanted.likely(), got.likely(), allowed);
        assertEquals(wanted.high(), got.high(), allowed);
    }

    /** Where the pan stands, and moved to the best place, as if the file said so: to a hundredth of the range. */
    @Test
    void thePlacesOfThePanHaveTheRangeOfATraceThere() throws Exception {
        CheckedScenario read = read(DISH);
        PanResult pan = PanStudy.run(read, OPTIONS, Progress.NONE);
        near(trace(read).power(), pan.base().likely().orElseThrow().power(), 0);
        String there =
                pan.best().move().key() + ": " + 100 * pan.best().position().offsetMetres() + " cm";
        LikelyResult moved = trace(read(DISH + "stand: {" + there + "}\n"));
        near(moved.power(), pan.best().likely().orElseThrow().power(), 0.01);
    }

    /** At the sure end of a border's range nine in ten traced cookers are past it, at the other end one in ten; 0.15 widths. */
    @Test
    void aBorderHoldsFourInFiveCookers() throws Exception {
        CheckedScenario read = read(DISH);
        PanMove along = PanStudy.run(read, OPTIONS, Progress.NONE).moves().get(0);
        LevelBorder boils = along.borders().stream()
                .filter(border -> border.after() == HeatLevel.BOIL && border.before() == HeatLevel.SIMMER)
                .findFirst()
                .orElseThrow();
        double room = 0.15 * (boils.highMetres() - boils.lowMetres());
        assertTrue(at(boils.highMetres() + room).lowest().compareTo(HeatLevel.BOIL) >= 0, boils.toString());
        assertTrue(at(boils.lowMetres() - room).highest().compareTo(HeatLevel.BOIL) < 0, boils.toString());
    }

    private static simmerpoint.heat.HeatLevelRange at(double pullBack) throws Exception {
        return trace(read(DISH + "stand: {pull-back: " + 100 * pullBack + " cm}\n"))
                .level()
                .orElseThrow();
    }

    /** Half as many cookers: the ends of each row's range to 0.15 of its width. */
    @Test
    void comparedCookersHaveTheirRange() throws Exception {
        CheckedScenario large = read(DISH);
        CheckedScenario small = read(DISH.replace("1.2 m", "0.9 m"));
        List<Variant> both = List.of(new Variant("a", "a", Map.of(), large), new Variant("b", "b", Map.of(), small));
        for (ComparedRow row : CompareStudy.run(both, OPTIONS, Progress.NONE).rows()) {
            LikelyResult alone = trace(row.variant().read());
            near(alone.power(), row.likely().orElseThrow().power(), 0.15);
            assertEquals(row.likely().orElseThrow().boil(), row.boil());
            assertTrue(row.likely().orElseThrow().power().low() < row.useful().value());
            assertTrue(row.likely().orElseThrow().power().high() > row.useful().value());
        }
    }

    /** Dead on is the aim without hand and drift: no doubt of aiming is left in its range. */
    @Test
    void deadOnHasTheRangeWithoutAiming() throws Exception {
        CheckedScenario read = read(DISH + "aim: {by-hand: 0\u00b0}\n");
        LikelyResult alone = trace(read);
        AimResult aim =
                AimStudy.run(read(DISH + "aim: {by-hand: 2\u00b0}\n"), AimPlan.USUAL, OPTIONS, false, Progress.NONE);
        near(alone.power(), aim.deadOnLikely().orElseThrow().power(), 0.15);
        assertEquals(
                0,
                aim.deadOnLikely().orElseThrow().shares().stream()
                        .filter(share -> share.name().equals("aiming by hand"))
                        .mapToDouble(share -> share.share())
                        .sum(),
                0.05);
    }

    /** "May or may not boil" names what decides: the largest share of the doubt, or the pan's losses where only they were looked at. */
    @Test
    void mayBoilNamesWhatDecides() throws Exception {
        CheckedScenario weak = read(DISH.replace("1.2 m", "0.62 m"));
        LikelyResult likely = trace(weak);
        TraceResult traced = simmerpoint.study.trace.TraceStudy.run(weak.scenario(), OPTIONS, Progress.NONE);
        String over = new HeatSentences(
                        traced.heat().orElseThrow(), traced.withLikely(likely).likely(), UnitSystem.METRIC)
                .boil();
        assertTrue(over.contains("may or may not boil"), over);
        assertTrue(over.contains("most depends on " + likely.shares().get(0).name()), over);
        CheckedScenario edge = read(DISH.replace("1.2 m", "0.64 m"));
        TraceResult alone = simmerpoint.study.trace.TraceStudy.run(edge.scenario(), OPTIONS, Progress.NONE);
        String losses = new HeatSentences(alone.heat().orElseThrow(), UnitSystem.METRIC).boil();
        assertEquals(
                losses.contains("may or may not boil"), losses.contains("most depends on what the pan loses"), losses);
    }
}
