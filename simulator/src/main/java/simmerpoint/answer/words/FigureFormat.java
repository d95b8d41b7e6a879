package simmerpoint.answer.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import simmerpoint.sampling.Estimate;
import simmerpoint.units.DecimalFormatter;
import simmerpoint.units.InchLength;
import simmerpoint.units.UnitSystem;

/**
 * Figures as text, in the units the reader asked for and with no more digits than their standard error deserves: the
 * standard error is given two digits where it starts with 1 or 2 and one digit otherwise, and the figure ends where the
 * error ends; an error too small to be shown is rounded up. Figure and unit are joined by no-break spaces. A figure that is not a finite number reads "unknown".
 *
 * @param system metric or inch
 */
public record FigureFormat(UnitSystem system) {
    /** Joins a figure and its unit. */
    public static final String NBSP = "\u00a0";

    private static final String UNKNOWN = "unknown";
    private static final int MOST_SIGNIFICANT = 7;
    private static final int MOST_DECIMALS = 4;
    private static final double HALF_A_HUNDREDTH = 0.005;

    /** An error that is a smaller share of its figure comes from rounding: the figure is known in closed form. */
    private static final double ROUNDING = 1e-11;

    /** Digits after the point that {@code error} deserves; below 0 for tens, hundreds and so on. */
    static int decimals(double value, double error) {
        int significant = error > 0 ? MOST_SIGNIFICANT : 4;
        int bySize = significant - 1 - exponent(value);
        if (!(error > 0)) {
            return Math.max(0, Math.min(MOST_DECIMALS, bySize));
        }
        int lead = -exponent(error);
        double mantissa = error * Math.pow(10, lead);
        int byError = mantissa < 2.95 ? lead + 1 : lead;
        return Math.min(byError, Math.min(MOST_DECIMALS, Math.max(bySize, -exponent(value))));
    }

    private static int exponent(double x) {
        return x == 0 ? 0 : (int) Math.floor(Math.log10(Math.abs(x)));
    }

    /** {@code x} with the given digits after the point, a true minus sign, and never "-0". */
    public static String fixed(double x, int decimals) {
        if (!Double.isFinite(x)) {
            return UNKNOWN;
        }
        BigDecimal rounded = BigDecimal.valueOf(x).setScale(decimals, RoundingMode.HALF_UP);
        String digits = rounded.abs().toPlainString();
        return rounded.signum() < 0 ? "\u2212" + digits : digits;
    }

    /** {@code x} rounded to so many digits that count, written without an exponent. */
    public static String rounded(double x, int significant) {
        if (!Double.isFinite(x)) {
            return UNKNOWN;
        }
        int decimals = significant - 1 - exponent(x);
        String text = fixed(x, decimals);
        double again = Math.abs(Double.parseDouble(text.replace('\u2212', '-')));
        return exponent(again) > exponent(x) ? fixed(x, decimals - 1) : text;
    }

    /** "623 ± 2 W", or "623 W" for a figure known in closed form. */
    public static String withError(Estimate e, String unit) {
        return withError(e.value(), e.standardError(), unit, MOST_DECIMALS);
    }

    private static String withError(double value, double spread, String unit, int mostDecimals) {
        double error = spread < ROUNDING * Math.abs(value) ? 0 : spread;
        String tail = unit.isEmpty() ? "" : NBSP + unit;
        if (!Double.isFinite(value)) {
            return UNKNOWN;
        }
        int deserved = decimals(value, error);
        int decimals = Math.min(mostDecimals, deserved);
        if (!(error > 0) || !Double.isFinite(error)) {
            return fixed(value, Math.max(0, decimals)) + tail;
        }
        boolean cutShort = decimals < deserved || error < Math.pow(10, -decimals);
        RoundingMode mode = cutShort ? RoundingMode.UP : RoundingMode.HALF_UP;
        String shown = BigDecimal.valueOf(error).setScale(decimals, mode).toPlainString();
        return fixed(value, decimals) + NBSP + "\u00b1" + NBSP + shown + tail;
    }

    /** The figure alone, with the digits its error deserves but at most {@code significant} of them. */
    private static String alone(Estimate e, int significant, String unit) {
        if (!Double.isFinite(e.value())) {
            return UNKNOWN;
        }
        int decimals = Math.min(decimals(e.value(), e.standardError()), significant - 1 - exponent(e.value()));
        return fixed(e.value(), Math.min(decimals, MOST_DECIMALS)) + NBSP + unit;
    }

    /** Power with its error, in W, from 100 kW on in kW. */
    public String watts(Estimate e) {
        if (Math.abs(e.value()) >= 1e5) {
            return withError(e.times(1e-3), "kW");
        }
        return withError(e.value(), e.standardError(), "W", finest(e));
    }

    /** Power with its error under a head that says W: "23.1 ± 0.4", from 100 W on in whole ones; from 100 kW on with its unit. */
    public String wattsAlone(Estimate e) {
        double size = Math.abs(e.value());
        return size >= 1e5 ? watts(e) : withError(e.value(), e.standardError(), "", size >= 100 ? 0 : finest(e));
    }

    /** Power with its error beside figures of about {@code whole} W, so no finer than suits those. */
    public String wattsOf(double whole, Estimate e) {
        return Math.abs(e.value()) >= 1e5
                ? watts(e)
                : withError(e.value(), e.standardError(), "W", finest(Estimate.exact(whole)));
    }

    /** A hundredth of a watt is enough, but where it would leave nothing of the figure. */
    private static int finest(Estimate e) {
        double size = Math.abs(e.value());
        return size < 0.1 && size > e.standardError() ? MOST_DECIMALS : 2;
    }

    /** Power for a sentence: at most three digits that count, and none below a hundredth of a watt. */
    public String plainWatts(Estimate e) {
        if (Math.abs(e.value()) >= 1e5) {
            return alone(e.times(1e-3), 3, "kW");
        }
        if (Math.abs(e.value()) < HALF_A_HUNDREDTH) {
            return "0" + NBSP + "W";
        }
        return Math.abs(e.value()) < 0.5 ? rounded(e.value(), 1) + NBSP + "W" : alone(e, 3, "W");
    }

    /** Power in whole watts, {@code < 1 W} for a little of it. */
    public String wholeWatts(Estimate e) {
        double size = Math.abs(e.value());
        return size >= 0.5
                ? fixed(e.value(), 0) + NBSP + "W"
                : size > 0 ? "<" + NBSP + "1" + NBSP + "W" : "0" + NBSP + "W";
    }

    /** Flux with its error, kW/m²; below 10 W/m² in W/m². */
    public String flux(Estimate wattsPerSquareMetre) {
        return weak(wattsPerSquareMetre)
                ? withError(wattsPerSquareMetre, "W/m\u00b2")
                : withError(wattsPerSquareMetre.times(1e-3), "kW/m\u00b2");
    }

    /** Flux for a sentence, kW/m² (below 10 W/m² in W/m²): at most two digits that count. */
    public String plainFlux(Estimate wattsPerSquareMetre) {
        return weak(wattsPerSquareMetre)
                ? alone(wattsPerSquareMetre, 2, "W/m\u00b2")
                : alone(wattsPerSquareMetre.times(1e-3), 2, "kW/m\u00b2");
    }

    /** Flux that is known to a few per cent, kW/m²: two digits that count. */
    public String roughFlux(double wattsPerSquareMetre) {
        return rounded(wattsPerSquareMetre / 1000, 2) + NBSP + "kW/m\u00b2";
    }

    private static boolean weak(Estimate wattsPerSquareMetre) {
        return Math.abs(wattsPerSquareMetre.value()) < 10;
    }

    /** A share (0 to 1) with its error, in per cent. */
    public String percent(Estimate share) {
        return withError(share.value() * 100, share.standardError() * 100, "%", 3);
    }

    /** A share (0 to 1) for a sentence or a table: "43 %", "4.3 %", "0.4 %", "under 0.1 %". */
    public String percent(double share) {
        if (!Double.isFinite(share)) {
            return UNKNOWN;
        }
        double p = 100 * share;
        if (p > 0 && p < 0.05) {
            return "<" + NBSP + "0.1" + NBSP + "%";
        }
        return fixed(p, p >= 9.95 || p == 0 ? 0 : 1) + NBSP + "%";
    }

    /** A length (m) with its error: mm, cm or m, or inches. */
    public String length(Estimate metres) {
        String unit = unitFor(metres.value(), metres.standardError());
        return withError(metres.times(1 / size(unit)), unit);
    }

    /** A length (m) to three digits that count. */
    public String length(double metres) {
        return length(metres, 3);
    }

    /**
     * A length (m) to so many digits that count, but neither finer than 0.1 mm nor coarser than 1 cm or 1 in: who measures
     * with a folding rule reads "130 cm" as 130 and not as 125. Inches have fractions, as {@link InchLength} writes them.
     */
    public String length(double metres, int significant) {
        if (!Double.isFinite(metres)) {
            return UNKNOWN;
        }
        if (system == UnitSystem.INCH) {
            return InchLength.text(metres, significant);
        }
        String unit = unitFor(metres, 0);
        double x = metres / size(unit);
        int finest = unit.equals("cm") ? 2 : unit.equals("m") ? 3 : 1;
        int coarsest = unit.equals("m") ? 2 : 0;
        int decimals = Math.max(coarsest, Math.min(finest, significant - 1 - exponent(x)));
        return DecimalFormatter.stripped(fixed(x, decimals)) + NBSP + unit;
    }

    private String unitFor(double metres, double error) {
        if (system == UnitSystem.INCH) {
            return "in";
        }
        double size = Math.max(Math.abs(metres), error);
        return size >= 2 ? "m" : size >= 0.01 ? "cm" : "mm";
    }

    private static double size(String unit) {
        return switch (unit) {
            case "m" -> 1;
            case "cm" -> 0.01;
            case "mm" -> 0.001;
            default -> UnitSystem.INCH.shortUnitMetres();
        };
    }

    /** A pure number with its error. */
    public String number(Estimate e) {
        return withError(e, "");
    }

    /** An angle (rad) in whole degrees. */
    public String degrees(double radians) {
        return fixed(Math.toDegrees(radians), 0) + "\u00b0";
    }

    /** An angle (rad) to two digits that count, mrad. */
    public static String milliradians(double radians) {
        return (radians == 0 ? "0" : rounded(radians * 1000, 2)) + NBSP + "mrad";
    }

    /** "28 to 33", or one of them where both read the same. */
    public static String span(String low, String high) {
        return low.equals(high) ? low : low + NBSP + "to" + NBSP + high;
    }

    /** A count with a thin grouping of its digits by threes: "262 144". */
    public static String count(long n) {
        StringBuilder digits = new StringBuilder(Long.toString(n));
        for (int i = digits.length() - 3; i > (n < 0 ? 1 : 0); i -= 3) {
            digits.insert(i, NBSP);
        }
        return digits.toString();
    }
}
