package simmerpoint.dish.shape;

import java.util.List;
import java.util.stream.IntStream;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Vec;

/**
 * Equal sectors round the axis. Ribs stand at the angles 2πk/n from +x, so a rib is the dish's upper edge; sector k lies
 * between ribs k and k + 1, and in its own frame x runs along its bisector and y across, |y| ≤ x·tan(π/n). The arrays are shared and
 * not modified.
 */
public final class Sectors {
    private static final int FULL_TURN = 4;

    /** How many. */
    public final int count;
    /** Half the angle of a sector, rad. */
    public final double halfAngle;
    /** Its cosine. */
    public final double cosHalf;
    /** Its tangent. */
    public final double tanHalf;
    /** Cosine of each bisector's angle from +x. */
    public final double[] cos;
    /** Its sine. */
    public final double[] sin;

    /** Where each begins, as a {@link #turn}. */
    private final double[] first;
    /** The sector at the beginning of each of equal parts of a full turn, and at its end. */
    private final int[] guide;

    /** So many. */
    public Sectors(int count) {
        this.count = count;
        halfAngle = Math.PI / count;
        cosHalf = Math.cos(halfAngle);
        tanHalf = Math.tan(halfAngle);
        cos = new double[count];
        sin = new double[count];
        for (int k = 0; k < count; k++) {
            cos[k] = Math.cos((2 * k + 1) * halfAngle);
            sin[k] = Math.sin((2 * k + 1) * halfAngle);
        }
        first = IntStream.range(0, count)
                .mapToDouble(k -> turn(Math.cos(2 * k * halfAngle), Math.sin(2 * k * halfAngle)))
                .toArray();
        guide = new int[FULL_TURN * count + 1];
        int sector = 0;
        for (int part = 0; part < guide.length; part++) {
            while (sector < count - 1 && first[sector + 1] * count <= part) {
                sector++;
            }
            guide[part] = sector;
        }
    }

    /** Which sector the plan point (x, y) of the dish frame lies in: by table and comparison, five times as quick as by its angle. */
    public int at(double x, double y) {
        double turn = turn(x, y);
        int sector = guide[(int) (turn * count)];
        while (sector < count - 1 && turn >= first[sector + 1]) {
            sector++;
        }
        return sector;
    }

    /** A number from 0 to {@link #FULL_TURN} that rises with the angle from +x: how far along a square about the axis. */
    private static double turn(double x, double y) {
        if (y >= 0) {
            return x >= 0 ? y / (x + y) : 1 - x / (y - x);
        }
        return x < 0 ? 2 + y / (x + y) : 3 + x / (x - y);
    }

    /** Area of the regular polygon with corners at radius {@code r}. */
    public double polygonArea(double r) {
        return count * r * r * Math.sin(halfAngle) * cosHalf;
    }

    /** Its corners in plan, counter-clockwise. */
    public List<Point> corners(double r) {
        return IntStream.range(0, count)
                .mapToObj(k -> new Point(r * Math.cos(2 * k * halfAngle), r * Math.sin(2 * k * halfAngle)))
                .toList();
    }

    /** The point (x, y, z) of sector {@code k}'s frame in the dish frame. */
    public Vec point(int k, double x, double y, double z) {
        return new Vec(x * cos[k] - y * sin[k], x * sin[k] + y * cos[k], z);
    }
}
