package simmerpoint.viewer.yard;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.sun.Site;
import simmerpoint.sun.SunMoment;

/** The time of day at which the sun of a scenario's place and day stands at a given height. */
final class SunTime {
    /** The key of the time of day. */
    static final String KEY = "when.time";

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");
    private static final int DAY = 24 * 60;
    private static final int LOOK = 10;
    private static final double LEAST = Math.toRadians(1);

    private SunTime() {}

    /** Whether place and time say where the sun stands. */
    static boolean rules(Scenario scenario) {
        return scenario.site().filter(SiteConditions::timed).isPresent();
    }

    /** The scenario's own time. */
    static String now(Scenario scenario) {
        return scenario.site().orElseThrow().when().format(CLOCK);
    }

    /**
     * The whole minute at which the sun stands at {@code elevation} (rad), in the same half of the day; at noon if it never
     * climbs so high.
     */
    static String of(Scenario scenario, double elevation) {
        SiteConditions outdoors = scenario.site().orElseThrow();
        Site place = outdoors.place();
        ZonedDateTime midnight =
                outdoors.when().toLocalDate().atStartOfDay(outdoors.when().getZone());
        int noon = 0;
        for (int k = LOOK; k < DAY; k += LOOK) {
            noon = height(place, midnight, k) > height(place, midnight, noon) ? k : noon;
        }
        int low = outdoors.when().isBefore(midnight.plusMinutes(noon)) ? 0 : DAY - 1;
        int high = noon;
        double wanted = Math.max(LEAST, elevation);
        while (Math.abs(high - low) > 1) {
            int middle = (low + high) / 2;
            if (height(place, midnight, middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return midnight.plusMinutes(high).format(CLOCK);
    }

    private static double height(Site place, ZonedDateTime midnight, int minute) {
        return SunMoment.at(place, midnight.plusMinutes(minute)).position().elevationRadians();
    }
}
