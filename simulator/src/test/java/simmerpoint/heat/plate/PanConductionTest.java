package simmerpoint.heat.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Discs with a rim that passes no heat, against closed forms. Figures are kelvin above the air. */
class PanConductionTest {
    private static final double RADIUS = 0.12;
    private static final double SPOT = 0.03;

    private static PanConduction disc(PanMesh mesh, double sheet, double capacity, double loss) {
        double[] sheets = new double[mesh.rings()];
        double[] capacities = new double[mesh.rings()];
        FluxCurve[] losses = new FluxCurve[mesh.rings()];
        Arrays.fill(sheets, sheet);
        Arrays.fill(capacities, capacity);
        Arrays.fill(losses, FluxCurve.linear(loss, 0));
        return new PanConduction(mesh, sheets, capacities, losses);
    }

    private static PanMesh rings(int n) {
        return new PanMesh(RADIUS, 0, n, 0, 1);
    }

    /** Watts spread evenly over the spot, whose edge is a border of rings. */
    private static double[] spot(PanMesh mesh, double watts) {
        double[] cells = new double[mesh.cells()];
        for (int ring = 0; ring < mesh.rings(); ring++) {
            if (mesh.middleRadius(ring) < SPOT) {
                Arrays.fill(
                        cells,
                        ring * mesh.sectors(),
                        (ring + 1) * mesh.sectors(),
                        watts * mesh.area(ring) / (Math.PI * SPOT * SPOT));
            }
        }
        return cells;
    }

    private static double[] steady(PanConduction disc, double[] watts) {
        return disc.steady(watts, new double[watts.length]);
    }

    /** At a border of rings: the mean of both, good to second order; in the middle by a parabola through two rings. */
    private static double at(PanMesh mesh, double[] t, double radius) {
        if (radius == 0) {
            return (9 * t[0] - t[mesh.sectors()]) / 8;
        }
        int border = (int) Math.round(radius / mesh.width(0));
        int inside = (border - 1) * mesh.sectors();
        return border == mesh.rings()
                ? (9 * t[inside] - t[inside - mesh.sectors()]) / 8
                : (t[inside] + t[inside + mesh.sectors()]) / 2;
    }

    /**
     * One spot on a thin disc: q/h + A I0(mr) inside, B [K0(mr) + I0(mr) K1(mR)/I1(mR)] outside, m² = h/(k t), A and B by
     * matching value and slope at the spot's edge. Evaluated apart from this project.
     */
    @ParameterizedTest
    @CsvSource({
        "0.180, 25, 200, 362.2297, 284.5255, 188.1609, 141.2385, 176.8388",
        "0.820, 25, 200, 220.5897, 202.6630, 179.9022, 168.0534, 176.8388",
        "0.0149, 25, 200, 1385.311, 786.472, 169.816, 23.183, 176.8388",
        "0.180, 3000, 600, 66.7794, 30.6560, 0.4570, 0.0003, 4.4210"
    })
    void oneSpotOnAThinDisc(
            double sheet, double loss, double watts, double middle, double edge, double half, double rim, double mean) {
        PanMesh mesh = rings(4800);
        PanConduction disc = disc(mesh, sheet, 0, loss);
        double[] input = spot(mesh, watts);
        double[] t = steady(disc, input);
        assertEquals(middle, at(mesh, t, 0), 1e-4 * middle);
        assertEquals(edge, at(mesh, t, SPOT), 1e-4 * edge);
        assertEquals(half, at(mesh, t, 0.06), 1e-4 * half + 5e-5);
        assertEquals(rim, at(mesh, t, RADIUS), 1e-4 * rim + 5e-5);
        assertEquals(watts, disc.lossWatts(t), 1e-6 * watts);
        double sum = 0;
        for (int ring = 0; ring < mesh.rings(); ring++) {
            sum += t[ring] * mesh.area(ring);
        }
        assertEquals(mean, sum / (Math.PI * RADIUS * RADIUS), 1e-4 * mean);
    }

    /** The mesh that pans have is good to a hundredth, on the steel and the aluminium disc of the same closed form. */
    @ParameterizedTest
    @CsvSource({"0.180, 362.2297, 188.1609, 141.2385", "0.820, 220.5897, 179.9022, 168.0534"})
    void theMeshOfPansIsFineEnough(double sheet, double middle, double half, double rim) {
        PanMesh mesh = new PanMesh(RADIUS, 0, PanMesh.of(RADIUS, 0.1).bottomRings(), 0, 24);
        double[] t = steady(disc(mesh, sheet, 0, 25), spot(mesh, 200));
        assertEquals(middle, at(mesh, t, 0), 1e-2 * middle);
        assertEquals(half, at(mesh, t, 0.06), 1e-2 * half);
        assertEquals(rim, at(mesh, t, RADIUS), 1e-2 * rim);
    }

    /**
     * A Gaussian spot of 200 W, s = 2 cm: series Σ c J0(b r/R)/(k t ((b/R)² + m²)) with J1(b) = 0, evaluated apart from this
     * project.
     */
    @ParameterizedTest
    @CsvSource({"0.180, 339.3389, 272.0885, 190.2852, 142.9712", "0.820, 215.2420, 199.7318, 180.3428, 168.5026"})
    void gaussianSpot(double sheet, double middle, double near, double half, double rim) {
        PanMesh mesh = rings(1200);
        double s = 0.02;
        double peak = 200 / (2 * Math.PI * s * s);
        double[] input = new double[mesh.cells()];
        Arrays.setAll(
                input, ring -> mesh.area(ring) * peak * Math.exp(-Math.pow(mesh.middleRadius(ring), 2) / (2 * s * s)));
        double[] t = steady(disc(mesh, sheet, 0, 25), input);
        assertEquals(middle, at(mesh, t, 0), 1e-3 * middle);
        assertEquals(near, at(mesh, t, 0.03), 1e-3 * near);
        assertEquals(half, at(mesh, t, 0.06), 1e-3 * half);
        assertEquals(rim, at(mesh, t, RADIUS), 1e-3 * rim);
    }

    /** Hardly any loss: middle to spot edge P/(4π k t), spot edge to rim P ln(R/a)/(2π k t), less what the loss over the disc takes. */
    @Test
    void withoutLossesOnlyTheSheetCounts() {
        PanMesh mesh = rings(1200);
        double[] sheets = new double[mesh.rings()];
        double[] capacities = new double[mesh.rings()];
        FluxCurve[] losses = new FluxCurve[mesh.rings()];
        Arrays.fill(sheets, 0.18);
        Arrays.fill(losses, FluxCurve.none());
        losses[mesh.rings() - 1] = FluxCurve.linear(1e9, 0);
        double[] t = steady(new PanConduction(mesh, sheets, capacities, losses), spot(mesh, 200));
        assertEquals(88.4194, at(mesh, t, 0) - at(mesh, t, SPOT), 1e-3 * 88.4);
        assertEquals(245.1507, at(mesh, t, SPOT), 2e-3 * 245);
    }

    /** Even light on a sheet of one temperature: P/(h A) (1 − exp(−h τ/c)), the textbook's first-order lag. */
    @Test
    void warmsAsAFirstOrderLag() {
        PanMesh mesh = PanMesh.of(RADIUS, 0);
        PanMesh flat = new PanMesh(RADIUS, 0, mesh.bottomRings(), 0, mesh.sectors());
        double capacity = 7832 * 434 * 0.003;
        PanConduction disc = disc(flat, 0.18, capacity, 25);
        double[] input = new double[flat.cells()];
        for (int cell = 0; cell < input.length; cell++) {
            input[cell] = 8000 * flat.area(cell / flat.sectors());
        }
        double[] t = new double[flat.cells()];
        double step = 0.5;
        for (int k = 0; k < 240; k++) {
            t = disc.after(step, input, t);
        }
        double wanted = 8000 / 25.0 * (1 - Math.exp(-25 * 120 / capacity));
        assertEquals(wanted, t[0], 2e-3 * wanted);
        assertEquals(t[0], t[flat.cells() - 1], 1e-6);
    }

    /** A spot off the middle, turned by a quarter, gives the same temperatures turned by a quarter. */
    @Test
    void turningTheLightTurnsTheTemperatures() {
        PanMesh mesh = new PanMesh(RADIUS, 0.1, 12, 4, 16);
        PanConduction pan = disc(mesh, 0.05, 0, 30);
        double[] input = new double[mesh.cells()];
        double[] turned = new double[mesh.cells()];
        input[6 * 16 + 3] = 100;
        turned[6 * 16 + 7] = 100;
        double[] a = steady(pan, input);
        double[] b = steady(pan, turned);
        for (int ring = 0; ring < mesh.rings(); ring++) {
            for (int sector = 0; sector < 16; sector++) {
                assertEquals(a[ring * 16 + sector], b[ring * 16 + (sector + 4) % 16], 1e-8);
            }
        }
    }

    /** The wall as a fin of the bottom: heat flows into it as into tanh(mL)/(mL) of its area, the textbook's fin. */
    @Test
    void theWallIsAFin() {
        double height = 0.1;
        PanMesh mesh = new PanMesh(RADIUS, height, 4, 400, 1);
        double[] sheets = new double[mesh.rings()];
        FluxCurve[] losses = new FluxCurve[mesh.rings()];
        Arrays.fill(sheets, 0, 4, 1e6);
        Arrays.fill(sheets, 4, mesh.rings(), 0.03);
        Arrays.fill(losses, 0, 4, FluxCurve.none());
        Arrays.fill(losses, 4, mesh.rings(), FluxCurve.linear(20, 0));
        double[] input = new double[mesh.cells()];
        input[0] = 100;
        double[] t = steady(new PanConduction(mesh, sheets, new double[mesh.rings()], losses), input);
        double reach = height * Math.sqrt(20 / 0.03);
        double fin = Math.tanh(reach) / reach * 20 * 2 * Math.PI * RADIUS * height;
        assertEquals(100 / fin, t[3], 1e-3 * t[3]);
    }
}
