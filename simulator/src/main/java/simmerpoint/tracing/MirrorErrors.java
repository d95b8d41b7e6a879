package simmerpoint.tracing;

import java.util.Arrays;
import java.util.List;
import simmerpoint.dish.PanelZones;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.sampling.ArrayFunctions;

/** {@linkplain MirrorErrorModel Random errors} of the mirrors of all zones of a dish. Immutable. */
final class MirrorErrors {
    /** A mirror without any error takes this beside mirrors with errors, rad²: error lines must not vanish. */
    private static final double LEAST_VARIANCE = 1e-14;

    private final List<MirrorErrorModel> byZone;
    private final boolean isZero;
    private final boolean sharpOrWide;
    private final boolean spread;
    private final float[] slopeError;

    private MirrorErrors(List<MirrorErrorModel> byZone) {
        this.byZone = byZone;
        isZero = byZone.stream().allMatch(MirrorErrorModel::isZero);
        sharpOrWide = byZone.stream().anyMatch(errors -> errors.wideShare() > 0 && errors.wideShare() < 1);
        spread = byZone.stream().anyMatch(MirrorErrorModel::spreads);
        slopeError = new float[byZone.size()];
        for (int zone = 0; zone < slopeError.length; zone++) {
            double variance = byZone.get(zone).slopeVariance();
            slopeError[zone] =
                    (float) Math.sqrt(slopeError.length == 1 ? variance : Math.max(LEAST_VARIANCE, variance));
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
    void slopeErrors(int[] panel, PanelZones zones, int n, float[] out) {
        if (slopeError.length == 1) {
            Arrays.fill(out, 0, n, slopeError[0]);
            return;
        }
        for (int i = 0; i < n; i++) {
            out[i] = slopeError[zones.of(panel[i])];
        }
    }

    /**
     * A quarter of the beam spread's variance of each ray, rad².
     *
     * @param chance a number of 0 to 1 for each ray that decides between sharp and wide spread, if {@link #sharpOrWide}
     */
    void quarterBeamVariances(int[] panel, PanelZones zones, float[] chance, int n, float[] out) {
        if (byZone.size() == 1) {
            quarterBeamVariances(byZone.get(0), chance, n, out);
            return;
        }
        for (int i = 0; i < n; i++) {
            out[i] = quarter(byZone.get(zones.of(panel[i])), sharpOrWide ? chance[i] : 0.5f);
        }
    }

    private void quarterBeamVariances(MirrorErrorModel errors, float[] chance, int n, float[] out) {
        float sharp = (float) (0.25 * errors.sharpVariance());
        float wide = (float) (0.25 * errors.wideVariance());
        float share = (float) errors.wideShare();
        if (!sharpOrWide) {
            Arrays.fill(out, 0, n, share == 1 ? wide : sharp);
            return;
        }
        for (int i = 0; i < n; i++) {
            out[i] = sharp + (wide - sharp) * ArrayFunctions.above0(share - chance[i]);
        }
    }

    private static float quarter(MirrorErrorModel errors, float chance) {
        return (float) (0.25 * (chance < errors.wideShare() ? errors.wideVariance() : errors.sharpVariance()));
    }
}
