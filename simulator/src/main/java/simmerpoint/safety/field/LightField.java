package simmerpoint.safety.field;

import simmerpoint.geometry.Vec;

/**
 * Reflected light in the cells of a box. The greatest irradiance of one side of a small surface, over all the ways it can be turned,
 * lies between |N|, the net flux, and (F + |N|)/2, F the fluence rate: with light of weight w along d, Σ w max(0, d·n) is
 * at least Σ w d·n and at most Σ w (1 + d·n)/2, since max(0, u) ≤ (1 + u)/2 for −1 ≤ u ≤ 1 (derived here). Where the light of a
 * place comes from one part of the mirror, as it does away from the focus, both are F.
 */
public final class LightField {
    private final FieldBox box;
    private final float[] mean;
    private final float[] error;
    private final double scale;

    /** Keeps the arrays. */
    LightField(FieldBox box, float[] mean, float[] error) {
        this(box, mean, error, 1);
    }

    private LightField(FieldBox box, float[] mean, float[] error, double scale) {
        this.box = box;
        this.mean = mean;
        this.error = error;
        this.scale = scale;
    }

    /** So many times as strong; shares the arrays. */
    LightField times(double factor) {
        return new LightField(box, mean, error, scale * factor);
    }

    /**
     * Reflected light at a place, W/m².
     *
     * @param fluence from all directions
     * @param net net flux, along the light
     * @param standardError of the fluence
     */
    public record Light(double fluence, Vec net, double standardError) {
        /** No light. */
        static final Light NONE = new Light(0, Vec.ZERO, 0);

        /** No surface gets less on the side that gets most. */
        public double least() {
            return net.length();
        }

        /** A surface that looks this way, a vector of length 1, gets no less on that side. */
        public double least(Vec facing) {
            return Math.max(0, -net.dot(facing));
        }

        /**
         * A surface that looks this way gets no more on that side: (u + √(F² − |N|² + u²))/2 with u = −N·n. For light of one direction,
         * and for light of two directions alike but for the sign along n, this is what it gets; u ↦ (u + √(1 − s²))/2 is
         * concave over the unit ball, s the part of the mean direction across n, and on the sphere it is max(0, u), so
         * that no mixture of directions with this mean comes to more (derived here).
         */
        public double most(Vec facing) {
            double u = -net.dot(facing);
            double n = net.length();
            return (u + Math.sqrt(Math.max(0, fluence * fluence - n * n) + u * u)) / 2;
        }

        /** No surface gets more on one side. */
        public double most() {
            return (fluence + net.length()) / 2;
        }
    }

    /** The box. */
    public FieldBox box() {
        return box;
    }

    /** The light of one cell. */
    public Light cell(int i, int j, int k) {
        int at = box.index(i, j, k);
        return light(mean(at, 0), mean(at, 1), mean(at, 2), mean(at, 3), error[at]);
    }

    private double mean(int cell, int part) {
        return mean[FieldTally.PARTS * cell + part];
    }

    private Light light(double fluence, double x, double y, double z, double error) {
        return new Light(scale * fluence, new Vec(x, y, z).times(scale), scale * error);
    }

    /** The light at a place of the box, between the middles of cells in proportion. */
    public Light at(Vec place) {
        Vec p = place.minus(box.corner()).times(1 / box.cellMetres());
        double[] sums = new double[FieldTally.PARTS + 1];
        int i = base(p.x(), box.nx());
        int j = base(p.y(), box.ny());
        int k = base(p.z(), box.nz());
        for (int corner = 0; corner < 8; corner++) {
            int a = corner & 1;
            int b = corner >> 1 & 1;
            int c = corner >> 2;
            double weight = share(p.x(), i, a, box.nx()) * share(p.y(), j, b, box.ny()) * share(p.z(), k, c, box.nz());
            if (weight > 0) {
                int at = box.index(i + a, j + b, k + c);
                for (int part = 0; part < FieldTally.PARTS; part++) {
                    sums[part] += weight * mean(at, part);
                }
                sums[FieldTally.PARTS] += weight * error[at];
            }
        }
        return light(sums[0], sums[1], sums[2], sums[3], sums[FieldTally.PARTS]);
    }

    private static int base(double x, int n) {
        return (int) Math.max(0, Math.min(n - 1, Math.floor(x - 0.5)));
    }

    private static double share(double x, int base, int up, int n) {
        double above = n == 1 ? 0 : Math.max(0, Math.min(1, x - 0.5 - base));
        if (base == n - 1) {
            return up == 0 ? 1 : 0;
        }
        return up == 0 ? 1 - above : above;
    }
}
