package simmerpoint.dish.points;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * The paraboloid with its axis along z that lies nearest to points in height, z = z₀ + ((x − x₀)² + (y − y₀)²)/4f: linear least squares in
 * 1, x, y and x² + y² (any book on regression).
 *
 * @param vertexX x₀, m
 * @param vertexY y₀, m
 * @param vertexZ z₀, m
 * @param focalLength f, m; below 0 or infinite for points that do not gather light
 */
record BestParaboloid(double vertexX, double vertexY, double vertexZ, double focalLength) {
    private static final int TERMS = 4;

    private static final int MOST_POINTS = 20_000;

    static BestParaboloid of(MeasuredPoints points) {
        double[] right = new double[TERMS];
        double[][] normal = normal(points, right);
        DMatrixRMaj found = new DMatrixRMaj(TERMS, 1);
        CommonOps_DDRM.solve(new DMatrixRMaj(normal), new DMatrixRMaj(TERMS, 1, true, right), found);
        double curve = found.get(3);
        double offX = -found.get(1) / (2 * curve);
        double offY = -found.get(2) / (2 * curve);
        return new BestParaboloid(
                mean(points.x()) + offX,
                mean(points.y()) + offY,
                mean(points.z()) + found.get(0) - curve * (offX * offX + offY * offY),
                1 / (4 * curve));
    }

    /** The normal equations, places counted from the points' mean. */
    private static double[][] normal(MeasuredPoints points, double[] right) {
        double[][] normal = new double[TERMS][TERMS];
        double[] row = new double[TERMS];
        double midX = mean(points.x());
        double midY = mean(points.y());
        double midZ = mean(points.z());
        for (int i = 0; i < points.count(); i++) {
            row[0] = 1;
            row[1] = points.x()[i] - midX;
            row[2] = points.y()[i] - midY;
            row[3] = row[1] * row[1] + row[2] * row[2];
            for (int a = 0; a < TERMS; a++) {
                right[a] += row[a] * (points.z()[i] - midZ);
                for (int b = 0; b < TERMS; b++) {
                    normal[a][b] += row[a] * row[b];
                }
            }
        }
        return normal;
    }

    /**
     * Standard deviation of its focal length, by what those points are off it, m: that of the factor c of x² + y² times 4f², since
     * f = 1/4c (any book on regression); more where neighbours are off alike, as {@link AxisFit} has it.
     */
    double focalDeviation(MeasuredPoints all) {
        MeasuredPoints points = all.everyOther(1 + all.count() / MOST_POINTS);
        double[] rest = rest(points);
        double squares = 0;
        for (double each : rest) {
            squares += each * each;
        }
        DMatrixRMaj inverse = new DMatrixRMaj(normal(points, new double[TERMS]));
        CommonOps_DDRM.invert(inverse);
        double variance = squares
                / Math.max(1, points.count() - TERMS)
                * points.count()
                / all.count()
                * inverse.get(TERMS - 1, TERMS - 1);
        return 4 * focalLength * focalLength * Math.sqrt(variance) * AxisFit.alike(points, rest);
    }

    /** What every point lies above it, m. */
    double[] rest(MeasuredPoints points) {
        double[] rest = new double[points.count()];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = points.z()[i] - heightAt(points.x()[i], points.y()[i]);
        }
        return rest;
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** Its height, m. */
    double heightAt(double x, double y) {
        double dx = x - vertexX;
        double dy = y - vertexY;
        return vertexZ + (dx * dx + dy * dy) / (4 * focalLength);
    }
}
