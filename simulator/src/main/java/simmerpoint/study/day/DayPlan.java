package simmerpoint.study.day;

import java.time.Duration;
import java.time.LocalDate;

/**
 * Which day to look at, and how closely.
 *
 * @param date by the clock of the place
 * @param step between two instants, {@link #SHORTEST_STEP} to {@link #LONGEST_STEP}
 * @param leastElevationRadians lower suns are left out, above 0 to less than π/2
 */
public record DayPlan(LocalDate date, Duration step, double leastElevationRadians) {
    /** Where nothing else is asked, every full hour. */
    public static final Duration USUAL_STEP = Duration.ofHours(1);

    /** Finest step. */
    public static final Duration SHORTEST_STEP = Duration.ofMinutes(5);

    /** Coarsest step. */
    public static final Duration LONGEST_STEP = Duration.ofHours(3);

    /**
     * Below 5° hedges, roofs and hills take the sun, clear-sky models part company, and next to nothing falls on a
     * level underside (this project's choice).
     */
    public static final double USUAL_LEAST_ELEVATION = Math.toRadians(5);

    /** Checks step and elevation. */
    public DayPlan {
        if (!(step.compareTo(SHORTEST_STEP) >= 0 && step.compareTo(LONGEST_STEP) <= 0)) {
            throw new IllegalArgumentException("a step of " + step + " is outside 5 minutes to 3 hours");
        }
        if (!(leastElevationRadians > 0 && leastElevationRadians < Math.PI / 2)) {
            throw new IllegalArgumentException(
                    "least elevation " + leastElevationRadians + " rad is outside 0 to pi/2");
        }
    }

    /** Every full hour of {@code date}. */
    public static DayPlan hourly(LocalDate date) {
        return new DayPlan(date, USUAL_STEP, USUAL_LEAST_ELEVATION);
    }
}
