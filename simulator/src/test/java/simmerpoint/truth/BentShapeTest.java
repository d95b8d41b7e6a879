package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import simmerpoint.dish.Curve;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.FromFile;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.dish.shape.RibChain;
import simmerpoint.dish.shape.ShapeError;
import simmerpoint.dish.shape.ShapeErrors;
import simmerpoint.pan.Plane;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.RootFinder;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.sun.Sunlight;
import simmerpoint.sun.UniformDiscSun;

/**
 * Shape errors against meshes that are really bent so, corner by corner, with heights written here from the words of the keys, and
 * against random slope of the same size.
 */
class BentShapeTest {
    private static final double FOCAL = 0.65;
    private static final double RIM = 0.6;
    private static final double HUB = 0.06;
    private static final int SECTORS = 16;
    private static final double ELEVATION = Math.toRadians(50);
    private static final TraceOptions OPTIONS = TraceOptions.defaults().withRays(1 << 15);

    /** A mesh of cells this fine has slopes of its own facets of some 0.5 mrad: within this share of the watts. */
    private static final double FACETS = 0.004;

    private static Scenario scenario(DishPlan dish, double disc) {
        Sunlight sun = new Sunlight(ELEVATION, 1000, new UniformDiscSun(0.00465));
        return new Scenario("", dish, Mirror.plain(1, 0.002), sun, Aim.PERFECT, new Plane(disc, 0), Stand.AT_FOCUS);
    }

    private static Estimate caught(Scenario scenario) {
        return PairedStudy.watts(List.of(scenario), OPTIONS, Progress.NONE)
                .get(0)
                .caught();
    }

    private static DishPlan strips() {
        return new DishPlan(2 * RIM, FOCAL, 2 * HUB, 0, new BentStrips(SECTORS));
    }

    /** Watts on a disc small enough to lose light: equal within the facets' share and 4 standard errors. */
    private static void assertLikeMesh(ShapeError error, double metres, double disc, DoubleBinaryOperator height) {
        DishPlan mesh =
                new DishPlan(2 * RIM, FOCAL, 0, 0, new FromFile(FineMesh.of(SECTORS, HUB, RIM, 120, 12, height)));
        Scenario planned = scenario(strips(), disc);
        Estimate plan = caught(planned);
        Estimate bent = caught(planned.withShape(ShapeErrors.NONE.with(error, metres)));
        Estimate truth = caught(scenario(mesh, disc));
        double chance = 4 * Math.hypot(bent.standardError(), truth.standardError());
        assertTrue(
                Math.abs(plan.value() - truth.value()) > 0.02 * plan.value(),
                "the error is seen: " + plan.value() + " and " + truth.value());
        assertEquals(truth.value(), bent.value(), FACETS * plan.value() + chance, error + ", planned " + plan.value());
    }

    /** A place in its sector: along the bisector and across it. */
    private static double[] inSector(double x, double y) {
        double half = Math.PI / SECTORS;
        double turn = Math.atan2(y, x);
        int k = (int) Math.floor((turn < 0 ? turn + 2 * Math.PI : turn) / (2 * half));
        double angle = (2 * k + 1) * half;
        return new double[] {x * Math.cos(angle) + y * Math.sin(angle), y * Math.cos(angle) - x * Math.sin(angle)};
    }

    /** Height of strips on ribs that lie {@code lift} above the parabola: straight from rib to rib at equal distance from the axis. */
    private static DoubleBinaryOperator onRibs(DoubleBinaryOperator lift) {
        double half = Math.PI / SECTORS;
        return (x, y) -> {
            double[] place = inSector(x, y);
            double r = place[0] / Math.cos(half);
            double bisector = Math.atan2(y, x) - Math.atan2(place[1], place[0]);
            double share = (place[1] / (place[0] * Math.tan(half)) + 1) / 2;
            double first = lift.applyAsDouble(r * Math.cos(bisector - half), r * Math.sin(bisector - half));
            double second = lift.applyAsDouble(r * Math.cos(bisector + half), r * Math.sin(bisector + half));
            return r * r / (4 * FOCAL) + (1 - share) * first + share * second;
        };
    }

    @Test
    void sheetThatHangsBetweenRibs() {
        double sag = 0.004;
        double half = Math.PI / SECTORS;
        assertLikeMesh(ShapeError.SHEET_SAG, sag, 0.08, (x, y) -> {
            double[] place = inSector(x, y);
            double u = (place[1] / (place[0] * Math.tan(half)) + 1) / 2;
            double beam = 16.0 / 5 * (u - 2 * u * u * u + u * u * u * u);
            double wide = place[0] / (RIM * Math.cos(half));
            double press = Math.sin(ELEVATION) - Math.cos(ELEVATION) * x / (2 * FOCAL);
            return onRibs((a, b) -> 0).applyAsDouble(x, y) - sag * press * beam * Math.pow(wide, 4);
        });
    }

    @Test
    void sheetThatBulges() {
        double bulge = 0.002;
        double half = Math.PI / SECTORS;
        assertLikeMesh(ShapeError.SHEET_BULGE, bulge, 0.08, (x, y) -> {
            double[] place = inSector(x, y);
            double u = (place[1] / (place[0] * Math.tan(half)) + 1) / 2;
            double wide = place[0] / (RIM * Math.cos(half));
            return onRibs((a, b) -> 0).applyAsDouble(x, y) + 4 * bulge * u * (1 - u) * wide * wide;
        });
    }

    @Test
    void dishThatSprangBack() {
        double shallower = 0.006;
        assertLikeMesh(
                ShapeError.SPRINGBACK, shallower, 0.08, onRibs((x, y) -> -shallower * (x * x + y * y) / (RIM * RIM)));
    }

    @Test
    void twistedRim() {
        double twist = 0.008;
        assertLikeMesh(ShapeError.TWIST, twist, 0.08, onRibs((x, y) -> 2 * twist * x * y / (RIM * RIM)));
    }

    /** Ribs bent piece by piece by a pull at their tips, so that they rise everywhere; a spoke's length shorter by a millimetre. */
    @Test
    void rimPulledIn() {
        double pulled = 0.001;
        RibChain bent = RibChain.straight(RIM, FOCAL).pulledIn(pulled);
        assertLikeMesh(
                ShapeError.RIM_PULLED_IN,
                pulled,
                0.08,
                onRibs((x, y) -> bent.heightAt(Math.hypot(x, y)) - (x * x + y * y) / (4 * FOCAL)));
    }

    /** Every rib bent piece by piece by the weight of its sector, the upper ones otherwise than the lower ones. */
    @Test
    void dishThatHangsFromItsMiddle() {
        double hanging = 0.008;
        RibChain plan = RibChain.straight(RIM, FOCAL);
        List<RibChain> ribs = IntStream.range(0, SECTORS)
                .mapToObj(k -> plan.hanging(hanging, ELEVATION, 2 * Math.PI * k / SECTORS))
                .toList();
        assertLikeMesh(ShapeError.DISH_SAG, hanging, 0.08, onRibs((x, y) -> {
            long rib = Math.floorMod(Math.round(Math.atan2(y, x) * SECTORS / (2 * Math.PI)), SECTORS);
            return ribs.get((int) rib).heightAt(Math.hypot(x, y)) - (x * x + y * y) / (4 * FOCAL);
        }));
    }

    /** Strips on ribs of a circle of radius 2f and of a chain hung between the rim's ends, z = c·(cosh(r/c) − 1) with its depth. */
    @ParameterizedTest
    @EnumSource(Curve.class)
    void ribsOfAnotherCurve(Curve curve) {
        double radius = 2 * FOCAL;
        double depth = RIM * RIM / (4 * FOCAL);
        double c = RootFinder.to(1e-12, 200).find(s -> s * (Math.cosh(RIM / s) - 1) - depth, 0.5, 3);
        DoubleBinaryOperator rib = switch (curve) {
            case PARABOLA -> (x, y) -> (x * x + y * y) / (4 * FOCAL);
            case CIRCLE -> (x, y) -> radius - Math.sqrt(radius * radius - x * x - y * y);
            case HANGING_CHAIN -> (x, y) -> c * (Math.cosh(Math.hypot(x, y) / c) - 1);
        };
        FromFile mesh = new FromFile(FineMesh.of(
                SECTORS, HUB, RIM, 120, 12, onRibs((x, y) -> rib.applyAsDouble(x, y) - (x * x + y * y) / (4 * FOCAL))));
        Scenario plan = scenario(strips(), 0.05);
        Scenario other = plan.withDish(new DishPlan(2 * RIM, FOCAL, 2 * HUB, 0, new BentStrips(SECTORS, curve)));
        Estimate truth = caught(scenario(new DishPlan(2 * RIM, FOCAL, 0, 0, mesh), 0.05));
        Estimate found = caught(other);
        double all = caught(plan).value();
        assertTrue(curve == Curve.PARABOLA || truth.value() < 0.96 * all, truth + " of " + all);
        assertEquals(
                truth.value(),
                found.value(),
                FACETS * all + 4 * Math.hypot(found.standardError(), truth.standardError()));
    }

    /** Panels that are flat between the rings' borders stay flat: their corners go down with the ribs. */
    @Test
    void flatPanelsOnRibsThatSprangBack() {
        double shallower = 0.012;
        int rings = 6;
        DishPlan plan =
                new DishPlan(2 * RIM, FOCAL, 2 * HUB, 0, new FlatRings(SECTORS, rings, RingSpacing.EQUAL_WIDTH));
        double perSquare = 1 / (4 * FOCAL) - shallower / (RIM * RIM);
        // One cell a panel: its four corners lie in a plane.
        FromFile mesh = new FromFile(FineMesh.of(SECTORS, HUB, RIM, rings, 1, (x, y) -> perSquare * (x * x + y * y)));
        Estimate truth = caught(scenario(new DishPlan(2 * RIM, FOCAL, 0, 0, mesh), 0.1));
        Scenario planned = scenario(plan, 0.1);
        Estimate bent = caught(planned.withShape(ShapeErrors.NONE.with(ShapeError.SPRINGBACK, shallower)));
        assertTrue(bent.value() < 0.97 * caught(planned).value());
        assertEquals(truth.value(), bent.value(), 4 * Math.hypot(truth.standardError(), bent.standardError()));
    }

    /**
     * Springback of h has, over the mirror, a slope of h/R in the root mean square per axis (2hr/R² along the ribs, derived here). Random
     * slope of that size blurs the light for good; a dish that sprang back has another focus, and a disc moved there gets it all.
     */
    @Test
    void aCorrelatedErrorIsNoRandomSlope() {
        double shallower = 0.009;
        DishPlan dish = new DishPlan(2 * RIM, FOCAL, 2 * HUB, 0, new Smooth());
        double other = RIM * RIM / 4 / (RIM * RIM / 4 / FOCAL - shallower);
        Scenario planned = scenario(dish, 0.04);
        Scenario sprung = planned.withShape(ShapeErrors.NONE.with(ShapeError.SPRINGBACK, shallower));
        double sigma = Math.hypot(0.002, shallower / RIM);
        Scenario random = planned.withMirror(planned.mirror().withSlopeError(sigma));
        Stand moved = new Stand(other - FOCAL, 0, 0, 0);
        double all = caught(planned).value();
        assertTrue(caught(sprung).value() < 0.6 * all, "both errors cost much where the disc stands");
        assertTrue(caught(random).value() < 0.6 * all);
        double regained = caught(sprung.withStand(moved)).value();
        double blurred = caught(random.withStand(moved)).value();
        assertTrue(regained > 0.97 * all, regained + " of " + all);
        assertTrue(blurred < 0.6 * all, blurred + " of " + all);
    }

    /**
     * Spots grow otherwise: a shift of the focus moves every ring of the mirror by a fixed distance, 2h·r/R²·2 times the way to the focus,
     * and loses nothing until the outermost ring leaves the disc; the tail of random slope leaves it before.
     */
    @Test
    void aLittleSpringbackLosesNothingWhereRandomSlopeDoes() {
        double shallower = 0.0015;
        DishPlan dish = new DishPlan(2 * RIM, FOCAL, 2 * HUB, 0, new Smooth());
        Scenario planned = scenario(dish, 0.031).withMirror(Mirror.plain(1, 0));
        Scenario sprung = planned.withShape(ShapeErrors.NONE.with(ShapeError.SPRINGBACK, shallower));
        Scenario random = planned.withMirror(Mirror.plain(1, shallower / RIM));
        double all = caught(planned).value();
        assertTrue(
                caught(sprung).value() > 0.9995 * all,
                "sprung " + caught(sprung).value() + " of " + all);
        assertTrue(
                caught(random).value() < 0.997 * all, "random " + caught(random).value() + " of " + all);
    }
}
