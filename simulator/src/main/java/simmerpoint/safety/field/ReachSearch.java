package simmerpoint.safety.field;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.geometry.Vec;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.sampling.Estimate;

/**
 * Looks along many directions from the focus, from far away inwards, for the first place where light of mirrors and sun together
 * is as strong as each hazard asks. The farthest of a bundle of directions counts, which noise can only lengthen: a
 * perfect dish's 112 cm with half a million rays are 114 with a quarter.
 */
public final class ReachSearch {
    /** Directions are so far apart, rad. */
    private static final double APART = Math.toRadians(3);

    /** Half-angle of the bundle along the axis, rad. */
    private static final double AXIS = Math.toRadians(8);

    /** Directions up to here beyond the rim angle are still those of the rim, rad. */
    private static final double BEYOND_RIM = Math.toRadians(8);

    /** From here on a direction goes towards the dish, rad. */
    private static final double BACK = Math.toRadians(115);

    private static final double LEAST_STEP = 0.004;

    /** Where the light outside is not known, a hazard begins in the middle of a step. */
    private static final double HALF = 0.5;

    private static final Hazard[] HAZARDS = Hazard.values();

    private final YardLight.Probe probe;
    private final Vec focus;
    private final Vec[] axes;
    private final double rim;
    private final double farthest;
    private final Map<Hazard, Map<Way, Estimate>> found = new EnumMap<>(Hazard.class);
    private final Map<Hazard, Estimate> level = new EnumMap<>(Hazard.class);
    private final Map<Hazard, Estimate> height = new EnumMap<>(Hazard.class);

    private ReachSearch(YardLight light) {
        probe = light.new Probe();
        Yard yard = Yard.of(light.scenario());
        double f = light.scenario().dish().focalLengthMetres();
        focus = yard.place(new Vec(0, 0, f));
        axes = new Vec[] {
            yard.direction(new Vec(1, 0, 0)), yard.direction(new Vec(0, 1, 0)), yard.direction(new Vec(0, 0, 1))
        };
        rim = light.scenario().dish().rimAngle();
        farthest = farthest(light);
    }

    /** For every hazard, mildest first. */
    public static List<Reach> of(YardLight light) {
        return new ReachSearch(light).search();
    }

    private double farthest(YardLight light) {
        double most = 0;
        for (LightField field : light.fields()) {
            FieldBox box = field.box();
            for (int corner = 0; corner < 8; corner++) {
                Vec far = new Vec((corner & 1) * box.nx(), (corner >> 1 & 1) * box.ny(), (corner >> 2) * box.nz())
                        .times(box.cellMetres())
                        .plus(box.corner());
                most = Math.max(most, far.minus(focus).length());
            }
        }
        return most;
    }

    private List<Reach> search() {
        int rings = (int) Math.round(Math.PI / APART);
        for (int ring = 0; ring <= rings; ring++) {
            double psi = Math.PI * ring / rings;
            int around = Math.max(1, (int) Math.round(2 * Math.PI * Math.sin(psi) / APART));
            for (int k = 0; k < around; k++) {
                double phi = 2 * Math.PI * k / around;
                Vec direction = axes[0].times(Math.sin(psi) * Math.cos(phi))
                        .plus(axes[1].times(Math.sin(psi) * Math.sin(phi)))
                        .plus(axes[2].times(Math.cos(psi)));
                look(direction, way(psi));
            }
        }
        List<Reach> reaches = new ArrayList<>();
        for (Hazard hazard : Hazard.values()) {
            reaches.add(new Reach(
                    hazard,
                    found.getOrDefault(hazard, Map.of()),
                    Optional.ofNullable(level.get(hazard)),
                    Optional.ofNullable(height.get(hazard))));
        }
        return reaches;
    }

    private Way way(double psi) {
        return psi <= AXIS ? Way.AXIS : psi <= rim + BEYOND_RIM ? Way.RIM : psi < BACK ? Way.SIDE : Way.DISH;
    }

    /** One direction, inwards. */
    private void look(Vec direction, Way way) {
        double from = direction.z() < 0 ? Math.min(farthest, -focus.z() / direction.z()) : farthest;
        int next = 0;
        double before = 0;
        for (double r = from; r > 0 && next < HAZARDS.length; r -= step(r)) {
            double wanted = HAZARDS[next].wattsPerSquareMetre();
            Optional<YardLight.Irradiance> light = probe.ifAtLeast(wanted, focus.plus(direction.times(r)));
            if (light.isEmpty() || !(light.get().reflected() > 0)) {
                before = 0;
                continue;
            }
            double now = light.get().together();
            while (next < HAZARDS.length && now >= HAZARDS[next].wattsPerSquareMetre()) {
                double least = HAZARDS[next].wattsPerSquareMetre();
                double out =
                        r + step(r) * (before > 0 ? Math.max(0, Math.min(1, (now - least) / (now - before))) : HALF);
                keep(HAZARDS[next], way, new Estimate(out, out * light.get().standardError() / (2 * least)), direction);
                next++;
            }
            before = now;
        }
    }

    /** Fine near the focus. */
    private static double step(double r) {
        return Math.max(LEAST_STEP, r / 80);
    }

    private void keep(Hazard hazard, Way way, Estimate distance, Vec direction) {
        found.computeIfAbsent(hazard, h -> new EnumMap<>(Way.class)).merge(way, distance, ReachSearch::farther);
        level.merge(hazard, distance.times(Math.hypot(direction.x(), direction.y())), ReachSearch::farther);
        double up = focus.z() + direction.z() * distance.value();
        height.merge(hazard, new Estimate(up, distance.standardError()), ReachSearch::farther);
    }

    private static Estimate farther(Estimate a, Estimate b) {
        return a.value() >= b.value() ? a : b;
    }
}
