package simmerpoint.truth;

import simmerpoint.geometry.Vec;

/**
 * Light of strips bent along parabolic ribs, straight from rib to rib, on a bare disc; no flaw of the mirror, free of
 * chance. Along one straight chord the normal is the same, so for one place on the sun the chord's image is an evenly
 * lit segment whose share within a circle is known in closed form; left are an integral along the strip and two over
 * the sun's disc. The strip z = x²/(4 f cos² β), β = π/n, follows from ribs on z = r²/4f (derived here).
 */
final class StripQuadrature {
    private final double focalOfCylinder;
    private final double slant;
    private final double from;
    private final double to;
    private final int sectors;

    StripQuadrature(double diameter, double focal, double hub, int sectors) {
        double beta = Math.PI / sectors;
        this.focalOfCylinder = focal * Math.cos(beta) * Math.cos(beta);
        this.slant = Math.tan(beta);
        this.from = hub / 2 * Math.cos(beta);
        this.to = diameter / 2 * Math.cos(beta);
        this.sectors = sectors;
    }

    /** Integrates over a uniform sun with {@code fine} rings of 2·fine places and 4·pieces points along a strip. */
    Within integrate(Bench bench, double sun, int fine, int pieces, double... radii) {
        double[] within = new double[radii.length];
        double reflected = 0;
        for (int k = 0; k < sectors; k++) {
            Bench turned = bench.turnedAboutAxis(2 * Math.PI * (k + 0.5) / sectors);
            Within one = oneStrip(turned, sun, fine, pieces, radii);
            reflected += one.reflected();
            Within.add(within, one.within());
        }
        return new Within(reflected, within);
    }

    private Within oneStrip(Bench bench, double sun, int fine, int pieces, double[] radii) {
        Rule rings = Rule.gauss(0, 1, 1, fine);
        Rule chords = Rule.gauss(from, to, pieces, 4);
        int spokes = 2 * fine;
        double[] within = new double[radii.length];
        double reflected = 0;
        for (int i = 0; i < fine; i++) {
            double rho = Math.sin(sun) * Math.sqrt(rings.at()[i]);
            for (int j = 0; j < spokes; j++) {
                double angle = 2 * Math.PI * (j + 0.5 * (i % 2)) / spokes;
                Vec ray = bench.ray(rho * Math.cos(angle), rho * Math.sin(angle));
                double weight = rings.weight()[i] / spokes;
                for (int c = 0; c < chords.size(); c++) {
                    double share = weight * chords.weight()[c];
                    reflected += chord(bench, ray, chords.at()[c], share, radii, within);
                }
            }
        }
        return new Within(reflected, within);
    }

    /** Adds {@code share} of one chord's light (W per metre of x) within the radii; returns it whole. */
    private double chord(Bench bench, Vec ray, double x, double share, double[] radii, double[] within) {
        double slope = x / (2 * focalOfCylinder);
        Vec steep = new Vec(-slope, 0, 1);
        double power = share * 2 * x * slant * steep.dot(ray) / ray.dot(bench.sun());
        Vec out = Bench.reflected(ray, steep.times(1 / steep.length()));
        double z = x * x / (4 * focalOfCylinder);
        Vec a = bench.landing(new Vec(x, -x * slant, z), out);
        Vec b = bench.landing(new Vec(x, x * slant, z), out);
        for (int k = 0; k < radii.length; k++) {
            within[k] += power * DiscOverlap.shareWithin(a.x(), a.y(), b.x(), b.y(), radii[k]);
        }
        return power;
    }
}
