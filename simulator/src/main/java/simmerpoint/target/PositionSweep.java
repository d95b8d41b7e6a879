package simmerpoint.target;

import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;
import simmerpoint.tracing.ErrorSampler;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.ReflectedDirections;

/**
 * What the target catches at each of a row of positions along a straight line, its shadow judged anew at each, from one
 * cast of light. Seen from the target, each ray's landing point walks straight as the target moves, so it is caught along
 * one stretch of positions, which is added at the cost of its two ends. For one thread and one replicate.
 *
 * <p>The light must be cast for the target at its first position. Light from mirror points that do not lie below the
 * underside at every position is judged position by position.
 */
public final class PositionSweep {
    private final int count;
    private final Vec step;
    private final double reflectedShare;
    private final double radius2;
    private final double height;
    private final boolean bare;
    private final boolean shades;
    private final Cylinder body;
    private final ErrorSampler draws;
    private ReflectedDirections out;
    private final SweepInterval shadow = new SweepInterval();
    private final SweepInterval disc = new SweepInterval();
    private final SweepInterval outline = new SweepInterval();
    private final DifferenceArray shaded;
    private final DifferenceArray underside;
    private final DifferenceArray wall;
    private final DifferenceArray lid;
    private long rays;

    /**
     * A walk.
     *
     * @param target the pan or disc
     * @param step from one position to the next, target frame, m
     * @param count number of positions, the first at the target's middle
     * @param reflectedShare share of unshaded light that leaves the mirrors as a beam
     * @param batch rays per batch
     */
    public PositionSweep(Target target, Vec step, int count, double reflectedShare, int batch) {
        this.step = step;
        this.count = count;
        this.reflectedShare = reflectedShare;
        radius2 = target.radiusMetres() * target.radiusMetres();
        height = target instanceof Pan pan ? pan.heightMetres() : 0;
        bare = !(target instanceof Pan);
        shades = target instanceof Pan pan && pan.castsShadow();
        body = new Cylinder(target.radiusMetres(), height, bare);
        draws = new ErrorSampler(batch);
        shaded = new DifferenceArray(count);
        underside = new DifferenceArray(count);
        wall = new DifferenceArray(count);
        lid = new DifferenceArray(count);
    }

    /** Walks a batch of light past all positions. */
    public void add(LightBatch light) {
        out = draws.of(light);
        for (int i = 0; i < light.capacity; i++) {
            double watts = light.watts[i];
            if (light.panel[i] >= 0 && watts > 0) {
                walk(light, i, watts);
            }
        }
        rays += light.capacity;
    }

    private void walk(LightBatch light, int i, double watts) {
        double highest = light.pz[i] + Math.max(0, -(count - 1) * step.z());
        if (!(highest < 0 && (bare || light.sz[i] > 0))) {
            walkStepwise(light, i, watts);
            return;
        }
        if (shades) {
            spanOutline(shadow, light, i, light.sx[i], light.sy[i], light.sz[i]);
            shaded.add(shadow.low, shadow.high, watts);
        } else {
            shadow.low = 1;
            shadow.high = 0;
        }
        if (out.dz[i] > 0) {
            walkLanding(light, i, watts * reflectedShare);
        }
    }

    private void walkLanding(LightBatch light, int i, double reflected) {
        double dx = out.dx[i];
        double dy = out.dy[i];
        double dz = out.dz[i];
        double perZ = 1 / dz;
        double t = -light.pz[i] * perZ;
        double qx = light.px[i] + t * dx;
        double qy = light.py[i] + t * dy;
        double wx = step.z() * dx * perZ - step.x();
        double wy = step.z() * dy * perZ - step.y();
        disc.inDisc(qx, qy, wx, wy, 0, 0, radius2);
        underside.addBeside(disc.low, disc.high, shadow.low, shadow.high, reflected);
        if (!bare) {
            outline.inOutline(qx, qy, wx, wy, -height * dx * perZ, -height * dy * perZ, radius2);
            wall.addBeside(outline.low, outline.high, shadow.low, shadow.high, reflected);
            wall.addBeside(disc.low, disc.high, shadow.low, shadow.high, -reflected);
        }
    }

    /** Positions at which the body's outline, seen along (dx, dy, dz) with dz above 0, covers the ray. */
    private void spanOutline(SweepInterval span, LightBatch light, int i, double dx, double dy, double dz) {
        double perZ = 1 / dz;
        double t = -light.pz[i] * perZ;
        span.inOutline(
                light.px[i] + t * dx,
                light.py[i] + t * dy,
                step.z() * dx * perZ - step.x(),
                step.z() * dy * perZ - step.y(),
                -height * dx * perZ,
                -height * dy * perZ,
                radius2);
    }

    private void walkStepwise(LightBatch light, int i, double watts) {
        for (int k = 0; k < count; k++) {
            double px = light.px[i] - k * step.x();
            double py = light.py[i] - k * step.y();
            double pz = light.pz[i] - k * step.z();
            if (shades && body.meet(px, py, pz, light.sx[i], light.sy[i], light.sz[i]) != Cylinder.NOTHING) {
                shaded.add(k, k, watts);
                continue;
            }
            int met = body.meet(px, py, pz, out.dx[i], out.dy[i], out.dz[i]);
            if (met != Cylinder.NOTHING) {
                DifferenceArray sums = met == Cylinder.UNDERSIDE ? underside : met == Cylinder.WALL ? wall : lid;
                sums.add(k, k, watts * reflectedShare);
            }
        }
    }

    /** Light kept off the mirrors at each position, W if this replicate were the whole sample. */
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
