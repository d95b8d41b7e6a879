package simmerpoint.truth;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.pan.Plane;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.study.trace.TraceResult;

/**
 * Where the vertex ray lands: one flat mirror of 0.2 mm at the vertex of a dish of 0.8 m focal length, parallel light.
 * All wanted values are plane trigonometry on the definitions of drift, turn and the moves (derived here); bound 1 µm
 * beside 4 standard errors.
 */
class AimAndMovesTest {
    private static final double FOCAL = 0.8;

    private static Scene vertex() {
        return Scene.of(Scene.mesh(1.2, FOCAL, Tile.mesh(Tile.atVertex(2e-4))), Scene.disc(0.3))
                .with(Scene.POINT);
    }

    private static void lands(String what, double x, double y, Scene scene, double allowance) {
        TraceResult result = scene.trace(1L << 12, 121);
        Check.near(what + ", x", x, result.spot().centroidX(), allowance);
        Check.near(what + ", y", y, result.spot().centroidY(), allowance);
    }

    /** Sun higher by ε: f·tan ε down; sun to +y: as far to −y. */
    @ParameterizedTest
    @CsvSource({"0.02", "-0.035", "0.1"})
    void drift(double angle) {
        lands("up", -FOCAL * Math.tan(angle), 0, vertex().drift(angle, 0), 1e-6);
        lands("side", 0, -FOCAL * Math.tan(angle), vertex().drift(0, angle), 1e-6);
    }

    /** Axis too high by ε about a mount b behind the vertex, pan on its own stand: (2f + b)·ε up to first order. */
    @ParameterizedTest
    @CsvSource({"0.02, 0", "-0.035, 0.05", "0.03, 0.3"})
    void turnUnderAPanOnItsOwnStand(double angle, double mount) {
        double vertexRise = mount * Math.sin(angle);
        double vertexDrop = mount * (1 - Math.cos(angle));
        double spot = vertexRise + (FOCAL + vertexDrop) * Math.tan(2 * angle);
        lands("up", spot, 0, vertex().turn(angle, 0, mount), 1e-6);
        lands("side", 0, spot, vertex().turn(0, angle, mount), 1e-6);
        double firstOrder = (2 * FOCAL + mount) * angle;
        lands("first order", firstOrder, 0, vertex().turn(angle, 0, mount), 6 * FOCAL * Math.abs(Math.pow(angle, 3)));
    }

    /** If the dish carries the pan: f·ε up to first order, wherever the mount is; second order allowed for. */
    @ParameterizedTest
    @CsvSource({"0.02, 0", "-0.03, 0.3"})
    void turnWithThePan(double angle, double mount) {
        double second = 3 * FOCAL * angle * angle * Math.abs(angle);
        Aim up = new Aim(angle, 0, 0, 0, 0, mount, Aim.PanCarrier.DISH);
        Aim side = new Aim(0, angle, 0, 0, 0, mount, Aim.PanCarrier.DISH);
        lands("up", FOCAL * angle, 0, vertex().with(up), second);
        lands("side", 0, FOCAL * angle, vertex().with(side), second);
    }

    /**
     * On a disc that leans as a level pan does: a slide s moves the spot by s along the disc (away from the sun), a raise
     * h by −h·cot α, a side move by its opposite, a pull-back not at all.
     */
    @ParameterizedTest
    @CsvSource({"50", "25", "80"})
    void movesOfALevelDisc(double elevationDegrees) {
        double a = Math.toRadians(elevationDegrees);
        Scene scene = vertex().with(new Plane(0.8, Math.PI / 2 - a)).elevation(a);
        lands("pull-back", 0, 0, scene.with(new Stand(0.1, 0, 0, 0)), 1e-6);
        lands("slide", 0.05, 0, scene.with(new Stand(0, 0.05, 0, 0)), 1e-6);
        lands("raise", -0.04 / Math.tan(a), 0, scene.with(new Stand(0, 0, 0.04, 0)), 1e-6);
        lands("side", 0, -0.03, scene.with(new Stand(0, 0, 0, 0.03)), 1e-6);
        double all = 0.05 - 0.04 / Math.tan(a);
        lands("all", all, -0.03, scene.with(new Stand(0.1, 0.05, 0.04, 0.03)), 1e-6);
    }
}
