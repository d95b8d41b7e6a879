package simmerpoint.tracing;

import java.util.Arrays;
import java.util.List;
import simmerpoint.dish.PanelZones;
import simmerpoint.dish.mirror.Mirror;

/** {@linkplain MirrorErrorModel Random errors} of the mirrors of all zones of a dish. Immutable. */
final class MirrorErrors {
    /** A mirror without any error takes this beside mirrors with errors, rad²: error lines must not vanish. */
    private static final double LEAST_VARIANCE = 1e-14;

    private final boolean isZero;
    private final boolean sharpOrWide;
    private final double[] slopeVariance;
    private final double[] quarterSharp;
    private final double[] quarterWide;
    private final double[] wideShare;

    private MirrorErrors(List<MirrorErrorModel> byZone) {
        isZero = byZone.stream().allMatch(MirrorErrorModel::isZero);
        sharpOrWide = byZone.stream().anyMatch(errors -> errors.wideShare() > 0 && errors.wideShare() < 1);
        slopeVariance = byZone.stream()
                .mapToDouble(errors ->
                        byZone.size() == 1 ? errors.slopeVariance() : Math.max(LEAST_VARIANCE, errors.slopeVariance()))
                .toArray();
        quarterSharp = byZone.stream()
                .mapToDouble(errors -> 0.25 * errors.sharpVariance())
                .toArray();
        quarterWide = byZone.stream()
                .mapToDouble(errors -> 0.25 * errors.wideVariance())
                .toArray();
        wideShare = byZone.stream().mapToDouble(MirrorErrorModel::wideShare).toArray();
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
        if (slopeVariance.length == 1) {
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
        if (wideShare.length == 1) {
            ofOneZone(chance, n, out);
            return;
        }
        for (int i = 0; i < n; i++) {
            int zone = zones.of(panel[i]);
            double at = sharpOrWide ? chance[i] : 0.5;
            out[i] = at < wideShare[zone] ? quarterWide[zone] : quarterSharp[zone];
        }
    }

    private void ofOneZone(double[] chance, int n, double[] out) {
        double sharp = quarterSharp[0];
        double wide = quarterWide[0];
        double share = wideShare[0];
        if (!sharpOrWide) {
            Arrays.fill(out, 0, n, share == 1 ? wide : sharp);
            return;
        }
        for (int i = 0; i < n; i++) {
            out[i] = chance[i] < share ? wide : sharp;
        }
    }
}
