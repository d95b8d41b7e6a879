package simmerpoint.target;

/**
 * The part of a straight walk q(κ) = q + κ·w, in the plane z = 0, that lies in a disc or in the shadow-like outline of an
 * upright cylinder. Kept in {@link #low} and {@link #high}; empty if low is not below high. For one thread.
 */
final class SweepInterval {
    double low;
    double high;

    private void none() {
        low = Double.POSITIVE_INFINITY;
        high = Double.NEGATIVE_INFINITY;
    }

    private void everything() {
        low = Double.NEGATIVE_INFINITY;
        high = Double.POSITIVE_INFINITY;
    }

    private void widen(double from, double to) {
        low = Math.min(low, from);
        high = Math.max(high, to);
    }

    /** Within the disc of radius² {@code r2} about (mx, my). */
    void inDisc(double qx, double qy, double wx, double wy, double mx, double my, double r2) {
        none();
        addDisc(qx - mx, qy - my, wx, wy, r2);
    }

    private void addDisc(double qx, double qy, double wx, double wy, double r2) {
        double a = wx * wx + wy * wy;
        double b = qx * wx + qy * wy;
        double c = qx * qx + qy * qy - r2;
        if (a == 0) {
            if (c <= 0) {
                everything();
            }
            return;
        }
        double root2 = b * b - a * c;
        if (root2 > 0) {
            double root = Math.sqrt(root2);
            widen((-b - root) / a, (root - b) / a);
        }
    }

    /**
     * Within the convex outline of the two discs of radius² {@code r2} about the origin and about (mx, my): what a
     * cylinder covers of the plane of its underside when seen along a slanting ray.
     */
    void inOutline(double qx, double qy, double wx, double wy, double mx, double my, double r2) {
        inDisc(qx, qy, wx, wy, 0, 0, r2);
        addDisc(qx - mx, qy - my, wx, wy, r2);
        double m2 = mx * mx + my * my;
        if (m2 > 0) {
            addBand(qx * mx + qy * my, wx * mx + wy * my, qy * mx - qx * my, wy * mx - wx * my, m2, r2 * m2);
        }
    }

    /** The rectangle between the two discs: along in 0 to m2, across² at most {@code across2}. */
    private void addBand(double along, double alongStep, double across, double acrossStep, double m2, double across2) {
        double from = Double.NEGATIVE_INFINITY;
        double to = Double.POSITIVE_INFINITY;
        if (alongStep != 0) {
            double a = -along / alongStep;
            double b = (m2 - along) / alongStep;
            from = Math.min(a, b);
            to = Math.max(a, b);
        } else if (!(along >= 0 && along <= m2)) {
            return;
        }
        double half = Math.sqrt(across2);
        if (acrossStep != 0) {
            double a = (-half - across) / acrossStep;
            double b = (half - across) / acrossStep;
            from = Math.max(from, Math.min(a, b));
            to = Math.min(to, Math.max(a, b));
        } else if (!(Math.abs(across) <= half)) {
            return;
        }
        if (from < to) {
            widen(from, to);
        }
    }
}
