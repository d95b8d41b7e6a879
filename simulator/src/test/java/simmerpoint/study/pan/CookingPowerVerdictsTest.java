package simmerpoint.study.pan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import simmerpoint.answer.pan.PanAnswer;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.HeatLevel;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.aim.AimPlan;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.units.UnitSystem;

/**
 * A wide pan with little water, whose dry wall takes up light that hardly reaches the water: most absorbed light and most heat
 * are two places and two aims. Boiling times come from the differential equation and judge the verdicts.
 */
class CookingPowerVerdictsTest {
    private static final TraceOptions OPTIONS = TraceOptions.defaults().withRays(1 << 15);
    private static Scenario shallow;
    private static PanResult study;

    @BeforeAll
    static void study() throws Exception {
        shallow = ScenarioReader.parse(
                        "shallow",
                        "dish: {diameter: 0.914 m, focal-length: 40 cm, surface: {cut: flat-rings, sectors: 24, rings: 6}}\n"
                                + "sun: {elevation: 55°, beam: 950 W/m²}\n"
                                + "pan: {diameter: 25 cm, water: 1 l}\n",
                        Path.of(""))
                .scenario();
        study = PanStudy.run(shallow, OPTIONS, Progress.NONE);
    }

    private static double boilSeconds(AbsorbedLight light) {
        return study.cooking().cooking().likelyBoilSeconds(light).orElse(Double.POSITIVE_INFINITY);
    }

    private static List<PanPosition> positions() {
        return study.moves().stream().flatMap(m -> m.positions().stream()).toList();
    }

    /** Most light is taken up some 8 cm lower, where it boils later; the place recommended boils sooner than the present one. */
    @Test
    void thePlaceForMostHeatBoilsSoonerAndIsNotThatOfMostLight() {
        PanPosition most = positions().stream()
                .max(Comparator.comparingDouble(p -> p.absorbed().value()))
                .orElseThrow();
        assertTrue(most.absorbed().value() > 1.05 * study.here().absorbed().value(), most.toString());
        double here = boilSeconds(study.here().absorbedByFace());
        assertTrue(boilSeconds(most.absorbedByFace()) > 1.05 * here, "the trap is not there");
        assertTrue(most.cookingPower().value() < study.here().cookingPower().value(), most.toString());
        assertTrue(study.best().isWorthAMove(study.here()));
        assertTrue(boilSeconds(study.best().position().absorbedByFace()) < here);
        String text = PanAnswer.of(study, UnitSystem.METRIC).toString().replace('\u00a0', ' ');
        long better = Math.round(study.best().position().cookingPower().value());
        assertTrue(
                text.matches("(?s).*For most heat [^:]*: " + better + " W go into the water instead of [0-9]+ W.*"),
                text);
    }

    /** No recommendation is worse than where the pan stands by its own figure. */
    @Test
    void theBestPlaceIsNeverWorseThanThePresentOne() {
        assertTrue(study.best().position().cookingPower().value()
                >= study.here().cookingPower().value());
        assertTrue(study.best().fromMetres() <= study.best().position().offsetMetres()
                && study.best().position().offsetMetres() <= study.best().toMetres());
    }

    /** The place of most heat is given as a zone: up to its ends all but a hundredth of the most is there, a little beyond less. */
    @Test
    void thePlaceOfMostHeatIsAZone() {
        BestPlace best = study.best();
        PanMove along = study.moves().stream()
                .filter(move -> move.move() == best.move())
                .findFirst()
                .orElseThrow();
        double most = along.at(best.position().offsetMetres()).cookingPower().value();
        double beyond = (along.toMetres() - along.fromMetres()) / 100;
        for (double end : new double[] {best.fromMetres(), best.toMetres()}) {
            assertTrue(along.at(end).cookingPower().value() >= (1 - BestPlace.ZONE) * most, "at " + end);
            double outside = end + Math.signum(end - best.position().offsetMetres()) * beyond;
            assertTrue(
                    !along.reaches(outside) || along.at(outside).cookingPower().value() < (1 - BestPlace.ZONE) * most,
                    "at " + outside);
        }
    }

    /** A border of a level within the 5 cm of the builders' habit does not make it hold: what is left of the heat does. */
    @Test
    void theHabitIsJudgedByHeatAndNotByABorder() throws Exception {
        Scenario tea = ScenarioReader.builtIn()
                .with(Map.of("stand.pull-back", "11 cm", "mirror.slope-error", "10 mrad"))
                .scenario();
        PanResult pan = PanStudy.run(tea, OPTIONS.withRays(1 << 14), Progress.NONE);
        PanMove along = pan.moves().get(0);
        PanPosition there = along.at(0.05);
        assertTrue(
                there.level().compareTo(pan.here().level()) < 0,
                there.level() + " behind " + pan.here().level());
        assertTrue(
                there.cookingPower().value() > 0.5 * pan.here().cookingPower().value(), there.toString());
        String text = PanAnswer.of(pan, UnitSystem.METRIC).toString();
        assertFalse(text.contains("So the rule of thumb holds."), text);
    }

    /** What a pan is said to need for a simmer is more than it has anywhere where it never simmers. */
    @Test
    void whatALevelNeedsDoesNotContradictWhatThePanHas() throws Exception {
        Scenario weak = ScenarioReader.builtIn()
                .with(Map.of("dish.diameter", "0.5 m", "dish.focal-length", "40 cm"))
                .scenario();
        PanResult pan = PanStudy.run(weak, OPTIONS.withRays(1 << 14), Progress.NONE);
        double most = pan.best().position().cookingPower().value();
        assertTrue(pan.heat().beginsWithPowerLikely(HeatLevel.SIMMER) > most, "most " + most);
        assertTrue(pan.heat().beginsWithPower(HeatLevel.SIMMER).high() > most, "most " + most);
        assertTrue(PanAnswer.of(pan, UnitSystem.METRIC).toString().contains("It never simmers"));
    }

    /** Places of equal absorbed watts boil or simmer by their cooking power: a higher level never has less of it than 3 %. */
    @Test
    void ofTwoPlacesTheOneOfHigherLevelHasMoreCookingPower() {
        int equalWatts = 0;
        for (PanPosition p : positions()) {
            for (PanPosition q : positions()) {
                if (p.level().compareTo(q.level()) > 0) {
                    double least = q.cookingPower().value()
                            - 0.03 * Math.abs(q.cookingPower().value())
                            - 2;
                    assertTrue(p.cookingPower().value() > least, p + " against " + q);
                    equalWatts += p.absorbed().value() < 1.01 * q.absorbed().value() ? 1 : 0;
                }
            }
        }
        assertTrue(equalWatts > 0, "no two places of equal watts differ in level");
    }

    /** A turn that is said to bring more makes the water boil sooner; most light would be another turn. */
    @Test
    void aTurnThatBringsMoreBoilsSooner() {
        AimResult aim = AimStudy.run(shallow, AimPlan.USUAL, OPTIONS, Progress.NONE);
        double deadOn = boilSeconds(aim.deadOn().trace().heat().orElseThrow().absorbed());
        TraceResult brightest = IntStream.rangeClosed(1, 16)
                .mapToObj(k -> turned(Math.toRadians(0.5 * k), 0))
                .max(Comparator.comparingDouble(t -> t.ledger().absorbed().value()))
                .orElseThrow();
        assertTrue(brightest.ledger().absorbed().value()
                > 1.02 * aim.deadOn().watts().absorbed().value());
        double boilsAt = deadOn;
        if (aim.betterThanDeadOn().isPresent()) {
            AimResult.Best best = aim.betterThanDeadOn().get();
            TraceResult there = turned(best.side() ? 0 : best.radians(), best.side() ? best.radians() : 0);
            boilsAt = boilSeconds(there.heat().orElseThrow().absorbed());
            assertTrue(boilsAt < deadOn, best.toString());
            double gain = there.useful().value() / aim.deadOnWatts().value() - 1;
            assertEquals(best.gainShare(), gain, 0.01);
        }
        assertTrue(boilSeconds(brightest.heat().orElseThrow().absorbed()) > boilsAt, "the trap is not there");
    }

    private static TraceResult turned(double up, double side) {
        return TraceStudy.run(shallow.withAim(shallow.aim().deadOn().plusTurn(up, side)), OPTIONS, Progress.NONE);
    }
}
