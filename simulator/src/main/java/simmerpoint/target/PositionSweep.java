package simmerpoint.target;

import simmerpoint.dish.built.MirrorShares;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Support;
import simmerpoint.pan.Target;
import simmerpoint.tracing.ErrorSampler;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.ReflectedDirections;

/**
 * What the target catches at each of several equally spaced positions on a straight line, from one cast of light. In the
 * target frame each ray's intersection with the plane moves linearly with the position, so the ray is caught within one
 * interval of positions; so is its mirror point shaded. One instance per thread and replicate.
 *
 * <p>The light must be cast for the target at its first position. Rays from mirror points that are not below the underside
 * at every position are intersected position by position; so is every ray where bars under the pan stop light.
 */
public final class PositionSweep {
    private final int count;
    private final Vec step;
    private final MirrorShares shares;
    private final double radius2;
    private final double height;
    private final boolean isDisc;
    private final boolean castsShadow;
    private final Cylinder body;
    private final Support.Cover support;
    private final ErrorSampler errorSampler;
    private ReflectedDirections directions;
    private final SweepInterval shadow = new SweepInterval();
    private final SweepInterval disc = new SweepInterval();
    private final SweepInterval outline = new SweepInterval();
    private final DifferenceArray shaded;
    private final DifferenceArray underside;
    private final DifferenceArray wall;
    private final DifferenceArray lid;
    private long rays;

    /**
     * For one replicate.
     *
     * @param target the pan or disc
     * @param step from one position to the next, target frame, m
     * @param count number of positions, the first at the target's middle
     * @param shares of unshaded light that leave the mirrors
     * @param batch rays per batch
     */
    public PositionSweep(Target target, Vec step, int count, MirrorShares shares, int batch) {
        this.step = step;
        this.count = count;
        this.shares = shares;
        radius2 = target.radiusMetres() * target.radiusMetres();
        height = target instanceof Pan pan ? pan.heightMetres() : 0;
        isDisc = !(target instanceof Pan);
        castsShadow = target instanceof Pan pan && pan.castsShadow();
        support = (target instanceof Pan pan ? pan.support() : Support.NONE).cover();
        body = Cylinder.of(target);
        errorSampler = new ErrorSampler(batch);
        shaded = new DifferenceArray(count);
        underside = new DifferenceArray(count);
        wall = new DifferenceArray(count);
        lid = new DifferenceArray(count);
    }

    /** Adds a batch of light at all positions. */
    public void add(LightBatch light) {
        directions = errorSampler.sample(light);
        for (int i = 0; i < light.capacity; i++) {
            double watts = light.watts[i] * light.beam;
            if (light.panel[i] >= 0 && watts > 0) {
                sweep(light, i, watts);
            }
        }
        rays += light.capacity;
    }

    private void sweep(LightBatch light, int i, double watts) {
        double highest = light.pz[i] + Math.max(0, -(count - 1) * step.z());
        if (support.any() || !(highest < 0 && (isDisc || light.sz[i] > 0))) {
            sweepStepByStep(light, i, watts);
            return;
        }
        if (castsShadow) {
            setToOutline(shadow, light, i, light.sx[i], light.sy[i], light.sz[i]);
            shaded.add(shadow.low, shadow.high, watts);
        } else {
            shadow.low = 1;
            shadow.high = 0;
        }
        if (directions.dz[i] > 0) {
            sweepReflected(light, i, watts * reflectedShare(light, i));
        }
    }

    private double reflectedShare(LightBatch light, int i) {
        return shares.reflected(light.zones.of(light.panel[i]));
    }

    private void sweepReflected(LightBatch light, int i, double reflected) {
        double dx = directions.dx[i];
        double dy = directions.dy[i];
        double dz = directions.dz[i];
        double inverseZ = 1 / dz;
        double t = -light.pz[i] * inverseZ;
        double qx = light.px[i] + t * dx;
        double qy = light.py[i] + t * dy;
        double wx = step.z() * dx * inverseZ - step.x();
        double wy = step.z() * dy * inverseZ - step.y();
        disc.setToDisc(qx, qy, wx, wy, 0, 0, radius2);
        underside.addOutside(disc.low, disc.high, shadow.low, shadow.high, reflected);
        if (!isDisc) {
            outline.setToOutline(qx, qy, wx, wy, -height * dx * inverseZ, -height * dy * inverseZ, radius2);
            wall.addOutside(outline.low, outline.high, shadow.low, shadow.high, reflected);
            wall.addOutside(disc.low, disc.high, shadow.low, shadow.high, -reflected);
        }
    }

    /** Positions at which the body intersects the line from the mirror point along (dx, dy, dz), dz above 0. */
    private void setToOutline(SweepInterval interval, LightBatch light, int i, double dx, double dy, double dz) {
        double inverseZ = 1 / dz;
        double t = -light.pz[i] * inverseZ;
        interval.setToOutline(
                light.px[i] + t * dx,
                light.py[i] + t * dy,
                step.z() * dx * inverseZ - step.x(),
                step.z() * dy * inverseZ - step.y(),
                -height * dx * inverseZ,
                -height * dy * inverseZ,
                radius2);
    }

    private void sweepStepByStep(LightBatch light, int i, double watts) {
        for (int k = 0; k < count; k++) {
            double px = light.px[i] - k * step.x();
            double py = light.py[i] - k * step.y();
            double pz = light.pz[i] - k * step.z();
            if (shades(px, py, pz, light.sx[i], light.sy[i], light.sz[i])) {
                shaded.add(k, k, watts);
                continue;
            }
            if (support.stops(px, py, pz, directions.dx[i], directions.dy[i], directions.dz[i])) {
                continue;
            }
            int face = body.intersect(px, py, pz, directions.dx[i], directions.dy[i], directions.dz[i]);
            if (face != Cylinder.NOTHING) {
                DifferenceArray sums = face == Cylinder.UNDERSIDE ? underside : face == Cylinder.WALL ? wall : lid;
                sums.add(k, k, watts * reflectedShare(light, i));
            }
        }
    }

    private boolean shades(double px, double py, double pz, double sx, double sy, double sz) {
        return (castsShadow && body.intersect(px, py, pz, sx, sy, sz) != Cylinder.NOTHING)
                || support.stops(px, py, pz, sx, sy, sz);
    }

    /** Sunlight on the mirrors that the target shades at each position, W, from this replicate alone. */
    public double[] shadedWatts() {
        return perRay(shaded);
    }

    /** Light on the underside or disc at each position, W. */
    public double[] undersideWatts() {
        return perRay(underside);
    }

    /** Light on the wall at each position, W. */
    public double[] wallWatts() {
        return perRay(wall);
    }

    /** Light on the lid at each position, W. */
    public double[] lidWatts() {
        return perRay(lid);
    }

    private double[] perRay(DifferenceArray sums) {
        double[] out = sums.sums();
        for (int k = 0; k < out.length; k++) {
            out[k] /= rays;
        }
        return out;
    }
}
