package simmerpoint.safety.field;

import simmerpoint.geometry.Vec;

/**
 * Reflected light in the cells of a box. The greatest irradiance of one side of a small surface, over all the ways it can be turned,
 * lies between |N|, the net flux, and (F + |N|)/2, F the fluence rate: with light of weight w along d, Σ w max(0, d·n) is
 * at least Σ w d·n and at most Σ w (1 + d·n)/2, since max(0, u) ≤ (1 + u)/2 for −1 ≤ u ≤ 1 (derived here). Where the light of a
 * place comes from one part of the mirror, as it does away from the focus, both are F.
 */
public final class LightField {
    /** No light. */
    static final LightField DARK =
            new LightField(new FieldBox(Vec.ZERO, 1, 1, 1, 1), new float[FieldTally.PARTS], new float[1]);

    private static final double SURE = 2;

    private final FieldBox box;
    private final float[] mean;
    private final float[] error;
    private final BrightestCells brightest;
    private final double scale;

    /** Keeps the arrays. */
    LightField(FieldBox box, float[] mean, float[] error) {
        this(box, mean, error, new BrightestCells(box, mean), 1);
    }

    private LightField(FieldBox box, float[] mean, float[] error, BrightestCells brightest, double scale) {
        this.box = box;
        this.mean = mean;
        this.error = error;
        this.brightest = brightest;
        this.scale = scale;
    }

    /** So many times as strong; shares the arrays. */
    LightField times(double factor) {
        return new LightField(box, mean, error, brightest, scale * factor);
    }

    /**
     * Reflected light at a place, W/m².
     *
     * @param fluence from all directions
     * @param net net flux, along the light
     * @param standardError of the fluence
     */
    public record Light(double fluence, Vec net, double standardError) {
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

    /**
     * The larger of {@code than} and what one side of a surface in a cell surely gets, W/m²: {@link Light#most} less two standard errors,
     * since the most of many cells is the noisiest. Quick where the light is weaker than {@code than}.
     */
    public double sure(int i, int j, int k, double than) {
        if (!(scale * mean(box.index(i, j, k), 0) > than)) {
            return than;
        }
        Light light = cell(i, j, k);
        return Math.max(than, light.most() - SURE * light.standardError());
    }

    private double mean(int cell, int part) {
        return mean[FieldTally.PARTS * cell + part];
    }

    private Light light(double fluence, double x, double y, double z, double error) {
        return new Light(scale * fluence, new Vec(x, y, z).times(scale), scale * error);
    }

    /** The light at a place of the box, between the middles of cells in proportion. */
    public Light at(Vec place) {
        Between x = new Between(place.x() - box.corner().x(), box.cellMetres(), box.nx());
        Between y = new Between(place.y() - box.corner().y(), box.cellMetres(), box.ny());
        Between z = new Between(place.z() - box.corner().z(), box.cellMetres(), box.nz());
        return light(
                between(mean, FieldTally.PARTS, 0, x, y, z),
                between(mean, FieldTally.PARTS, 1, x, y, z),
                between(mean, FieldTally.PARTS, 2, x, y, z),
                between(mean, FieldTally.PARTS, 3, x, y, z),
                between(error, 1, 0, x, y, z));
    }

    /** No surface at the place gets more, W/m²; far quicker than {@link #at}. */
    double bound(Vec place) {
        return scale * brightest.around(place);
    }

    /** One part of the numbers of cells, between the eight cells about a place. */
    private double between(float[] numbers, int parts, int part, Between x, Between y, Between z) {
        int right = parts * x.step;
        int near = parts * box.nx() * y.step;
        int up = parts * box.nx() * box.ny() * z.step;
        int at = parts * box.index(x.base, y.base, z.base) + part;
        double low = y.of(x.of(numbers[at], numbers[at + right]), x.of(numbers[at + near], numbers[at + near + right]));
        double high = y.of(
                x.of(numbers[at + up], numbers[at + up + right]),
                x.of(numbers[at + up + near], numbers[at + up + near + right]));
        return z.of(low, high);
    }

    /** A place between the middles of two neighbouring cells of a row; at the row's ends both are the last one. */
    private static final class Between {
        private final int base;
        private final int step;
        private final double above;

        Between(double metres, double cell, int cells) {
            double x = metres / cell - 0.5;
            base = (int) Math.max(0, Math.min(cells - 1, Math.floor(x)));
            step = base == cells - 1 ? 0 : 1;
            above = step * Math.max(0, Math.min(1, x - base));
        }

        double of(double here, double next) {
            return here + above * (next - here);
        }
    }
}
