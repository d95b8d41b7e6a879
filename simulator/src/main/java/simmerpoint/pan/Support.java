package simmerpoint.pan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a pan stands on, as far as it stops light: flat bars and a ring in the plane of its underside, in the target frame (x
 * level and away from the sun, y to the right of whoever faces the sun). Thickness is left out: a bar as thick as wide
 * stops up to a third more of light that comes in at 45° across it.
 *
 * @param bars straight ones
 * @param ringRadiusMetres of the ring's middle line, 0 for none
 * @param ringWidthMetres of the ring
 */
public record Support(List<Bar> bars, double ringRadiusMetres, double ringWidthMetres) {
    /** Nothing that stops light. */
    public static final Support NONE = new Support(List.of(), 0, 0);

    /** A usual grate: three bars 8 mm wide and 8 cm apart (common practice). */
    public static final Support USUAL = grate(3, 0.008, 0.30, 0.08, 0);

    /** Copies the list. */
    public Support {
        bars = List.copyOf(bars);
    }

    /**
     * A straight flat bar.
     *
     * @param x of its middle, m
     * @param y of its middle, m
     * @param azimuthRadians direction it runs, from +x towards +y
     * @param lengthMetres of the bar
     * @param widthMetres of the bar
     */
    public record Bar(double x, double y, double azimuthRadians, double lengthMetres, double widthMetres) {
        private boolean covers(double px, double py, double cos, double sin) {
            double along = (px - x) * cos + (py - y) * sin;
            double across = (py - y) * cos - (px - x) * sin;
            return Math.abs(along) <= lengthMetres / 2 && Math.abs(across) <= widthMetres / 2;
        }
    }

    /** Parallel bars, evenly about the pan's middle. */
    public static Support grate(int count, double width, double length, double spacing, double azimuth) {
        List<Bar> bars = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            double off = (k - (count - 1) / 2.0) * spacing;
            bars.add(new Bar(-off * Math.sin(azimuth), off * Math.cos(azimuth), azimuth, length, width));
        }
        return new Support(bars, 0, 0);
    }

    /** The same with an arm from the pan's middle out to {@code azimuth}; none if its width is 0. */
    public Support withArm(double width, double length, double azimuth) {
        if (!(width > 0)) {
            return this;
        }
        Bar arm = new Bar(length / 2 * Math.cos(azimuth), length / 2 * Math.sin(azimuth), azimuth, length, width);
        return new Support(Stream.concat(bars.stream(), Stream.of(arm)).toList(), ringRadiusMetres, ringWidthMetres);
    }

    /** The same with a ring, whose middle line is {@code diameter} wide; none if that is 0. */
    public Support withRing(double diameter, double width) {
        return new Support(bars, diameter / 2, diameter > 0 ? width : 0);
    }

    /** Whether anything stops light. */
    public boolean any() {
        return !bars.isEmpty() || ringWidthMetres > 0;
    }

    /** Tells which places are covered; for the ray loop, with sines worked out once. */
    public Cover cover() {
        return new Cover();
    }

    /** The places covered. */
    public final class Cover {
        private final Bar[] each = bars.toArray(Bar[]::new);
        private final double[] cos =
                bars.stream().mapToDouble(bar -> Math.cos(bar.azimuthRadians())).toArray();
        private final double[] sin =
                bars.stream().mapToDouble(bar -> Math.sin(bar.azimuthRadians())).toArray();
        private final boolean any = Support.this.any();

        private Cover() {}

        /** Whether anything is covered. */
        public boolean any() {
            return any;
        }

        /** Whether a bar or the ring covers the place (x, y) of the underside's plane. */
        public boolean covers(double x, double y) {
            for (int k = 0; k < each.length; k++) {
                if (each[k].covers(x, y, cos[k], sin[k])) {
                    return true;
                }
            }
            return ringWidthMetres > 0 && Math.abs(Math.hypot(x, y) - ringRadiusMetres) <= ringWidthMetres / 2;
        }

        /** Whether it stops a ray from (px, py, pz), below the plane, along (dx, dy, dz). */
        public boolean stops(double px, double py, double pz, double dx, double dy, double dz) {
            if (!(any && pz < 0 && dz > 0)) {
                return false;
            }
            double t = -pz / dz;
            return covers(px + t * dx, py + t * dy);
        }
    }

    /**
     * Share of an evenly lit underside that parallel bars longer than it cover: strips of a disc, by the integral of its
     * chords, y√(R² − y²) + R² asin(y/R) (any table of integrals). Bars must not overlap.
     */
    public double shareOfDisc(double radiusMetres) {
        double covered = 0;
        for (Bar bar : bars) {
            double off = Math.hypot(bar.x(), bar.y());
            covered +=
                    below(off + bar.widthMetres() / 2, radiusMetres) - below(off - bar.widthMetres() / 2, radiusMetres);
        }
        return covered / (Math.PI * radiusMetres * radiusMetres);
    }

    private static double below(double y, double radius) {
        double within = Math.max(-radius, Math.min(radius, y));
        return within * Math.sqrt(radius * radius - within * within) + radius * radius * Math.asin(within / radius);
    }
}
