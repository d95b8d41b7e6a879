package simmerpoint.target;

import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Support;
import simmerpoint.pan.Target;
import simmerpoint.tracing.LightBatch;

/** Sunlight that the pan, or what it stands on, keeps off the mirrors. A bare disc shades nothing. */
public final class TargetShade {
    private final boolean isCast;
    private final TargetIntersection pan;
    private final Support.Cover support;

    /** Of a target in its own frame. */
    public TargetShade(Target target) {
        isCast = target instanceof Pan vessel && vessel.castsShadow();
        pan = new TargetIntersection(target);
        support = (target instanceof Pan vessel ? vessel.support() : Support.NONE).cover();
    }

    /** Whether it keeps ray {@code i} of a batch off its mirror point. */
    public boolean stops(LightBatch light, int i) {
        return support.stops(light.px[i], light.py[i], light.pz[i], light.sx[i], light.sy[i], light.sz[i])
                || (isCast
                        && pan.distance(
                                        new Vec(light.px[i], light.py[i], light.pz[i]),
                                        new Vec(light.sx[i], light.sy[i], light.sz[i]))
                                .isPresent());
    }
}
