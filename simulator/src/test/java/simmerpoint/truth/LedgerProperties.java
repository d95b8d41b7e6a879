package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Plane;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.Ledger;
import simmerpoint.target.Spot;

/** Laws of bookkeeping and scale that hold for any scene (conservation and dimensions; derived). */
class LedgerProperties {
    private static final long RAYS = 1L << 12;

    @Provide
    Arbitrary<Scene> scenes() {
        return AnyScenes.all();
    }

    @Property(seed = "101", tries = 150, shrinking = ShrinkingMode.OFF)
    void ledgerCloses(@ForAll("scenes") Scene scene) {
        TraceResult result = scene.trace(RAYS, 71);
        Ledger l = result.ledger();
        double rounding = 1e-9 * l.outline().value();
        assertTrue(rounding > 0);
        closes("outline", l.outline(), rounding, l.gap(), l.incident());
        closes("incident", l.incident(), rounding, l.shaded(), l.mirrorLoss(), l.scattered(), l.reflected());
        closes("reflected", l.reflected(), rounding, l.missed(), l.caught());
        closes("caught", l.caught(), rounding, l.underside(), l.wall(), l.lid());
        double lit = l.incident().value() - l.shaded().value();
        assertEquals(scene.mirror().lostShare() * lit, l.mirrorLoss().value(), rounding);
        assertEquals(scene.mirror().scatteredShare() * lit, l.scattered().value(), rounding);
        double landed = l.caught().value() + l.directOnPan().value();
        if (scene.target() instanceof Pan pan) {
            double most = pan.finish().absorptance() * landed;
            assertTrue(l.absorbed().value() <= most + rounding, "takes up more than its finish can");
            assertTrue(l.absorbed().value() >= 0.3 * most, "even grazing light is not all mirrored");
        } else {
            assertEquals(landed, l.absorbed().value(), rounding);
        }
        assertTrue(result.apertureArea() <= result.outlineArea() * (1 + 1e-12));
        if (scene.target() instanceof Plane) {
            closes("no pan", l.shaded(), 0);
            closes("no wall or lid", Estimate.exact(0), 0, l.wall(), l.lid(), l.directOnPan());
        }
        double intercept = result.spot().interceptFactor().value();
        assertTrue(intercept >= 0 && intercept <= 1 + 1e-12, "intercept " + intercept);
    }

    private static void closes(String what, Estimate whole, double rounding, Estimate... parts) {
        double sum = 0;
        for (Estimate part : parts) {
            assertTrue(part.value() >= -rounding, what + " has a negative part: " + part);
            assertTrue(part.standardError() >= 0, what + " has no error: " + part);
            sum += part.value();
        }
        assertEquals(whole.value(), sum, rounding, what);
    }

    /** Reflectance k times as high and beam m times as strong: watts follow, shares and places stay. */
    @Property(seed = "102", tries = 20, shrinking = ShrinkingMode.OFF)
    void powerScalesWithReflectanceAndBeam(@ForAll("scenes") Scene scene) {
        Mirror m = scene.mirror();
        double k = 0.5;
        Mirror duller = new Mirror(
                m.material(),
                k * m.reflectance(),
                m.scattered(),
                m.slopeErrorRadians(),
                m.beamSpreadRadians(),
                m.wideShare(),
                m.wideSpreadRadians(),
                m.dust(),
                m.panelTiltRadians());
        TraceResult a = scene.trace(RAYS, 72);
        TraceResult b = scene.with(duller).beam(3 * scene.beam()).trace(RAYS, 72);
        double exact = 1e-12;
        ratio(3, a.ledger().incident(), b.ledger().incident(), exact);
        ratio(3, a.ledger().shaded(), b.ledger().shaded(), exact);
        ratio(3, a.ledger().directOnPan(), b.ledger().directOnPan(), exact);
        ratio(3 * k, a.ledger().scattered(), b.ledger().scattered(), exact);
        ratio(3 * k, a.ledger().reflected(), b.ledger().reflected(), exact);
        ratio(3 * k, a.ledger().caught(), b.ledger().caught(), exact);
        ratio(k, a.spot().meanConcentration(), b.spot().meanConcentration(), exact);
        ratio(1, a.spot().interceptFactor(), b.spot().interceptFactor(), exact);
    }

    /** Every length twice as long: four times the watts, the same watts per area, every place twice as far off. */
    @Property(seed = "103", tries = 40, shrinking = ShrinkingMode.OFF)
    void doublingEveryLengthChangesNoFlux(@ForAll("scenes") Scene scene) {
        TraceOptions small = TraceOptions.defaults().withRays(RAYS).withSeed(73).withThreads(2);
        TraceResult a = scene.trace(small);
        TraceResult b = AnyScenes.scaled(scene, 2).trace(small.withPeakDiscRadius(2 * small.peakDiscRadius()));
        assertEquals(4 * a.apertureArea(), b.apertureArea(), 1e-9 * b.apertureArea());
        double same = 1e-9;
        ratio(4, a.ledger().incident(), b.ledger().incident(), same);
        ratio(4, a.ledger().shaded(), b.ledger().shaded(), same);
        ratio(4, a.ledger().wall(), b.ledger().wall(), same);
        ratio(4, a.ledger().caught(), b.ledger().caught(), same);
        Spot s = a.spot();
        Spot t = b.spot();
        ratio(1, s.meanConcentration(), t.meanConcentration(), same);
        ratio(1, s.interceptFactor(), t.interceptFactor(), same);
        ratio(1, s.peakFlux(), t.peakFlux(), same);
        ratio(2, s.centroidX(), t.centroidX(), same);
        assertEquals(s.radius50().isPresent(), t.radius50().isPresent());
        if (s.radius50().isPresent()) {
            ratio(2, s.radius50().orElseThrow(), t.radius50().orElseThrow(), same);
        }
    }

    private static void ratio(double k, Estimate a, Estimate b, double relative) {
        assertEquals(k * a.value(), b.value(), relative * Math.abs(k * a.value()) + 1e-300);
        assertEquals(k * a.standardError(), b.standardError(), 1e-6 * Math.abs(k * a.value()) + 1e-300);
    }
}
