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

    static BestParaboloid of(MeasuredPoints points) {
        double[][] normal = new double[TERMS][TERMS];
        double[] right = new double[TERMS];
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
        DMatrixRMaj found = new DMatrixRMaj(TERMS, 1);
        CommonOps_DDRM.solve(new DMatrixRMaj(normal), new DMatrixRMaj(TERMS, 1, true, right), found);
        double curve = found.get(3);
        double offX = -found.get(1) / (2 * curve);
        double offY = -found.get(2) / (2 * curve);
        return new BestParaboloid(
                midX + offX, midY + offY, midZ + found.get(0) - curve * (offX * offX + offY * offY), 1 / (4 * curve));
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
