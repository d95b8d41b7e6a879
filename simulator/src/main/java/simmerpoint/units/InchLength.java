package simmerpoint.units;

import java.util.Locale;

/** Lengths as someone with an inch rule says them: halves to sixteenths, thousandths of what is thin, feet of what is long. */
public final class InchLength {
    private static final double INCH = UnitSystem.INCH.shortUnitMetres();
    private static final char NBSP = '\u00a0';
    private static final int SIXTEENTHS = 16;

    /** From here on a length is said in feet and inches. */
    private static final double LONG_INCHES = 96;

    /** A fraction stands for a length that is no farther off than this share of it. */
    private static final double NEAR = 0.06;

    private InchLength() {}

    /** A length (m) with its unit, to about so many digits that count: "31 1/2 in", "0.043 in", "10 ft 5 in". */
    public static String text(double metres, int significant) {
        double inches = Math.abs(metres) / INCH;
        String sign = metres < 0 ? "\u2212" : "";
        if (inches >= LONG_INCHES) {
            return sign + feet(Math.round(inches));
        }
        if (inches < 1) {
            return sign + thin(inches) + NBSP + "in";
        }
        return sign + fraction(inches, parts(inches, significant)) + NBSP + "in";
    }

    private static String feet(long inches) {
        return inches / 12 + "" + NBSP + "ft" + (inches % 12 == 0 ? "" : "" + NBSP + inches % 12 + NBSP + "in");
    }

    /** Into how many parts an inch is divided for a length of that size. */
    private static int parts(double inches, int significant) {
        if (significant > 2) {
            return inches < 12 ? SIXTEENTHS : 4;
        }
        return inches < 3 ? 8 : inches < 10 ? 4 : 1;
    }

    private static String thin(double inches) {
        for (int parts : new int[] {SIXTEENTHS, 2 * SIXTEENTHS}) {
            double shown = Math.rint(inches * parts) / parts;
            if (Math.abs(shown - inches) <= NEAR * inches) {
                return fraction(inches, parts);
            }
        }
        return DecimalFormatter.stripped(String.format(Locale.ROOT, "%.3f", inches));
    }

    /** "12 1/2": to the nearest part. */
    public static String fraction(double inches, int parts) {
        long count = Math.round(Math.abs(inches) * parts);
        long whole = count / parts;
        long over = count % parts;
        int under = parts;
        while (over != 0 && over % 2 == 0) {
            over /= 2;
            under /= 2;
        }
        String part = over == 0 ? "" : over + "/" + under;
        String size = over == 0 ? Long.toString(whole) : whole == 0 ? part : whole + "" + NBSP + part;
        return inches < 0 && count > 0 ? "\u2212" + size : size;
    }
}
