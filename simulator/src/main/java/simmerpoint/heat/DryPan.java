package simmerpoint.heat;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * A pan without water: dry, or with a film of oil, lid off. Its plate is one body of one temperature; underside and inside
 * lose to air and surroundings, the wall is a fin on the plate. The correlations are those of {@link PanFace}. Left out: hot
 * spots on the plate (a thin steel pan under a tight spot can be hundreds of K hotter in the middle), food, and the view
 * of the inside of the wall, so the plate's temperature is good to some 50 K and its spread says so.
 */
public final class DryPan {
    /** Infrared emissivity of an inside with a film of oil or a dark coat: handbooks, from memory, 0.8 to 0.9. */
    public static final double OILED_INSIDE = 0.85;

    /** Specific heat of cooking oil, J/(kg K): handbooks, from memory, 1900 to 2100. */
    private static final double OIL_SPECIFIC_HEAT = 2000;

    private static final double HOTTEST_KELVIN = 2000;
    private static final int MOST_STEPS = 200;
    private static final int QUADRATURE_STEPS = 200;

    private final ThermalPan vessel;
    private final Surroundings surroundings;
    private final double insideEmissivity;
    private final double heatCapacity;

    /**
     * One pan.
     *
     * @param vessel the pan; a lid is taken off
     * @param surroundings the weather
     * @param insideEmissivity infrared emissivity of the inside, 0 to 1: {@link #OILED_INSIDE}, or 0.2 for bare bright metal
     * @param oilKilograms oil in it, at least 0
     */
    public DryPan(ThermalPan vessel, Surroundings surroundings, double insideEmissivity, double oilKilograms) {
        ArgumentChecks.within("emissivity", insideEmissivity, 0, 1, "of 1");
        ArgumentChecks.notNegative("oil", oilKilograms, "kg");
        this.vessel = vessel.withLidOn(false);
        this.surroundings = surroundings;
        this.insideEmissivity = insideEmissivity;
        heatCapacity = vessel.heatCapacity() + oilKilograms * OIL_SPECIFIC_HEAT;
    }

    /** Temperature the plate settles at, °C. */
    public LikelyRange settles(AbsorbedLight absorbed) {
        return LossSpread.range(f -> settles(absorbed, f));
    }

    private double settles(AbsorbedLight absorbed, LossFactors factors) {
        Plate plate = new Plate(absorbed, factors);
        double low = Math.min(surroundings.airKelvin(), surroundings.skyKelvin()) - 1;
        if (plate.surplus(HOTTEST_KELVIN) >= 0) {
            return HOTTEST_KELVIN - PhysicalConstants.ZERO_CELSIUS;
        }
        double kelvin = new BrentSolver(0, 1e-7).solve(MOST_STEPS, plate::surplus, low, HOTTEST_KELVIN);
        return kelvin - PhysicalConstants.ZERO_CELSIUS;
    }

    /**
     * Time to bring the empty pan from the air's temperature to a frying temperature (180 °C is common practice), s;
     * infinite where it never gets there. ∫ C dT ÷ surplus by Simpson's rule (derived here from the balance).
     *
     * @param toCelsius 0 to 600 °C
     */
    public LikelyRange secondsTo(double toCelsius, AbsorbedLight absorbed) {
        ArgumentChecks.within("temperature", toCelsius, 0, 600, "°C");
        return LossSpread.range(f -> secondsTo(PhysicalConstants.kelvin(toCelsius), new Plate(absorbed, f)));
    }

    private double secondsTo(double goal, Plate plate) {
        double start = surroundings.airKelvin();
        if (goal <= start) {
            return 0;
        }
        if (plate.surplus(goal) <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double step = (goal - start) / QUADRATURE_STEPS;
        double sum = 0;
        for (int k = 0; k <= QUADRATURE_STEPS; k++) {
            double weight = k == 0 || k == QUADRATURE_STEPS ? 1 : k % 2 == 1 ? 4 : 2;
            sum += weight / plate.surplus(start + k * step);
        }
        return heatCapacity * sum * step / 3;
    }

    /** The balance of the plate with given light and losses. */
    private final class Plate {
        private final AbsorbedLight absorbed;
        private final PanFace underside;
        private final PanFace inside;
        private final DryWallFin wall;

        Plate(AbsorbedLight absorbed, LossFactors factors) {
            this.absorbed = absorbed;
            double factor = factors.dry();
            double height = vessel.pan().heightMetres();
            underside = PanFace.level(
                    PanFace.Kind.UNDERSIDE, vessel, vessel.underside().emissivity(), surroundings, factor);
            inside = PanFace.level(PanFace.Kind.LID, vessel, insideEmissivity, surroundings, factor);
            wall = new DryWallFin(
                    PanFace.wall(vessel, height, vessel.dryWall().emissivity(), surroundings, factor),
                    height,
                    vessel.material().conductivity() * vessel.sheetThickness());
        }

        double surplus(double kelvin) {
            double wallLight = absorbed.wetWallWatts() + absorbed.dryWallWatts();
            Losses losses = underside.at(kelvin).plus(inside.at(kelvin)).plus(wall.at(kelvin, wallLight));
            return absorbed.total() - losses.total();
        }
    }
}
