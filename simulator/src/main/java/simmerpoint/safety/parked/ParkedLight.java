package simmerpoint.safety.parked;

import java.util.List;
import java.util.Optional;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Plane;
import simmerpoint.safety.field.FieldBox;
import simmerpoint.safety.field.FieldStudy;
import simmerpoint.safety.field.LightField;
import simmerpoint.safety.field.Surface;
import simmerpoint.safety.field.Yard;
import simmerpoint.safety.field.YardLight;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Stand;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.sun.Sunlight;

/**
 * Traces a dish whose axis stands still while the sun shines from anywhere, without a pan. Light that meets the bowl again is
 * followed, and the far side of the bowl shades the near one. First into coarse cells all around, then into fine ones
 * about the hottest place.
 */
final class ParkedLight {
    private static final int COARSE_CELLS = 60_000;
    private static final int FINE_EDGE = 20;
    private static final double FINE_CELL = 0.015;

    /** Weaker light of the mirrors counts as none, W/m². */
    private static final double LEAST = 5;

    private final Scenario dish;
    private final TraceOptions options;

    ParkedLight(Scenario scenario, TraceOptions options) {
        dish = scenario.withTarget(new Plane(0.02, 0)).withStand(Stand.AT_FOCUS).withCooking(Optional.empty());
        this.options = options;
    }

    /**
     * The light under a sun off the axis.
     *
     * @param axisElevation of the dish, above 0 to π/2
     * @param up how much higher the sun stands, rad
     * @param side how far to the right of whoever looks along the axis it stands, rad
     * @param beam W/m²
     * @param things to tell the light of
     * @param stand places of what holds the pan up; empty if it is not there
     */
    ParkedSpot at(
            double axisElevation,
            double up,
            double side,
            double beam,
            List<Surface> things,
            List<Vec> stand,
            Progress progress) {
        Scenario parked = dish.withSun(
                        new Sunlight(axisElevation, beam, dish.sun().shape()))
                .withAim(dish.aim().deadOn().withDrift(up, side));
        FieldBox wide = wide(parked);
        YardLight coarse = cast(parked, wide, progress);
        LightField field = coarse.fields().get(0);
        Vec hot = coarse.hottest();
        if (field.at(hot).most() < LEAST) {
            return ParkedSpot.NONE;
        }
        YardLight fine = cast(parked, about(hot), progress);
        Vec place = fine.hottest();
        YardLight.Irradiance light = fine.new Probe().at(place);
        YardLight.Probe probe = coarse.new Probe();
        return new ParkedSpot(
                light.together(),
                light.standardError(),
                place,
                ground(field, beam),
                wall(field, beam),
                stand.stream().mapToDouble(at -> probe.at(at).together()).max().orElse(0),
                reach(field, beam),
                things.stream().map(thing -> probe.at(thing).together()).toList());
    }

    /** Fine cells about a place, above the ground. */
    private static FieldBox about(Vec hot) {
        double half = FINE_EDGE * FINE_CELL / 2;
        Vec corner = new Vec(hot.x() - half, hot.y() - half, Math.max(0, hot.z() - half));
        return new FieldBox(corner, FINE_CELL, FINE_EDGE, FINE_EDGE, FINE_EDGE);
    }

    private YardLight cast(Scenario parked, FieldBox box, Progress progress) {
        return FieldStudy.run(parked, options, List.of(box), List.of(false), progress)
                .get(0);
    }

    private static FieldBox wide(Scenario parked) {
        Yard yard = Yard.of(parked);
        double f = parked.dish().focalLengthMetres();
        double far = 1.2 * Math.max(f, parked.dish().diameterMetres()) + 0.5;
        Vec middle = yard.place(new Vec(parked.dish().aperture().x(), 0, f / 2));
        Vec low = middle.minus(new Vec(far, far, far));
        return FieldBox.around(
                new Vec(low.x(), low.y(), Math.max(0, low.z())),
                middle.plus(new Vec(far, far, far)),
                COARSE_CELLS,
                0.005);
    }

    private static double ground(LightField field, double beam) {
        FieldBox box = field.box();
        double most = 0;
        if (box.corner().z() > 0) {
            return 0;
        }
        for (int j = 0; j < box.ny(); j++) {
            for (int i = 0; i < box.nx(); i++) {
                most = field.sure(i, j, 0, most);
            }
        }
        return most >= LEAST ? most + beam : 0;
    }

    private static double wall(LightField field, double beam) {
        FieldBox box = field.box();
        double most = 0;
        for (int k = 0; k < box.nz(); k++) {
            for (int j = 0; j < box.ny(); j++) {
                for (int i = 0; i < box.nx(); i++) {
                    double here = field.sure(i, j, k, most);
                    if (here > most && level(box, i, j, k) >= ParkedSpot.WALL_METRES) {
                        most = here;
                    }
                }
            }
        }
        return most >= LEAST ? most + beam : 0;
    }

    /** How far a cell is from under the mount, measured level, m. */
    private static double level(FieldBox box, int i, int j, int k) {
        Vec middle = box.middle(i, j, k);
        return Math.hypot(middle.x(), middle.y());
    }

    private static double reach(LightField field, double beam) {
        FieldBox box = field.box();
        double wanted = Hazard.SMOULDER.wattsPerSquareMetre() - beam;
        double farthest = 0;
        for (int k = 0; k < box.nz(); k++) {
            for (int j = 0; j < box.ny(); j++) {
                for (int i = 0; i < box.nx(); i++) {
                    if (field.sure(i, j, k, wanted) > wanted) {
                        farthest = Math.max(farthest, level(box, i, j, k) + box.cellMetres() / 2);
                    }
                }
            }
        }
        return farthest;
    }
}
