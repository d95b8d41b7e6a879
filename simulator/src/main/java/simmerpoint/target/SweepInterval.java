package simmerpoint.target;

/**
 * The interval of κ in which the point q + κ·w of the plane z = 0 lies in a disc or in the projected outline of an upright
 * cylinder. Held in {@link #low} and {@link #high}; empty if low is not below high. Not thread-safe.
 */
final class SweepInterval {
    double low;
    double high;

    private void clear() {
        low = Double.POSITIVE_INFINITY;
        high = Double.NEGATIVE_INFINITY;
    }

    private void setToAll() {
        low = Double.NEGATIVE_INFINITY;
        high = Double.POSITIVE_INFINITY;
    }

    private void include(double from, double to) {
        low = Math.min(low, from);
        high = Math.max(high, to);
    }

    /** Sets the interval within the disc of radius² {@code r2} about (mx, my). */
    void setToDisc(double qx, double qy, double wx, double wy, double mx, double my, double r2) {
        clear();
        addDisc(qx - mx, qy - my, wx, wy, r2);
    }

    private void addDisc(double qx, double qy, double wx, double wy, double r2) {
        double a = wx * wx + wy * wy;
        double b = qx * wx + qy * wy;
        double c = qx * qx + qy * qy - r2;
        if (a == 0) {
            if (c <= 0) {
                setToAll();
            }
            return;
        }
        double root2 = b * b - a * c;
        if (root2 > 0) {
            double root = Math.sqrt(root2);
            include((-b - root) / a, (root - b) / a);
        }
    }

    /**
     * Sets the interval within the convex hull of the two discs of radius² {@code r2} about the origin and about (mx, my):
     * the oblique projection of a cylinder onto the plane of its underside.
     */
    void setToOutline(double qx, double qy, double wx, double wy, double mx, double my, double r2) {
        setToDisc(qx, qy, wx, wy, 0, 0, r2);
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
            include(from, to);
        }
    }
}
