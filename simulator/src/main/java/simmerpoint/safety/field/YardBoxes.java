package simmerpoint.safety.field;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.dish.Aperture;
import simmerpoint.geometry.Vec;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.scenario.Scenario;

/** Boxes for the light of one cooker: fine about the focus, all the places where light can harm, and the yard about them. */
public final class YardBoxes {
    private static final int FINE_CELLS = 160_000;
    private static final int MIDDLE_CELLS = 880_000;
    private static final int WIDE_CELLS = 160_000;
    private static final double LEAST_CELL = 0.002;
    private static final double LEAST_REACH = 0.4;
    private static final double LARGEST_REACH = 8;
    private static final double MARGIN = 0.06;
    private static final double AROUND = 2;
    private static final int DIRECTIONS = 12;

    /** Room left for what rough mirrors, tilted panels and careless aim add to the closed form's reach. */
    private static final double ROOM = 1.3;

    private YardBoxes() {}

    /** From the finest to the coarsest. */
    public static List<FieldBox> of(Scenario scenario) {
        Yard yard = Yard.of(scenario);
        double f = scenario.dish().focalLengthMetres();
        Vec focus = yard.place(new Vec(0, 0, f));
        double half = Math.max(0.12, 0.22 * f);
        List<Vec> near = List.of(focus.minus(new Vec(half, half, half)), focus.plus(new Vec(half, half, half)));
        List<Vec> dish = places(scenario, yard);
        Vec[] ends = ends(dish);
        Vec wide = new Vec(AROUND, AROUND, 0.5);
        return List.of(
                box(ends(near), FINE_CELLS),
                box(ends, MIDDLE_CELLS),
                box(new Vec[] {ends[0].minus(wide), ends[1].plus(wide)}, WIDE_CELLS));
    }

    private static FieldBox box(Vec[] ends, int cells) {
        Vec low = new Vec(ends[0].x(), ends[0].y(), Math.max(0, ends[0].z()));
        return FieldBox.around(
                low, new Vec(ends[1].x(), ends[1].y(), Math.max(low.z() + 0.1, ends[1].z())), cells, LEAST_CELL);
    }

    /** Farthest place from the focus at which a perfect dish's light and the strongest sun's together still harm; see {@link #reach}. */
    public static double reach(Scenario scenario) {
        double rho = scenario.built().shares().largestReflected();
        double beam = StrongestSun.beam(scenario);
        double f = scenario.dish().focalLengthMetres();
        double spare = Math.max(200, Hazard.DISCOMFORT.wattsPerSquareMetre() - beam);
        double cos = Math.cos(scenario.dish().rimAngle() / 2);
        // ζ = f √(ρ DNI/q)/cos²(ψ/2), from the paraboloid's geometry.
        return Math.max(LEAST_REACH, Math.min(LARGEST_REACH, ROOM * f * Math.sqrt(rho * beam / spare) / (cos * cos)));
    }

    private static List<Vec> places(Scenario scenario, Yard yard) {
        double f = scenario.dish().focalLengthMetres();
        Aperture edge = scenario.dish().aperture();
        double rim = scenario.dish().rimAngle();
        double reach = reach(scenario);
        List<Vec> places = new ArrayList<>();
        places.add(yard.place(new Vec(0, 0, 0)));
        places.add(yard.place(new Vec(0, 0, f + reach)));
        for (int k = 0; k < DIRECTIONS; k++) {
            double phi = 2 * Math.PI * k / DIRECTIONS;
            double c = Math.cos(phi);
            double s = Math.sin(phi);
            places.add(
                    yard.place(scenario.dish().onMirror(edge.x() + edge.radius() * c, edge.y() + edge.radius() * s)));
            double out = reach * Math.sin(rim);
            places.add(yard.place(new Vec(out * c, out * s, f + reach * Math.cos(rim))));
        }
        return places;
    }

    private static Vec[] ends(List<Vec> places) {
        double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
        double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (Vec place : places) {
            double[] at = {place.x(), place.y(), place.z()};
            for (int k = 0; k < 3; k++) {
                low[k] = Math.min(low[k], at[k] - MARGIN);
                high[k] = Math.max(high[k], at[k] + MARGIN);
            }
        }
        return new Vec[] {new Vec(low[0], low[1], low[2]), new Vec(high[0], high[1], high[2])};
    }
}
