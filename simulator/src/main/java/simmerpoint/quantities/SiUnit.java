package simmerpoint.quantities;

import java.util.Optional;
import java.util.stream.Stream;

/** The units of figures in files. The key of a figure that has a unit ends with it: {@code radius_50_m}. */
public enum SiUnit {
    /** Flux and irradiance. */
    WATT_PER_SQUARE_METRE("W_m2", "W/m\u00b2"),
    /** Loss by difference of temperature. */
    WATT_PER_KELVIN("W_K", "W/K"),
    /** Area. */
    SQUARE_METRE("m2", "m\u00b2"),
    /** Speed of an angle. */
    RADIAN_PER_SECOND("rad_s", "rad/s"),
    /** Rate of steam. */
    KILOGRAM_PER_SECOND("kg_s", "kg/s"),
    /** Speed. */
    METRE_PER_SECOND("m_s", "m/s"),
    /** Mass. */
    KILOGRAM("kg", "kg"),
    /** Angle. */
    RADIAN("rad", "rad"),
    /** Length. */
    METRE("m", "m"),
    /** Power. */
    WATT("W", "W"),
    /** Temperature. */
    CELSIUS("C", "\u00b0C"),
    /** Time. */
    SECOND("s", "s");

    private final String suffix;
    private final String sign;

    SiUnit(String suffix, String sign) {
        this.suffix = "_" + suffix;
        this.sign = sign;
    }

    /** The unit of the figure with this key; empty for counts, shares and texts. */
    public static Optional<SiUnit> ofKey(String key) {
        return Stream.of(values()).filter(unit -> key.endsWith(unit.suffix)).findFirst();
    }

    /** As it is written behind a figure. */
    public String sign() {
        return sign;
    }
}
