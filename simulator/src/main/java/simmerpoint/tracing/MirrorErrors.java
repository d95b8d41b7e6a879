package simmerpoint.tracing;

import java.util.Arrays;
import java.util.List;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.sampling.ArrayFunctions;

/** {@linkplain MirrorErrorModel Random errors} of the mirrors of all zones of a dish. Immutable. */
final class MirrorErrors {
    /** A mirror without any error takes this beside mirrors with errors, rad²: error lines must not vanish. */
    private static final double LEAST_VARIANCE = 1e-14;

    private final boolean isZero;
    private final boolean sharpOrWide;
    private final boolean spread;
    private final float[] slopeError;
    private final float[] quarterSharp;
    private final float[] quarterWide;
    private final float[] wideShare;

    private MirrorErrors(List<MirrorErrorModel> byZone) {
        isZero = byZone.stream().allMatch(MirrorErrorModel::isZero);
        sharpOrWide = byZone.stream().anyMatch(errors -> errors.wideShare() > 0 && errors.wideShare() < 1);
        spread = byZone.stream().anyMatch(MirrorErrorModel::spreads);
        int n = byZone.size();
        slopeError = new float[n];
        quarterSharp = new float[n];
        quarterWide = new float[n];
        wideShare = new float[n];
        for (int zone = 0; zone < n; zone++) {
            MirrorErrorModel errors = byZone.get(zone);
            double variance = errors.slopeVariance();
            quarterSharp[zone] = (float) (0.25 * errors.sharpVariance());
            quarterWide[zone] = (float) (0.25 * errors.wideVariance());
            wideShare[zone] = (float) errors.wideShare();
            slopeError[zone] = (float) Math.sqrt(n == 1 ? variance : Math.max(LEAST_VARIANCE, variance));
        }
    }

    static MirrorErrors of(List<Mirror> mirrors) {
        return new MirrorErrors(mirrors.stream().map(MirrorErrorModel::of).toList());
    }

    /** Whether no ray of any zone has any random error. */
    boolean isZero() {
        return isZero;
    }

    /** Whether rays of some zone take the sharp or the wide spread by chance. */
    boolean sharpOrWide() {
        return sharpOrWide;
    }

    /** Whether rays of some zone have an error of their own beside the slope error. */
    boolean spread() {
        return spread;
    }

    /** The slope error's standard deviation for each ray, rad. */
    void slopeErrors(LightBatch light, float[] out) {
        if (light.zone >= 0) {
            Arrays.fill(out, 0, light.capacity, slopeError[light.zone]);
            return;
        }
        for (int i = 0; i < light.capacity; i++) {
            out[i] = slopeError[light.zones.of(light.panel[i])];
        }
    }

    /**
     * A quarter of the beam spread's variance of each ray, rad².
     *
     * @param chance a number of 0 to 1 for each ray that decides between sharp and wide spread, if {@link #sharpOrWide}
     */
    void quarterBeamVariances(LightBatch light, float[] chance, float[] out) {
        if (light.zone >= 0) {
            ofOneZone(light.zone, chance, light.capacity, out);
            return;
        }
        for (int i = 0; i < light.capacity; i++) {
            int zone = light.zones.of(light.panel[i]);
            float at = sharpOrWide ? chance[i] : 0.5f;
            out[i] = at < wideShare[zone] ? quarterWide[zone] : quarterSharp[zone];
        }
    }

    private void ofOneZone(int zone, float[] chance, int n, float[] out) {
        float sharp = quarterSharp[zone];
        float wide = quarterWide[zone];
        float share = wideShare[zone];
        if (!sharpOrWide) {
            Arrays.fill(out, 0, n, share == 1 ? wide : sharp);
            return;
        }
        for (int i = 0; i < n; i++) {
            out[i] = sharp + (wide - sharp) * ArrayFunctions.above0(share - chance[i]);
        }
    }
}
