package simmerpoint.truth;

import simmerpoint.geometry.Vec;

/**
 * Light of an uncut paraboloid on a bare disc; no flaw of the mirror, free of chance. What each place of the mirror sends
 * within a circle is found by {@link SunPatch}; left is an integral over the mirror in squared radius and azimuth. Not
 * for rims at or beyond 90°, where part of the sun's image runs along the plane.
 */
final class SmoothQuadrature {
    private final double focal;
    private final double inner2;
    private final double outer2;

    SmoothQuadrature(double diameter, double focal, double hub) {
        this.focal = focal;
        this.inner2 = hub * hub / 4;
        this.outer2 = diameter * diameter / 4;
    }

    /**
     * Integrates.
     *
     * @param pieces pieces of 4 points each in squared mirror radius
     * @param spokes azimuths; 1 is enough if sun and disc are square to the axis and centred on it
     * @param lines lines across the sun
     */
    Within integrate(Bench bench, double sun, int pieces, int spokes, int lines, double... radii) {
        Rule mirror = Rule.gauss(inner2, outer2, pieces, 4);
        Rule tilt = Rule.gauss(-Math.PI / 2, Math.PI / 2, 1, lines);
        double[] within = new double[radii.length];
        double reflected = 0;
        for (int k = 0; k < spokes; k++) {
            Bench turned = bench.turnedAboutAxis(2 * Math.PI * (k + 0.37) / spokes);
            for (int i = 0; i < mirror.size(); i++) {
                double area = Math.PI * mirror.weight()[i] / spokes;
                Image image = new Image(turned, Math.sqrt(mirror.at()[i]), Math.sin(sun));
                reflected += area * image.weight(0, 0);
                for (int r = 0; r < radii.length; r++) {
                    within[r] += area * new SunPatch(image, radii[r]).power(tilt);
                }
            }
        }
        return new Within(reflected, within);
    }

    /** The image of the sun from one point (r, 0) of the mirror; (u, v) is the place on the sun. */
    private final class Image implements SunPatch.Image {
        private final Bench bench;
        private final double sine;
        private final Vec point;
        private final Vec steep;
        private final Vec normal;

        Image(Bench bench, double r, double sine) {
            this.bench = bench;
            this.sine = sine;
            this.point = new Vec(r, 0, r * r / (4 * focal));
            this.steep = new Vec(-r / (2 * focal), 0, 1);
            this.normal = steep.times(1 / steep.length());
        }

        @Override
        public double sine() {
            return sine;
        }

        @Override
        public Vec landing(double u, double v) {
            return bench.landing(point, Bench.reflected(bench.ray(u, v), normal));
        }

        @Override
        public double weight(double u, double v) {
            Vec ray = bench.ray(u, v);
            return steep.dot(ray) / ray.dot(bench.sun());
        }
    }
}
