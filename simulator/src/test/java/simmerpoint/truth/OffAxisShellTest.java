package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.AlteredSurface;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.cut.OffAxisShell;
import simmerpoint.dish.cut.ShellTape;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Direction;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;

/** A shell beside its axis against the same part of the full paraboloid, and against closed forms. */
class OffAxisShellTest {
    /** Cut by a circle 0.9 m wide, 0.5 m off the axis, from z = r²/4f with f = 0.54 m. */
    private static final double RADIUS = 0.45;

    private static final double OFFSET = 0.5;
    private static final double FOCAL = 0.54;

    private static DishPlan shell(boolean nearEndUp) {
        double rise = OFFSET * 2 * RADIUS / (2 * FOCAL);
        double height = Math.hypot(2 * RADIUS, rise);
        double depth = RADIUS * RADIUS / (4 * FOCAL) * 2 * RADIUS / height;
        ShellTape tape = new ShellTape(2 * RADIUS, height, depth);
        ShellTape exact = new ShellTape(0, 0, 0);
        return new DishPlan(2 * RADIUS, tape.focalLength(), 0, 0, new OffAxisShell(tape, exact, 0, nearEndUp, tape));
    }

    /** The full paraboloid of which only places within a circle beside the axis are mirror. */
    private record Part(double x) implements Cut {
        @Override
        public CutKind kind() {
            return Smooth.KIND;
        }

        @Override
        public MirrorSurface surface(DishPlan plan, Direction sunInDish) {
            return new AlteredSurface(new Smooth().surface(plan, sunInDish)) {
                @Override
                public double apertureArea() {
                    return Math.PI * RADIUS * RADIUS;
                }

                @Override
                public void fill(double[] u, double[] v, int n, MirrorPoints out) {
                    original.fill(u, v, n, out);
                    for (int i = 0; i < n; i++) {
                        boolean inside = Math.hypot(out.x[i] - x, out.y[i]) <= RADIUS;
                        out.panel[i] = inside ? out.panel[i] : MirrorPoints.GAP;
                    }
                }
            };
        }

        @Override
        public List<PanelOutline> outlines(DishPlan plan) {
            return List.of();
        }

        @Override
        public String description(DishPlan plan, String panels, DoubleFunction<String> length) {
            return "part of a paraboloid";
        }
    }

    private static DishPlan part(boolean nearEndUp) {
        return new DishPlan(2 * (OFFSET + RADIUS), FOCAL, 0, 0, new Part(nearEndUp ? -OFFSET : OFFSET));
    }

    /** Every line of the ledger within 4.5 standard errors of the difference; 8 figures in 4 arrangements. */
    @ParameterizedTest
    @CsvSource({"52, 0, false", "52, 0, true", "25, 0.03, false", "75, -0.02, true"})
    void isTheSamePartOfTheFullParaboloid(double elevation, double pullBack, boolean nearEndUp) {
        Scene scene = Scene.of(shell(nearEndUp), Scene.pan(0.09, 0.1))
                .with(Mirror.plain(0.85, 6e-3))
                .elevation(Math.toRadians(elevation))
                .pullBack(pullBack)
                .drift(0.01, -0.005);
        TraceResult own = scene.trace(1L << 17, 5);
        TraceResult part = scene.with(part(nearEndUp)).trace(1L << 18, 6);
        same(part.ledger().incident(), own.ledger().incident());
        same(part.ledger().shaded(), own.ledger().shaded());
        same(part.ledger().reflected(), own.ledger().reflected());
        same(part.ledger().caught(), own.ledger().caught());
        same(part.ledger().underside(), own.ledger().underside());
        same(part.ledger().wall(), own.ledger().wall());
        same(part.ledger().absorbed(), own.ledger().absorbed());
        same(part.spot().peakFlux(), own.spot().peakFlux());
        assertTrue(own.ledger().caught().value() > 50);
    }

    private static void same(Estimate expected, Estimate found) {
        double error = Math.hypot(expected.standardError(), found.standardError());
        assertEquals(expected.value(), found.value(), 4.5 * error + 1e-9 * expected.value());
    }

    /** Light of a perfect shell and a sun like a point meets in the focus: all of it lands on a disc of 1 mm. */
    @Test
    void parallelLightMeetsInTheFocus() {
        TraceResult result =
                Scene.of(shell(false), Scene.disc(0.001)).with(Scene.POINT).trace(1L << 14, 1);
        assertEquals(1000 * Math.PI * RADIUS * RADIUS, result.ledger().caught().value(), 1e-6);
        assertEquals(0, result.ledger().gap().value(), 0);
    }

    /** With the sun overhead a shell does not know which end is up. */
    @Test
    void bothWaysUpAreMirrorImages() {
        TraceResult down = Scene.of(shell(false), Scene.disc(0.01)).trace(1L << 16, 1);
        TraceResult up = Scene.of(shell(true), Scene.disc(0.01)).trace(1L << 16, 2);
        same(down.ledger().caught(), up.ledger().caught());
    }
}
