package simmerpoint.truth;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.geometry.Vec;

/**
 * Light of flat panels on a bare disc without any flaw of the mirror, free of chance. A flat panel keeps a parallel beam
 * parallel, so for one place on the sun its image on the disc's plane is an affine image of the panel, evenly lit, and
 * its overlap with a circle is known in closed form. What is left is a two-dimensional integral over the sun's disc.
 */
final class FlatPanelQuadrature {
    private final List<Vec[]> panels;

    FlatPanelQuadrature(List<Vec[]> panels) {
        this.panels = panels;
    }

    /** Trapezoids with their corners on z = r²/4f, ribs at angle 2πk/sectors from +x, rings of equal width. */
    static FlatPanelQuadrature rings(double diameter, double focal, double hub, int sectors, int rings) {
        List<Vec[]> all = new ArrayList<>();
        for (int k = 0; k < sectors; k++) {
            for (int j = 0; j < rings; j++) {
                double inner = (hub + (diameter - hub) * j / rings) / 2;
                double outer = (hub + (diameter - hub) * (j + 1) / rings) / 2;
                double a = 2 * Math.PI * k / sectors;
                double b = 2 * Math.PI * (k + 1) / sectors;
                all.add(new Vec[] {
                    onParaboloid(inner, a, focal),
                    onParaboloid(outer, a, focal),
                    onParaboloid(outer, b, focal),
                    onParaboloid(inner, b, focal)
                });
            }
        }
        return new FlatPanelQuadrature(all);
    }

    private static Vec onParaboloid(double r, double angle, double focal) {
        return new Vec(r * Math.cos(angle), r * Math.sin(angle), r * r / (4 * focal));
    }

    /** Integrates over a uniform sun of half-angle {@code sun} with {@code fine} rings of 2·fine places. */
    Within integrate(Bench bench, double sun, int fine, double... radii) {
        Rule rings = Rule.gauss(0, 1, 1, fine);
        int spokes = 2 * fine;
        double[] within = new double[radii.length];
        double reflected = 0;
        for (int i = 0; i < fine; i++) {
            double rho = Math.sin(sun) * Math.sqrt(rings.at()[i]);
            for (int j = 0; j < spokes; j++) {
                double angle = 2 * Math.PI * (j + 0.5 * (i % 2)) / spokes;
                Vec ray = bench.ray(rho * Math.cos(angle), rho * Math.sin(angle));
                Within one = oneDirection(bench, ray, radii);
                double weight = rings.weight()[i] / spokes;
                reflected += weight * one.reflected();
                for (int k = 0; k < radii.length; k++) {
                    within[k] += weight * one.within()[k];
                }
            }
        }
        return new Within(reflected, within);
    }

    private Within oneDirection(Bench bench, Vec ray, double[] radii) {
        double[] within = new double[radii.length];
        double reflected = 0;
        for (Vec[] panel : panels) {
            Vec areaVector = areaVector(panel);
            double power = areaVector.dot(ray) / ray.dot(bench.sun());
            Vec out = Bench.reflected(ray, areaVector.times(1 / areaVector.length()));
            double[] x = new double[panel.length];
            double[] y = new double[panel.length];
            for (int c = 0; c < panel.length; c++) {
                Vec q = bench.landing(panel[c], out);
                x[c] = q.x();
                y[c] = q.y();
            }
            reflected += power;
            double whole = DiscOverlap.area(x, y);
            for (int k = 0; k < radii.length; k++) {
                within[k] += power * DiscOverlap.areaWithin(x, y, radii[k]) / whole;
            }
        }
        return new Within(reflected, within);
    }

    /** Normal towards +z times the area. */
    private static Vec areaVector(Vec[] panel) {
        Vec sum = Vec.ZERO;
        for (int c = 2; c < panel.length; c++) {
            sum = sum.plus(panel[c - 1].minus(panel[0]).cross(panel[c].minus(panel[0])));
        }
        return sum.times(sum.z() > 0 ? 0.5 : -0.5);
    }
}
