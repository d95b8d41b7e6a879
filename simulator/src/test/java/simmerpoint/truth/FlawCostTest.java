package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.sampling.Estimate;
import simmerpoint.setup.Stand;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.Budgets;
import simmerpoint.study.budget.FlawCost;
import simmerpoint.study.budget.Sensitivity;
import simmerpoint.study.paired.PairedWatts;

/** What single flaws cost, held against closed forms; 1000 W/m² from straight above. */
class FlawCostTest {
    private static final long RAYS = 1L << 16;

    private static FlawCost only(Scene scene, String key) {
        BudgetResult budget = Budgets.of(scene.scenario(), RAYS);
        assertEquals(List.of(key), Budgets.keys(budget));
        FlawCost cost = Budgets.cost(budget, key);
        assertEquals(budget.total().value(), cost.offInTurn().value(), 1e-9);
        assertEquals(budget.total().value(), cost.onAlone().value(), 1e-9);
        return cost;
    }

    private static double disc(double diameter) {
        return 1000 * Math.PI * diameter * diameter / 4;
    }

    /**
     * Share of a Gaussian about the middle of a disc of radius {@code radius} with standard deviations a and b along two
     * axes: mean over θ of 1 − exp(−R²/(2(a²cos²θ + b²sin²θ))) (derived here: radius by Rayleigh's law, θ even).
     */
    private static double within(double radius, double a, double b) {
        int n = 200;
        double sum = 0;
        for (int k = 0; k < n; k++) {
            double theta = Math.PI * (k + 0.5) / n;
            double s2 = Math.pow(a * Math.cos(theta), 2) + Math.pow(b * Math.sin(theta), 2);
            sum += -Math.expm1(-radius * radius / (2 * s2));
        }
        return sum / n;
    }

    /**
     * Slope error of a smooth dish in parallel light on a disc at its focus: near the axis the share 1 − exp(−R²/2s²)
     * lands, s = 2σf (Rayleigh's law). Off the axis, for a place at r: way d = f + r²/4f, angle φ = 2·atan(r/2f) to the
     * axis, so s is 2σd/cos φ in the plane of incidence and 2σd·cos(φ/2) across (derived here, first order in σ; 3e-4
     * allowed for the second), meant over the area.
     */
    @ParameterizedTest
    @CsvSource({"5, 0.05", "5, 0.08", "1.5, 0.02"})
    void slopeErrorOfASmoothDish(double focal, double radius) {
        double sigma = 5e-3;
        Scene scene = Scene.of(Scene.smooth(1, focal, 0), Scene.disc(radius))
                .with(Scene.POINT)
                .with(Mirror.plain(1, sigma));
        int n = 400;
        double caught = 0;
        for (int k = 0; k < n; k++) {
            double r = 0.5 * Math.sqrt((k + 0.5) / n);
            double d = focal + r * r / (4 * focal);
            double phi = 2 * Math.atan(r / (2 * focal));
            caught += within(radius, 2 * sigma * d / Math.cos(phi), 2 * sigma * d * Math.cos(phi / 2)) / n;
        }
        double onAxis = -Math.expm1(-Math.pow(radius / (2 * sigma * focal), 2) / 2);
        assertEquals(onAxis, caught, 0.04 / focal);
        double wanted = disc(1) * (1 - caught);
        Check.near("slope error", wanted, only(scene, "slope-error").onAlone(), 3e-4 * disc(1));
    }

    /** What is caught goes with the share that is reflected, so the costs of shares are exact; rounding 1e-9. */
    @Test
    void sharesOfLightMultiply() {
        Scene scene = Scene.of(Scene.rings(1.2, 0.8, 0, 24, 6), Scene.disc(0.05))
                .with(new Mirror("own figures", 0.85, 0.02, 0, 0, 0, 0, 0.03, 0));
        BudgetResult budget = Budgets.of(scene.scenario(), RAYS);
        double built = budget.built().value();
        double perfect = budget.perfect().value();
        share(Budgets.cost(budget, "reflectance"), built, perfect, 0.85);
        share(Budgets.cost(budget, "scatter"), built, perfect, 0.98);
        share(Budgets.cost(budget, "dust"), built, perfect, 0.97);
        Sensitivity reflectance = Budgets.sensitivity(budget, "reflectance");
        assertEquals(built * 0.01 / 0.85, reflectance.slope().orElseThrow().value(), 1e-9);
        assertEquals(0, reflectance.bend().orElseThrow().value(), 1e-9);
    }

    private static void share(FlawCost cost, double built, double perfect, double kept) {
        assertEquals(built / kept - built, cost.offInTurn().value(), 1e-9);
        assertEquals(perfect * (1 - kept), cost.onAlone().value(), 1e-9);
    }

    /** On a disc that catches everything, reflectance alone costs what the ledger books as gone into the mirrors. */
    @Test
    void reflectanceCostsTheLedgersMirrorLoss() {
        Scene scene = Scene.of(Scene.smooth(1.2, 0.8, 0), Scene.disc(0.1)).with(Mirror.plain(0.85, 0));
        Estimate loss = scene.trace(RAYS, 71).ledger().mirrorLoss();
        Check.near("mirror loss", disc(1.2) * 0.15, loss, 0);
        assertEquals(loss.value(), only(scene, "reflectance").onAlone().value(), 1e-9);
    }

    /** A hub of diameter h takes πh²/4 of the beam where all other light is caught (definition). */
    @Test
    void hubCostsItsArea() {
        Scene scene = Scene.of(Scene.smooth(1.2, 0.8, 0.2), Scene.disc(0.1));
        Check.near("hub", disc(0.2), only(scene, "hub-and-gaps").onAlone(), 0);
    }

    /**
     * A pan under the zenith sun keeps parallel light off a circle as wide as itself, and all of it would have met the
     * pan. Of that the pan takes up what its finish takes of all focused light.
     */
    @Test
    void shadowOfAPanIsAsWideAsThePan() {
        Scene scene = Scene.of(Scene.smooth(1.2, 0.8, 0), Scene.pan(0.12, 0.1)).with(Scene.POINT);
        List<PairedWatts> pair = Budgets.pair(scene.scenario(), "pan-shadow", RAYS);
        Check.near("shadow", disc(0.24), pair.get(1).caughtBeyond(pair.get(0)), 0);
        assertEquals(0, pair.get(1).ledger().shaded().value());
        assertEquals(pair.get(0).ledger().directOnPan(), pair.get(1).ledger().directOnPan());
        assertTrue(only(scene, "pan-shadow").onAlone().value() > 0);
    }

    @Test
    void aBareDiscHasNoShadowToCost() {
        Scene scene = Scene.of(Scene.rings(1.2, 0.8, 0.06, 24, 6), Scene.disc(0.12));
        List<PairedWatts> pair = Budgets.pair(scene.scenario(), "pan-shadow", 1 << 12);
        assertEquals(new Estimate(0, 0), pair.get(1).caughtBeyond(pair.get(0)));
        assertTrue(Budgets.of(scene.scenario(), 1 << 12).absent().contains(Budgets.flaw("pan-shadow")));
    }

    /** Share of a disc that lies in another as large, their middles k radii apart (textbook: the lens). */
    private static double lens(double k) {
        return 2 / Math.PI * (Math.acos(k / 2) - k / 2 * Math.sqrt(1 - k * k / 4));
    }

    /**
     * Through a long dish the sun's image is a disc of radius f·tan θ. Drift by ε moves it by f·tan ε; a turn about the
     * vertex with the pan on its own stand by twice that (definitions of drift and turn). Of a disc as large as the image
     * the lens of both is left. Aberration of f = 20 D: 2e-3 allowed.
     */
    @ParameterizedTest
    @CsvSource({"1, 0", "0, 0.5", "-0.6, 0.8"})
    void driftAndTurnOfALongDish(double up, double side) {
        double f = 10;
        double image = f * Math.tan(Scene.SUN);
        Scene long20 = Scene.of(Scene.smooth(0.5, f, 0), Scene.disc(image));
        double drift = Scene.SUN;
        double k = f * Math.tan(drift * Math.hypot(up, side)) / image;
        double wanted = disc(0.5) * (1 - lens(k));
        Scene drifted = long20.drift(drift * up, drift * side);
        Check.near("drift", wanted, only(drifted, "drift").onAlone(), 2e-3 * disc(0.5));
        Scene turned = long20.turn(drift / 2 * up, drift / 2 * side, 0);
        Check.near("turn", wanted, only(turned, "turn").onAlone(), 2e-3 * disc(0.5));
    }

    /**
     * A pan one s off the middle of a Gaussian spot, its radius s: 0.267120 is caught in place of 0.393469 (Rice law,
     * evaluated elsewhere). Without slope error the point image lies just within the disc's rim: everything is caught.
     */
    @Test
    void panOutOfPlaceUnderAGaussianSpot() {
        Scene scene = Scene.of(Scene.smooth(0.5, 10, 0), Scene.disc(0.05))
                .with(Scene.POINT)
                .with(Mirror.plain(1, 2.5e-3))
                .with(new Stand(0, 0, 0, 0.05 * (1 - 1e-3)));
        BudgetResult budget = Budgets.of(scene.scenario(), RAYS);
        double wanted = disc(0.5) * (0.393469 - 0.267120);
        Check.near("place", wanted, Budgets.cost(budget, "pan-place").offInTurn(), 2e-3 * disc(0.5));
        Check.near(
                "slope",
                disc(0.5) * (1 - 0.267120),
                Budgets.cost(budget, "slope-error").offInTurn(),
                2e-3 * disc(0.5));
        Check.near("left", budget.total().value(), sum(budget), 1e-9);
    }

    /** Costs switched on alone and what they leave over. */
    private static Estimate sum(BudgetResult budget) {
        double sum = budget.leftAlone().value();
        for (FlawCost cost : budget.costs()) {
            sum += cost.onAlone().value();
        }
        return Estimate.exact(sum);
    }

    /**
     * At the best place a step a to any side of a round Gaussian spot costs a²R²/(4s⁴)·exp(−R²/2s²) of the light
     * (derived here: a quarter of a² times the Laplacian of the share, which is the Gaussian's slope at the rim times
     * its length; the next term is a²/s² = 4 % of it at most, 4 % allowed) and the slope is nought.
     */
    @Test
    void stepsFromTheBestPlaceBend() {
        double s = 0.05;
        double radius = 0.07;
        Scene scene = Scene.of(Scene.smooth(0.4, 4, 0), Scene.disc(radius))
                .with(Scene.POINT)
                .with(Mirror.plain(1, s / 8));
        BudgetResult budget = Budgets.of(scene.scenario(), RAYS);
        double loss =
                disc(0.4) * 1e-4 * radius * radius / (4 * Math.pow(s, 4)) * Math.exp(-radius * radius / (2 * s * s));
        for (String sideways : List.of("side", "slide")) { // under the zenith sun a slide is sideways too
            Sensitivity step = Budgets.sensitivity(budget, sideways);
            assertTrue(step.bends(), sideways);
            Check.near(sideways, -loss, step.bend().orElseThrow(), 0.04 * loss);
            Check.near(sideways, 0, step.slope().orElseThrow(), 1e-3 * loss);
        }
    }

    /**
     * Strips are straight from rib to rib: on a disc of 90 mm radius in the strips' own focal plane 0.823226 of a dish of
     * 12 strips' parallel light lands (lines of half length a·sin β, derived in {@link GoreTest}). Curved across, they
     * send all of it there: a circle of 63 mm in that plane.
     */
    @Test
    void stripsStraightAcross() {
        double way = 0.5 * Math.pow(Math.sin(Math.PI / 12), 2);
        Scene scene = Scene.of(Scene.strips(1.2, 0.5, 0, 12), Scene.disc(0.09))
                .with(Scene.POINT)
                .pullBack(-way);
        BudgetResult budget = Budgets.of(scene.scenario(), RAYS);
        double outline = 1000 * 6 * 0.36 * Math.sin(Math.PI / 6);
        Check.near(
                "strips",
                outline * (1 - 0.823226),
                Budgets.cost(budget, "flat-panels").offInTurn(),
                1e-6 * outline);
        // Rays are in single precision, good to 6e-8.
        assertEquals(outline, budget.perfect().value(), 6e-8 * outline);
    }
}
