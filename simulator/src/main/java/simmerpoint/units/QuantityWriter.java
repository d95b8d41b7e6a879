package simmerpoint.units;

import simmerpoint.sampling.Estimate;

/**
 * Formats SI values with units. Plain values get about three digits; an {@link Estimate} gets the digits that are
 * significant for its standard error, as in "623 W ± 2 W".
 *
 * @param system metric or inch
 */
public record QuantityWriter(UnitSystem system) {
    private static final String UNKNOWN = "unknown";
    private static final double KILO = 1000;

    /** A length given in m, for instance "12 mm", "24 cm", "1.2 m" or "0.48 in"; "unknown" if not finite. */
    public String length(double metres) {
        if (!Double.isFinite(metres)) {
            return UNKNOWN;
        }
        Scale scale = lengthScale(metres);
        double number = metres / scale.size;
        int decimals = system == UnitSystem.INCH ? (Math.abs(number) < 10 ? 2 : 1) : scale.decimals;
        return DecimalFormatter.decimals(number, decimals, 2) + " " + scale.symbol;
    }

    /** A length in m with its standard error, both in the same unit. */
    public String length(Estimate metres) {
        return estimate(metres, lengthScale(Math.max(Math.abs(metres.value()), metres.standardError())));
    }

    /** A length given in m with all its digits, for a scenario file: reads back as the same number. */
    public String exactLength(double metres) {
        return exact(metres, Dimension.LENGTH, lengthScale(metres).symbol);
    }

    /** An angle given in rad with all its digits in the unit ("°" or "mrad"), for a scenario file. */
    public String exactAngle(double radians, String unit) {
        return exact(radians, Dimension.ANGLE, unit);
    }

    private static String exact(double si, Dimension dimension, String symbol) {
        Unit unit = UnitTable.find(dimension, symbol).orElseThrow(() -> new IllegalArgumentException(symbol));
        return DecimalFormatter.exact(unit.fromSi(si)) + (symbol.equals("°") ? "" : " ") + symbol;
    }

    /** An area given in m², for instance "1.12 m²" or "12.1 ft²". */
    public String area(double squareMetres) {
        boolean inch = system == UnitSystem.INCH;
        double number = inch ? squareMetres / (0.3048 * 0.3048) : squareMetres;
        return plain(number, new Scale(inch ? "ft²" : "m²", 1, 2));
    }

    /** An angle given in rad, in degrees, for instance "0.25°". */
    public String degrees(double radians) {
        return Double.isFinite(radians) ? DecimalFormatter.decimals(Math.toDegrees(radians), 1, 2) + "°" : UNKNOWN;
    }

    /** An angle given in rad, in mrad, for instance "4.65 mrad". */
    public String milliradians(double radians) {
        return Double.isFinite(radians) ? DecimalFormatter.decimals(radians * KILO, 2, 2) + " mrad" : UNKNOWN;
    }

    /** An angle given in rad: in mrad below 50 mrad, in degrees from there. */
    public String angle(double radians) {
        return Math.abs(radians) < 0.05 ? milliradians(radians) : degrees(radians);
    }

    /** A share as per cent, for instance "85 %". */
    public String share(double share) {
        return Double.isFinite(share) ? DecimalFormatter.decimals(share * 100, 1, 2) + " %" : UNKNOWN;
    }

    /** A share with its standard error, as per cent. */
    public String share(Estimate share) {
        return estimate(share, new Scale("%", 0.01, 1));
    }

    /** A power given in W. */
    public String watts(double watts) {
        return plain(watts, powerScale(watts, "W"));
    }

    /** A power in W with its standard error, for instance "623 W ± 2 W". */
    public String watts(Estimate watts) {
        return estimate(watts, powerScale(watts.value(), "W"));
    }

    /** An irradiance or flux given in W/m². */
    public String irradiance(double wattsPerSquareMetre) {
        return plain(wattsPerSquareMetre, powerScale(wattsPerSquareMetre * 5, "W/m²"));
    }

    /** An irradiance or flux in W/m² with its standard error. */
    public String irradiance(Estimate wattsPerSquareMetre) {
        return estimate(wattsPerSquareMetre, powerScale(wattsPerSquareMetre.value() * 5, "W/m²"));
    }

    private record Scale(String symbol, double size, int decimals) {}

    private Scale lengthScale(double metres) {
        if (system == UnitSystem.INCH) {
            return new Scale("in", 0.0254, 2);
        }
        double size = Math.abs(metres);
        if (size < 0.0995) {
            return new Scale("mm", 0.001, 0);
        }
        return size < 0.9995 ? new Scale("cm", 0.01, 1) : new Scale("m", 1, 2);
    }

    private static Scale powerScale(double watts, String symbol) {
        return Math.abs(watts) < 10 * KILO ? new Scale(symbol, 1, 0) : new Scale("k" + symbol, KILO, 1);
    }

    private static String plain(double value, Scale scale) {
        return !Double.isFinite(value) ? UNKNOWN : threeDigits(value / scale.size) + " " + scale.symbol;
    }

    private static String threeDigits(double number) {
        return DecimalFormatter.decimals(number, Math.max(0, 2 - DecimalFormatter.exponent(number)), 3);
    }

    private static String estimate(Estimate estimate, Scale scale) {
        double value = estimate.value() / scale.size;
        double error = estimate.standardError() / scale.size;
        if (!Double.isFinite(value)) {
            return UNKNOWN;
        }
        if (!Double.isFinite(error)) {
            return threeDigits(value) + " " + scale.symbol + " ± unknown";
        }
        if (error == 0) {
            return threeDigits(value) + " " + scale.symbol;
        }
        int place = DecimalFormatter.lastPlace(value, error);
        return DecimalFormatter.atPlace(value, place) + " " + scale.symbol + " ± "
                + DecimalFormatter.atPlace(error, place) + " " + scale.symbol;
    }
}
