package simmerpoint.study.panels;

import simmerpoint.geometry.Vec;
import simmerpoint.tracing.LightBatch;

/**
 * Where the light of each panel goes without its random errors, summed over rays: means of mirror points, normals, landing places and of
 * the change of normal that would send the light to one place. Target frame; not thread-safe.
 *
 * <p>The normal that sends light from direction s at point p to c lies midway between s and the direction from p to c (law of
 * reflection).
 */
final class PanelAims {
    /** Light that runs flatter than this over the plane of the target has no landing place worth the name. */
    private static final double FLATTEST = 0.05;

    private static final int SUMS = 12;
    private static final int WATTS = 0;
    private static final int POINT = 1;
    private static final int NORMAL = 4;
    private static final int CHANGE = 7;
    private static final int LANDING = 10;

    private final Vec aimedAt;
    private final double[] sums;
    private final double[] landed;

    /** Nothing yet, of so many panels whose light should go to {@code aimedAt}. */
    PanelAims(int panels, Vec aimedAt) {
        this.aimedAt = aimedAt;
        sums = new double[SUMS * panels];
        landed = new double[panels];
    }

    /** Adds a batch. */
    void add(LightBatch light) {
        for (int i = 0; i < light.capacity; i++) {
            if (light.panel[i] >= 0 && light.watts[i] > 0) {
                add(light, i);
            }
        }
    }

    private void add(LightBatch light, int i) {
        double watts = light.watts[i] * light.beam;
        Vec point = new Vec(light.px[i], light.py[i], light.pz[i]);
        Vec normal = new Vec(light.nx[i], light.ny[i], light.nz[i]);
        Vec sun = new Vec(light.sx[i], light.sy[i], light.sz[i]);
        int at = SUMS * light.panel[i];
        sums[at + WATTS] += watts;
        add(at + POINT, point, watts);
        add(at + NORMAL, normal, watts);
        add(at + CHANGE, unit(sun.plus(unit(aimedAt.minus(point)))).minus(normal), watts);
        Vec away = normal.times(2 * light.cosine[i]).minus(sun);
        if (away.z() > FLATTEST) {
            landed[light.panel[i]] += watts;
            sums[at + LANDING] += watts * (point.x() - point.z() / away.z() * away.x());
            sums[at + LANDING + 1] += watts * (point.y() - point.z() / away.z() * away.y());
        }
    }

    private void add(int at, Vec vec, double watts) {
        sums[at] += watts * vec.x();
        sums[at + 1] += watts * vec.y();
        sums[at + 2] += watts * vec.z();
    }

    /** Adds all sums of {@code other}. */
    void add(PanelAims other) {
        for (int k = 0; k < sums.length; k++) {
            sums[k] += other.sums[k];
        }
        for (int k = 0; k < landed.length; k++) {
            landed[k] += other.landed[k];
        }
    }

    /** Whether sunlight reaches panel {@code k}. */
    boolean isLit(int k) {
        return sums[SUMS * k + WATTS] > 0;
    }

    /** Middle of panel {@code k}. */
    Vec point(int k) {
        return mean(k, POINT);
    }

    /** Its mean normal, unit. */
    Vec normal(int k) {
        return unit(mean(k, NORMAL));
    }

    /** Mean change of its normal, rad. */
    Vec change(int k) {
        return mean(k, CHANGE);
    }

    /** Where the middle of its light crosses the plane of the target; not a number if it does not. */
    Vec landing(int k) {
        int at = SUMS * k + LANDING;
        return new Vec(sums[at] / landed[k], sums[at + 1] / landed[k], 0);
    }

    /** Where the middle of the light of all panels crosses the plane of the target. */
    Vec landing() {
        double watts = 0;
        double x = 0;
        double y = 0;
        for (int k = 0; k < landed.length; k++) {
            watts += landed[k];
            x += sums[SUMS * k + LANDING];
            y += sums[SUMS * k + LANDING + 1];
        }
        return watts > 0 ? new Vec(x / watts, y / watts, 0) : Vec.ZERO;
    }

    private Vec mean(int k, int what) {
        int at = SUMS * k;
        return new Vec(sums[at + what], sums[at + what + 1], sums[at + what + 2]).times(1 / sums[at + WATTS]);
    }

    private static Vec unit(Vec v) {
        return v.times(1 / v.length());
    }
}
