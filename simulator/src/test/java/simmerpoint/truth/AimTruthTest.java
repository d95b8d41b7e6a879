package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.study.aim.AimLead;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.aim.MisaimDirection;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.sun.GaussianSun;

/** Aiming against closed forms: the Rice law for what an aim loses, plane trigonometry for the lead. */
class AimTruthTest {
    private static final double FOCAL = 4;
    private static final double SIGMA = 5e-3;
    private static final TraceOptions OPTIONS =
            TraceOptions.defaults().withRays(1 << 16).withSeed(9).withThreads(2);

    /**
     * A dish so flat (20 cm across, 4 m focal length) under a Gaussian sun of 5 mrad that its spot is Gaussian with s = f·σ:
     * mirror points lie up to 0.06 % farther than f, and slant by 1/40 rad, which moves no share by over 2e-4.
     */
    private static Scene gaussian(double radius) {
        return Scene.of(Scene.smooth(0.2, FOCAL, 0), Scene.disc(radius * FOCAL * SIGMA))
                .with(new GaussianSun(SIGMA));
    }

    /** The law itself: values of the noncentral chi-square law, six digits (derived here by a separate program). */
    @ParameterizedTest
    @CsvSource({"0.5, 1, 0.357286", "1, 1, 0.267120", "1, 2, 0.730988", "2, 2, 0.396499"})
    void theRiceLawIsIntegratedRight(double a, double radius, double share) {
        assertEquals(share, RiceLaw.share(a, radius), 6e-7);
    }

    /** A drift by atan(a/f) moves the spot by a: what is caught is the law's share. 4 standard errors and 2e-4. */
    @ParameterizedTest
    @CsvSource({"0.5, 1", "1, 1", "1, 2", "2, 2"})
    void aDriftLosesWhatTheRiceLawSays(double a, double radius) {
        double drift = Math.atan(a * SIGMA);
        List<Scenario> scenarios = new ArrayList<>();
        scenarios.add(gaussian(radius).drift(drift, 0).scenario());
        scenarios.add(gaussian(radius).drift(0, -drift).scenario());
        double half = Math.toRadians(30);
        scenarios.add(gaussian(radius)
                .drift(drift * Math.cos(half), drift * Math.sin(half))
                .scenario());
        for (PairedWatts w : PairedStudy.watts(scenarios, OPTIONS, Progress.NONE)) {
            double reflected = w.ledger().reflected().value();
            Check.near("share", RiceLaw.share(a, radius), w.caught().times(1 / reflected), 2e-4);
        }
    }

    /**
     * Tolerances of drift are atan(a/f) with the law's a; those of a turn under a disc on its own stand half of that. 5
     * standard errors (chance 1 in 6,000 each, 24 angles) and 0.2 %: the spot's share is known to 2e-4, a tenth of it lost
     * over the angle.
     */
    @Test
    void tolerancesAreThoseOfTheRiceLaw() {
        for (double loss : new double[] {0.05, 0.1, 0.5}) {
            AimTolerance found = AimTolerance.of(List.of(gaussian(1.5).scenario()), loss, OPTIONS, Progress.NONE)
                    .get(0);
            double a = RiceLaw.offset(1.5, loss);
            for (MisaimDirection way : MisaimDirection.values()) {
                double wanted = Math.atan(a * SIGMA) / (way.isTurn() ? 2 : 1);
                Estimate angle = found.angle(way).orElseThrow();
                assertEquals(wanted, angle.value(), 5 * angle.standardError() + 2e-3 * wanted, way + ", loss " + loss);
            }
        }
    }

    /**
     * With the lead of the half interval the vertex ray is back in the middle when the sun has drifted half its way, whatever
     * the mount and the carrier. Second order allowed for, as in {@link AimAndMovesTest}.
     */
    @ParameterizedTest
    @CsvSource({"STAND, 0", "STAND, 0.3", "DISH, 0.3"})
    void theLeadBringsTheSpotBackInTheMiddleOfTheInterval(Aim.PanCarrier carrier, double mount) {
        double f = 0.8;
        double half = 0.03;
        Scene vertex = Scene.of(Scene.mesh(1.2, f, Tile.mesh(Tile.atVertex(2e-4))), Scene.disc(0.3))
                .with(Scene.POINT)
                .with(new Aim(0, 0, 0, 0, 0, mount, carrier));
        double share = AimLead.share(vertex.scenario()).orElseThrow();
        assertEquals(carrier == Aim.PanCarrier.DISH ? 1 : f / (2 * f + mount), share, 1e-12);
        TraceResult led = vertex.drift(half, 0).turn(share * half, 0, mount).trace(1L << 12, 5);
        Check.near("led", 0, led.spot().centroidX(), 6 * f * half * half * half);
        TraceResult left = vertex.drift(half, 0).trace(1L << 12, 5);
        Check.near("left alone", -f * Math.tan(half), left.spot().centroidX(), 1e-6);
    }

    /** The shadow of a stick along the axis, by plane trigonometry: 10 cm and 3° make 5.2408 mm. */
    @Test
    void theShadowIsTheSticksLengthTimesTheTangent() {
        assertEquals(5.2408e-3, AimLead.shadow(0.1, Math.toRadians(3)), 1e-7);
    }
}
