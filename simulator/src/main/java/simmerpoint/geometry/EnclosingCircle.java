package simmerpoint.geometry;

import java.util.List;
import org.apache.commons.math3.geometry.enclosing.EnclosingBall;
import org.apache.commons.math3.geometry.enclosing.WelzlEncloser;
import org.apache.commons.math3.geometry.euclidean.twod.DiskGenerator;
import org.apache.commons.math3.geometry.euclidean.twod.Euclidean2D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** The smallest circle about points of a plane. */
public final class EnclosingCircle {
    private static final double SAME = 1e-12;

    private EnclosingCircle() {}

    /** Coordinates of its middle and its radius, m. */
    public static double[] of(List<Point> points) {
        EnclosingBall<Euclidean2D, Vector2D> ball = new WelzlEncloser<Euclidean2D, Vector2D>(SAME, new DiskGenerator())
                .enclose(points.stream().map(p -> new Vector2D(p.x(), p.y())).toList());
        return new double[] {ball.getCenter().getX(), ball.getCenter().getY(), ball.getRadius()};
    }
}
