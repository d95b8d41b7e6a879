package simmerpoint.dish.cut;

import simmerpoint.dish.AlteredSurface;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;

/** The places of another surface, covered with mirror where there was none. A filled place tilts with the panel that would cover it. */
final class FilledSurface extends AlteredSurface {
    /** Of some panels. */
    FilledSurface(MirrorSurface panels) {
        super(panels);
    }

    @Override
    public double apertureArea() {
        return original.outlineArea();
    }

    @Override
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        original.fill(u, v, n, out);
        for (int i = 0; i < n; i++) {
            out.panel[i] = out.panel[i] < 0 ? ~out.panel[i] : out.panel[i];
        }
    }
}
