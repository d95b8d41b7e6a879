package simmerpoint.trial.power;

/**
 * What the standard asks of a test, from memory of ASAE S580 and Funk 2000 (Solar Energy 68, 1), not seen again; the ten minutes between
 * readings alone were seen.
 */
public enum TestCondition {
    /** Water for each m² of aperture, kg/m²: 7, taken as met within a fifth. */
    LOAD(5.6, 8.4),
    /** Mean wind of every interval, m/s. */
    WIND(0, 1),
    /** Air, °C. */
    AIR(20, 35),
    /** Irradiance of every interval, W/m². */
    IRRADIANCE(450, 1100),
    /** Change of irradiance within an interval, W/m². */
    STEADY_LIGHT(0, TestCondition.MOST_SPREAD),
    /** Water: 5 K above the air to 5 K below boiling, in every interval. */
    WATER(5, Double.POSITIVE_INFINITY),
    /** Minutes between readings. */
    READINGS(0, 10),
    /** Intervals of ten minutes. */
    INTERVALS(30, Double.POSITIVE_INFINITY),
    /** Days. */
    DAYS(3, Double.POSITIVE_INFINITY),
    /** Coefficient of determination. */
    DETERMINATION(0.75, 1);

    static final double MOST_SPREAD = 100;

    private final double low;
    private final double high;

    TestCondition(double low, double high) {
        this.low = low;
        this.high = high;
    }

    /** Least that is allowed. */
    public double low() {
        return low;
    }

    /** Most that is allowed. */
    public double high() {
        return high;
    }

    boolean holds(double value) {
        return value >= low && value <= high;
    }

    /** Whether it was met. */
    public enum Verdict {
        /** It was. */
        MET,
        /** It was not. */
        NOT_MET,
        /** The log does not say. */
        UNKNOWN
    }

    /**
     * How a test stood to a condition.
     *
     * @param condition which
     * @param low least that was found; NaN where the log does not say
     * @param high most that was found
     */
    public record Check(TestCondition condition, double low, double high) {
        /** Whether it was met. */
        public Verdict verdict() {
            if (Double.isNaN(low) || Double.isNaN(high)) {
                return Verdict.UNKNOWN;
            }
            return condition.holds(low) && condition.holds(high) ? Verdict.MET : Verdict.NOT_MET;
        }
    }
}
