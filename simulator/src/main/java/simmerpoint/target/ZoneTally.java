package simmerpoint.target;

import java.util.function.IntToDoubleFunction;
import simmerpoint.dish.built.MirrorShares;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.ReflectedRays;

/** Sums over rays by zone of the dish, as {@link Tally} has them for all of it. A dish of one zone needs none. */
final class ZoneTally {
    final double[] incident;
    final double[] unshaded;
    final double[] caught;

    /** All zero, for so many zones. */
    ZoneTally(int zones) {
        incident = new double[zones];
        unshaded = new double[zones];
        caught = new double[zones];
    }

    /** Whether the dish has zones. */
    boolean isKept() {
        return incident.length > 1;
    }

    /** Unshaded light of all zones, each times a share of its own. */
    double unshaded(IntToDoubleFunction share) {
        double sum = 0;
        for (int zone = 0; zone < unshaded.length; zone++) {
            sum += unshaded[zone] * share.applyAsDouble(zone);
        }
        return sum;
    }

    /** Adds the light before the mirrors and takes from {@code watts}, unshaded by ray, what each zone's mirror keeps. */
    void reflect(LightBatch light, MirrorShares shares, float[] watts) {
        for (int i = 0; i < light.capacity; i++) {
            if (light.panel[i] >= 0) {
                int zone = light.zones.of(light.panel[i]);
                incident[zone] += light.watts[i] * light.beam;
                unshaded[zone] += watts[i] * light.beam;
                watts[i] *= (float) shares.reflected(zone);
            }
        }
    }

    /** Adds light that is known to belong to one zone. */
    void add(int zone, double onMirrors, double reaching, double landed) {
        incident[zone] += onMirrors;
        unshaded[zone] += reaching;
        caught[zone] += landed;
    }

    /** The same for stored rays. */
    void reflect(ReflectedRays rays, MirrorShares shares, float[] watts) {
        for (int i = 0; i < rays.count(); i++) {
            int zone = rays.zones().of(rays.panel(i));
            incident[zone] += rays.watts(i);
            unshaded[zone] += watts[i];
            watts[i] *= (float) shares.reflected(zone);
        }
    }

    /** Adds caught light; 0 for rays that missed or met no mirror. */
    void addCaught(LightBatch light, float[] watts) {
        for (int i = 0; i < light.capacity; i++) {
            caught[light.zones.of(light.panel[i])] += watts[i] * light.beam;
        }
    }

    /** The same for stored rays. */
    void addCaught(ReflectedRays rays, float[] watts) {
        for (int i = 0; i < rays.count(); i++) {
            caught[rays.zones().of(rays.panel(i))] += watts[i];
        }
    }
}
