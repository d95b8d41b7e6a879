package simmerpoint.truth;

import simmerpoint.geometry.Vec;

/**
 * The part of a uniform sun that one place of the mirror sends within a circle of the target's plane. Along a line across
 * the sun the landing point's squared distance from the middle is a parabola, but for terms that are small as angles
 * are: its two crossings of R² are found by polishing the parabola's roots, and the lengths between them are integrated
 * over the lines that reach the circle. The parabola is laid through the sun's disc, or through the patch if smaller.
 */
final class SunPatch {
    /** How one place of the mirror maps the sun onto the target's plane. */
    interface Image {
        /** Sine of the sun's half-angle. */
        double sine();

        /** Where light from the place (u, v) on the sun lands, from the target's middle, m. */
        Vec landing(double u, double v);

        /** Power per unit of mirror area in plan if all light came from (u, v). */
        double weight(double u, double v);
    }

    private final Image image;
    private final double radius;
    private final double sine;
    private double u0;
    private double v0;
    private double uStep;
    private double vStep;

    SunPatch(Image image, double radius) {
        this.image = image;
        this.radius = radius;
        this.sine = image.sine();
        aimAtMiddle();
        if (!(uStep < sine)) {
            u0 = 0;
            uStep = sine;
        }
        if (!(vStep < sine)) {
            v0 = 0;
            vStep = sine;
        }
    }

    /** The place on the sun that lands in the middle, and how far the patch reaches about it. */
    private void aimAtMiddle() {
        double h = 1e-3 * sine;
        for (int k = 0; k < 3; k++) {
            Vec q = image.landing(u0, v0);
            Vec du = image.landing(u0 + h, v0).minus(image.landing(u0 - h, v0)).times(0.5 / h);
            Vec dv = image.landing(u0, v0 + h).minus(image.landing(u0, v0 - h)).times(0.5 / h);
            double det = du.x() * dv.y() - du.y() * dv.x();
            u0 -= (q.x() * dv.y() - q.y() * dv.x()) / det;
            v0 -= (du.x() * q.y() - du.y() * q.x()) / det;
            uStep = radius * Math.hypot(dv.x(), dv.y()) / Math.abs(det);
            vStep = radius * Math.hypot(du.x(), du.y()) / Math.abs(det);
        }
    }

    /** Power within the circle per unit of mirror area in plan; {@code tilt} is a rule over −π/2..π/2. */
    double power(Rule tilt) {
        if (Math.hypot(u0, v0) > 4 * sine) {
            return 0;
        }
        Parabola lines = new Parabola(least(v0 - vStep), least(v0), least(v0 + vStep));
        if (lines.misses()) {
            return 0;
        }
        double from = Math.max(-sine, polishedLine(v0 + vStep * lines.lower()));
        double to = Math.min(sine, polishedLine(v0 + vStep * lines.upper()));
        double sum = 0;
        for (int j = 0; j < tilt.size() && to > from; j++) {
            double v = (from + to) / 2 + (to - from) / 2 * Math.sin(tilt.at()[j]);
            sum += (to - from) / 2 * Math.cos(tilt.at()[j]) * tilt.weight()[j] * powerOfLine(v);
        }
        return sum / (Math.PI * sine * sine);
    }

    /** Length of the line at v that lands within the circle, times its power. */
    private double powerOfLine(double v) {
        Parabola p = line(v);
        if (p.misses()) {
            return 0;
        }
        double half = Math.sqrt(Math.max(0, sine * sine - v * v));
        double from = Math.max(-half, polished(u0 + uStep * p.lower(), p, v));
        double to = Math.min(half, polished(u0 + uStep * p.upper(), p, v));
        return to > from ? (to - from) * image.weight((from + to) / 2, v) : 0;
    }

    private Parabola line(double v) {
        return new Parabola(miss(u0 - uStep, v), miss(u0, v), miss(u0 + uStep, v));
    }

    private double least(double v) {
        return line(v).least();
    }

    private double polished(double guess, Parabola p, double v) {
        double u = guess;
        for (int k = 0; k < 3 && Math.abs(u) < 2 * sine; k++) {
            double slope = p.slope((u - u0) / uStep) / uStep;
            u -= slope == 0 ? 0 : miss(u, v) / slope;
        }
        return u;
    }

    private double polishedLine(double guess) {
        double v = guess;
        double h = 1e-3 * vStep;
        for (int k = 0; k < 3 && Math.abs(v) < 2 * sine; k++) {
            double slope = (least(v + h) - least(v - h)) / (2 * h);
            v -= slope == 0 ? 0 : least(v) / slope;
        }
        return v;
    }

    /** Squared distance of the landing point from the middle less the radius squared. */
    private double miss(double u, double v) {
        Vec q = image.landing(u, v);
        return q.dot(q) - radius * radius;
    }

    /** The parabola with these values at −1, 0, 1. */
    private record Parabola(double below, double centre, double above) {
        private double a() {
            return (above + below - 2 * centre) / 2;
        }

        private double b() {
            return (above - below) / 2;
        }

        private double root2() {
            return b() * b() - 4 * a() * centre;
        }

        boolean misses() {
            return !(root2() > 0);
        }

        double lower() {
            return (-b() - Math.sqrt(root2())) / (2 * a());
        }

        double upper() {
            return (-b() + Math.sqrt(root2())) / (2 * a());
        }

        double least() {
            return centre - b() * b() / (4 * a());
        }

        double slope(double at) {
            return 2 * a() * at + b();
        }
    }
}
