package simmerpoint.drawing;

/**
 * Colours for flux: from near black over blue, violet, red and orange to pale yellow. Lightness rises all the way, so
 * that the map reads in grey and by the colour-blind, and equal steps of flux are equal steps of seen colour.
 *
 * <p>The table is computed, not listed: a path through the colour space Oklab (B. Ottosson, 2020, "A perceptual color
 * space for image processing"; matrices from there) with lightness rising evenly and hue turning from 270° over 360° to
 * 105°, its chroma cut back to what sRGB (IEC 61966-2-1) can show, then divided into steps of equal length.
 */
public final class FluxColours {
    /** Number of colours. */
    public static final int STEPS = 256;

    private static final int OPAQUE = 0xFF000000;
    private static final int FINE = 4096;
    private static final int[] TABLE = table();

    private FluxColours() {}

    /** The colour (0xRRGGBB) for a share of the scale; below 0 the first, above 1 the last, NaN the first. */
    public static int rgb(double share) {
        int step = (int) (share * STEPS);
        return TABLE[Math.max(0, Math.min(STEPS - 1, step))];
    }

    /** The same, opaque (0xFFRRGGBB). */
    public static int argb(double share) {
        return OPAQUE | rgb(share);
    }

    private static int[] table() {
        double[][] path = new double[FINE + 1][];
        double[] length = new double[FINE + 1];
        for (int k = 0; k <= FINE; k++) {
            path[k] = oklab(k / (double) FINE);
            length[k] = k == 0 ? 0 : length[k - 1] + distance(path[k], path[k - 1]);
        }
        int[] colours = new int[STEPS];
        int at = 0;
        for (int step = 0; step < STEPS; step++) {
            double wanted = length[FINE] * step / (STEPS - 1);
            while (at < FINE && length[at] < wanted) {
                at++;
            }
            colours[step] = packed(linear(path[at]));
        }
        return colours;
    }

    private static double distance(double[] a, double[] b) {
        return Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
    }

    /** Place on the path, t from 0 to 1. */
    private static double[] oklab(double t) {
        double lightness = 0.14 + 0.83 * t;
        double hue = Math.toRadians(270 + 195 * t);
        double chroma = 0.03 + 0.17 * Math.sin(Math.PI * Math.pow(t, 0.85));
        chroma = Math.min(chroma, mostChroma(lightness, hue));
        return new double[] {lightness, chroma * Math.cos(hue), chroma * Math.sin(hue)};
    }

    /** The largest chroma that sRGB can show, by bisection. */
    private static double mostChroma(double lightness, double hue) {
        double low = 0;
        double high = 0.4;
        for (int k = 0; k < 40; k++) {
            double middle = (low + high) / 2;
            if (shown(lightness, middle, hue)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static boolean shown(double lightness, double chroma, double hue) {
        double[] rgb = linear(new double[] {lightness, chroma * Math.cos(hue), chroma * Math.sin(hue)});
        for (double c : rgb) {
            if (!(c >= -1e-6 && c <= 1 + 1e-6)) {
                return false;
            }
        }
        return true;
    }

    /** Linear sRGB of an Oklab colour. */
    private static double[] linear(double[] lab) {
        double l = cube(lab[0] + 0.3963377774 * lab[1] + 0.2158037573 * lab[2]);
        double m = cube(lab[0] - 0.1055613458 * lab[1] - 0.0638541728 * lab[2]);
        double s = cube(lab[0] - 0.0894841775 * lab[1] - 1.2914855480 * lab[2]);
        return new double[] {
            4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
            -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
            -0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s
        };
    }

    private static double cube(double x) {
        return x * x * x;
    }

    private static int packed(double[] linear) {
        int rgb = 0;
        for (double c : linear) {
            double x = Math.max(0, Math.min(1, c));
            double coded = x <= 0.0031308 ? 12.92 * x : 1.055 * Math.pow(x, 1 / 2.4) - 0.055;
            rgb = (rgb << 8) | (int) Math.round(255 * coded);
        }
        return rgb;
    }
}
