package simmerpoint.target;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * Principal axes of the spot.
 *
 * @param longSigma standard deviation of the light along the long axis, m
 * @param shortSigma standard deviation along the short axis, m
 * @param angleRadians direction of the long axis from +x towards +y, above −π/2 to π/2
 */
public record SpotEllipse(double longSigma, double shortSigma, double angleRadians) {
    /** From the second moments about the centroid, m²: xx, xy, yy. */
    static SpotEllipse ofMoments(double xx, double xy, double yy) {
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(2, true, true);
        if (!eigen.decompose(new DMatrixRMaj(new double[][] {{xx, xy}, {xy, yy}}))) {
            return new SpotEllipse(Math.sqrt(xx), Math.sqrt(yy), 0);
        }
        double first = eigen.getEigenvalue(0).getReal();
        double second = eigen.getEigenvalue(1).getReal();
        int larger = first >= second ? 0 : 1;
        DMatrixRMaj axis = eigen.getEigenVector(larger);
        double angle = Math.atan2(axis.get(1), axis.get(0));
        double turned = angle > Math.PI / 2 ? angle - Math.PI : angle <= -Math.PI / 2 ? angle + Math.PI : angle;
        return new SpotEllipse(
                Math.sqrt(Math.max(0, Math.max(first, second))),
                Math.sqrt(Math.max(0, Math.min(first, second))),
                turned);
    }
}
