package simmerpoint.study.likely;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevel;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.doubts.DoubtSize;
import simmerpoint.scenario.doubts.ScenarioDoubts;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.DoubtShare;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.uncertainty.LikelyRange;

class LikelyStudyTest {
    private static final TraceOptions OPTIONS = TraceOptions.defaults().withThreads(2);
    private static final double Z = 1.281552;
    private static final String DISH =
            "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: flat-rings, sectors: 24,"
                    + " rings: 6}}\nmirror: {panel-tilt: 4 mrad}\n";
    private static final String PAN = DISH + "pan: {diameter: 24 cm, height: 11 cm, water: 2 l}\n";

    /** Nothing in doubt but what is named: every ± of 0 takes out the usual one. */
    private static final String EXACT =
            "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: flat-rings, sectors: 24,"
                    + " rings: 6}}\nplane: {disc: 30 cm}\nstand: {pull-back: 0 cm ± 0 cm, side: 0 cm ± 0 cm}\n";

    private static CheckedScenario read(String text) throws Exception {
        return ScenarioReader.parse("t.yaml", text, Path.of(""));
    }

    private static LikelyResult run(String text) throws Exception {
        return LikelyStudy.run(read(text), LikelyStudy.FOR_SHARES, OPTIONS, Progress.NONE);
    }

    private static String exactButFor(String mirror, String beam, String hand) {
        return EXACT + "mirror: {reflectance: " + mirror + ", scattered: 0 ± 0, slope-error: 3 mrad ± 0 mrad,"
                + " beam-spread: 0 mrad ± 0 mrad, wide-share: 0 ± 0, wide-spread: 0 mrad ± 0 mrad, dust: 0 ± 0,"
                + " panel-tilt: 0 mrad ± 0 mrad}\nsun: {beam: " + beam + "}\naim: {by-hand: " + hand + "}\n";
    }

    /** Without doubt every cooker is the traced one: its few rays are off by a hundredth at most. */
    @Test
    void withoutDoubtItIsThePlainTrace() throws Exception {
        CheckedScenario read = read(PAN);
        TraceResult trace = TraceStudy.run(read.scenario(), OPTIONS, Progress.NONE);
        LikelyResult none = LikelyStudy.run(ScenarioDoubts.none(read), 6, OPTIONS, Progress.NONE);
        Estimate plain = trace.useful();
        assertEquals(plain.value(), none.power().likely(), 0.005 * plain.value());
        assertEquals(plain.value(), none.power().low(), 0.01 * plain.value());
        assertEquals(plain.value(), none.power().high(), 0.01 * plain.value());
        assertEquals(
                trace.heat().orElseThrow().level(), none.level().orElseThrow().likely());
        double seconds = likelySeconds(none);
        assertEquals(likelySeconds(trace.heat().orElseThrow().boil()), seconds, 0.01 * seconds);
    }

    private static double likelySeconds(LikelyResult result) {
        return likelySeconds(result.boil().orElseThrow());
    }

    private static double likelySeconds(BoilingOutcome outcome) {
        return ((BoilingOutcome.Boils) outcome).seconds().likely();
    }

    /**
     * Watts on a disc that catches all light are reflectance × beam: standard deviations of 2 % and 3 % together 3.6 %, with
     * shares of 4/13 and 9/13. Tolerances: 0.1 standard deviations for an end of the range (PropagationTest), 0.05 for a share of
     * 512 draws.
     */
    @Test
    void twoFactorsMultiply() throws Exception {
        LikelyResult result = run(exactButFor("0.8 ± 0.032", "800 W/m² ± 48 W/m²", "0°"));
        double middle = result.power().likely();
        double deviation = Math.hypot(0.02, 0.03) * middle;
        assertEquals(middle + Z * deviation, result.power().high(), 0.1 * deviation);
        assertEquals(middle - Z * deviation, result.power().low(), 0.1 * deviation);
        assertEquals("how strong the sunlight is", result.shares().get(0).name());
        assertEquals(9.0 / 13, result.shares().get(0).share(), 0.05);
        assertEquals(4.0 / 13, result.shares().get(1).share(), 0.05);
        assertTrue(result.worthMeasuring().orElseThrow().measurement().contains("meter"));
        assertTrue(result.boil().isEmpty() && result.level().isEmpty());
    }

    /** A peak is not certain: to first order a dead-on aim costs nothing, hand aiming takes all the same. */
    @Test
    void aimingByHandCostsAndWidens() throws Exception {
        LikelyResult deadOn = run(exactButFor("0.8 ± 0", "800 W/m² ± 0 W/m²", "0°"));
        LikelyResult byHand = run(exactButFor("0.8 ± 0", "800 W/m² ± 0 W/m²", "4°"));
        assertTrue(byHand.power().likely() < 0.99 * deadOn.power().likely(), byHand.power() + " of " + deadOn.power());
        assertTrue(byHand.power().width() > 10 * deadOn.power().width());
        assertEquals("aiming by hand", byHand.shares().get(0).name());
        assertTrue(byHand.shares().get(0).share() > 0.5);
    }

    /** Four times the cookers: each end of the range stays within a tenth of its width. */
    @Test
    void moreCookersSayTheSame() throws Exception {
        ScenarioDoubts doubts = ScenarioDoubts.of(read(PAN));
        LikelyRange usual = LikelyStudy.run(doubts, LikelyStudy.FOR_RANGE, OPTIONS, Progress.NONE)
                .power();
        LikelyRange more = LikelyStudy.run(doubts, LikelyStudy.FOR_SHARES, OPTIONS, Progress.NONE)
                .power();
        assertEquals(more.low(), usual.low(), 0.1 * more.width());
        assertEquals(more.high(), usual.high(), 0.1 * more.width());
        assertEquals(more.likely(), usual.likely(), 0.1 * more.width());
    }

    @Test
    void doesNotDependOnThreads() throws Exception {
        ScenarioDoubts doubts = ScenarioDoubts.of(read(PAN));
        LikelyResult one = LikelyStudy.run(doubts, 5, OPTIONS.withThreads(1), Progress.NONE);
        assertEquals(one, LikelyStudy.run(doubts, 5, OPTIONS.withThreads(3), Progress.NONE));
    }

    /** A pan in so little light that it hardly boils: never boiling counts as an infinite time. */
    @Test
    void neverBoilingCountsAsInfinitelyLate() throws Exception {
        LikelyResult weak = run(PAN.replace("1.2 m", "0.62 m"));
        BoilingOutcome.MayBoil may = (BoilingOutcome.MayBoil) weak.boil().orElseThrow();
        assertTrue(may.share() > 0.1 && may.share() < 0.9, "share " + may.share());
        assertTrue(may.settlesCelsius().low() < 99);
        assertTrue(weak.level().orElseThrow().lowest().compareTo(HeatLevel.BOIL) < 0);
    }

    @Test
    void sharesAndWhatIsLeftMakeOne() throws Exception {
        LikelyResult result = run(PAN);
        double sum = result.shares().stream().mapToDouble(DoubtShare::share).sum();
        assertEquals(1, sum, 0.05);
        assertEquals(0.8, new DoubtShare("a", 0.36, DoubtSize.NONE, false, "", "").widthWithout(), 1e-12);
    }
}
