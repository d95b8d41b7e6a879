package simmerpoint.heat.plate;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/**
 * Conduction along the sheet of a pan by finite volumes: each cell passes heat to its neighbours, takes up light and gives heat off
 * by its ring's {@link FluxCurve}. Newton's method in each step, a sparse Cholesky factor for each of its equations.
 */
final class PanConduction {
    private static final double ENOUGH_KELVIN = 1e-3;
    private static final double ENOUGH_IN_A_STEP = 0.1;
    private static final int MOST_STEPS = 100;

    private final PanMesh mesh;
    private final FluxCurve[] losses;
    private final double[] capacity;
    private final DMatrixSparseCSC matrix;
    private final int[] diagonal;
    private final double[] conductances;
    private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
            LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);

    /**
     * One pan.
     *
     * @param mesh its cells
     * @param sheet conductivity · thickness of each ring, W/K
     * @param capacity heat capacity of each ring's sheet, J/(m² K)
     * @param losses of each ring, both faces together
     */
    PanConduction(PanMesh mesh, double[] sheet, double[] capacity, FluxCurve[] losses) {
        this.mesh = mesh;
        this.losses = losses.clone();
        this.capacity = capacity.clone();
        matrix = matrix(sheet);
        diagonal = diagonal();
        conductances =
                Arrays.stream(diagonal).mapToDouble(k -> matrix.nz_values[k]).toArray();
    }

    private DMatrixSparseCSC matrix(double[] sheet) {
        int n = mesh.cells();
        DMatrixSparseTriplet entries = new DMatrixSparseTriplet(n, n, 5 * n);
        double[] sums = new double[n];
        for (int ring = 0; ring < mesh.rings(); ring++) {
            double along = sheet[ring] * mesh.width(ring) / mesh.around(ring);
            double outwards = ring + 1 < mesh.rings() ? outwards(ring, sheet) : 0;
            for (int sector = 0; sector < mesh.sectors(); sector++) {
                int cell = ring * mesh.sectors() + sector;
                if (mesh.sectors() > 1) {
                    join(entries, sums, cell, ring * mesh.sectors() + (sector + 1) % mesh.sectors(), along);
                }
                if (outwards > 0) {
                    join(entries, sums, cell, cell + mesh.sectors(), outwards);
                }
            }
        }
        for (int cell = 0; cell < n; cell++) {
            entries.addItem(cell, cell, sums[cell]);
        }
        DMatrixSparseCSC made = DConvertMatrixStruct.convert(entries, (DMatrixSparseCSC) null);
        made.sortIndices(null);
        return made;
    }

    /** Conductance from a cell to the next ring: half of each ring's width in series, W/K. */
    private double outwards(int ring, double[] sheet) {
        double here = mesh.width(ring) / (2 * sheet[ring]);
        double there = mesh.width(ring + 1) / (2 * sheet[ring + 1]);
        return mesh.outerBorder(ring) / (here + there);
    }

    private static void join(DMatrixSparseTriplet entries, double[] sums, int a, int b, double conductance) {
        entries.addItem(a, b, -conductance);
        entries.addItem(b, a, -conductance);
        sums[a] += conductance;
        sums[b] += conductance;
    }

    private int[] diagonal() {
        int[] places = new int[mesh.cells()];
        for (int cell = 0; cell < places.length; cell++) {
            places[cell] = matrix.nz_index(cell, cell);
        }
        return places;
    }

    /** Temperatures that stay, °C, for watts taken up by each cell; {@code guess} is where the search begins. */
    double[] steady(double[] watts, double[] guess) {
        return solve(watts, guess, guess, Double.POSITIVE_INFINITY, ENOUGH_KELVIN);
    }

    /** Temperatures {@code seconds} after {@code from}, °C, by one step of the implicit Euler rule. */
    double[] after(double seconds, double[] watts, double[] from) {
        return solve(watts, from, from, seconds, ENOUGH_IN_A_STEP);
    }

    private double[] solve(double[] watts, double[] guess, double[] from, double seconds, double enough) {
        double[] t = guess.clone();
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] next = newton(watts, t, from, seconds);
            double change = 0;
            for (int cell = 0; cell < t.length; cell++) {
                change = Math.max(change, Math.abs(next[cell] - t[cell]));
            }
            t = next;
            if (change < enough) {
                return t;
            }
        }
        throw new IllegalStateException("the temperatures of the pan do not converge");
    }

    private double[] newton(double[] watts, double[] t, double[] from, double seconds) {
        double[] right = new double[t.length];
        for (int cell = 0; cell < t.length; cell++) {
            int ring = cell / mesh.sectors();
            double area = mesh.area(ring);
            double slope = losses[ring].slopeAt(t[cell]);
            double stored = area * capacity[ring] / seconds;
            matrix.nz_values[diagonal[cell]] = conductances[cell] + area * slope + stored;
            right[cell] = watts[cell] - area * (losses[ring].at(t[cell]) - slope * t[cell]) + stored * from[cell];
        }
        if (!solver.setA(matrix)) {
            throw new IllegalStateException("the equations of the pan cannot be solved");
        }
        solver.setStructureLocked(true);
        DMatrixRMaj found = new DMatrixRMaj(t.length, 1);
        solver.solve(DMatrixRMaj.wrap(t.length, 1, right), found);
        return found.data;
    }

    /** Watts that the whole pan gives off. */
    double lossWatts(double[] celsius) {
        double sum = 0;
        for (int cell = 0; cell < celsius.length; cell++) {
            int ring = cell / mesh.sectors();
            sum += mesh.area(ring) * losses[ring].at(celsius[cell]);
        }
        return sum;
    }
}
