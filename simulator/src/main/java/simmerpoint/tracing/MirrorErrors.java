package simmerpoint.tracing;

import java.util.Arrays;
import java.util.List;
import simmerpoint.dish.PanelZones;
import simmerpoint.dish.mirror.Mirror;

/** {@linkplain MirrorErrorModel Random errors} of the mirrors of all zones of a dish. Immutable. */
final class MirrorErrors {
    /** A mirror without any error takes this beside mirrors with errors, rad²: error lines must not vanish. */
    private static final double LEAST_VARIANCE = 1e-14;

    private final List<MirrorErrorModel> byZone;
    private final boolean isZero;
    private final boolean sharpOrWide;
    private final double[] slopeVariance;

    private MirrorErrors(List<MirrorErrorModel> byZone) {
        this.byZone = byZone;
        isZero = byZone.stream().allMatch(MirrorErrorModel::isZero);
        sharpOrWide = byZone.stream().anyMatch(errors -> errors.wideShare() > 0 && errors.wideShare() < 1);
        slopeVariance = byZone.stream()
                .mapToDouble(errors ->
                        byZone.size() == 1 ? errors.slopeVariance() : Math.max(LEAST_VARIANCE, errors.slopeVariance()))
                .toArray();
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

    /** The slope error's variance of each ray, rad². */
    void slopeVariances(int[] panel, PanelZones zones, int n, double[] out) {
        if (byZone.size() == 1) {
            Arrays.fill(out, 0, n, slopeVariance[0]);
            return;
        }
        for (int i = 0; i < n; i++) {
            out[i] = slopeVariance[zones.of(panel[i])];
        }
    }

    /**
     * A quarter of the beam spread's variance of each ray, rad².
     *
     * @param chance a number of 0 to 1 for each ray that decides between sharp and wide spread, if {@link #sharpOrWide}
     */
    void quarterBeamVariances(int[] panel, PanelZones zones, double[] chance, int n, double[] out) {
        if (byZone.size() == 1) {
            quarterBeamVariances(byZone.get(0), chance, n, out);
            return;
        }
        for (int i = 0; i < n; i++) {
            out[i] = quarter(byZone.get(zones.of(panel[i])), sharpOrWide ? chance[i] : 0.5);
        }
    }

    private void quarterBeamVariances(MirrorErrorModel errors, double[] chance, int n, double[] out) {
        double sharp = 0.25 * errors.sharpVariance();
        double wide = 0.25 * errors.wideVariance();
        double share = errors.wideShare();
        if (!sharpOrWide) {
            Arrays.fill(out, 0, n, share == 1 ? wide : sharp);
            return;
        }
        for (int i = 0; i < n; i++) {
            out[i] = chance[i] < share ? wide : sharp;
        }
    }

    private static double quarter(MirrorErrorModel errors, double chance) {
        return 0.25 * (chance < errors.wideShare() ? errors.wideVariance() : errors.sharpVariance());
    }
}
