package simmerpoint.scenario;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import simmerpoint.sun.BeamRangeModel;
import simmerpoint.sun.Site;

/**
 * Where and when, and what the sky lets through.
 *
 * @param place where on the earth
 * @param when the scenario's own instant, in the place's zone; where it names none, {@link #standIn}
 * @param sky the sky chosen, and how far models of it differ
 * @param timed whether the scenario names its instant; only then its sun is that of {@code when}
 */
public record SiteConditions(Site place, ZonedDateTime when, BeamRangeModel sky, boolean timed) {
    private static final LocalDate MIDDLING_DAY = LocalDate.of(2026, 3, 21);

    /** With an instant that the scenario names. */
    public SiteConditions(Site place, ZonedDateTime when, BeamRangeModel sky) {
        this(place, when, sky, true);
    }

    /** Noon by the clock of an equinox: a middling day everywhere, for whoever needs a date and was given none. */
    public static ZonedDateTime standIn(Site place) {
        return MIDDLING_DAY.atTime(LocalTime.NOON).atZone(place.zone());
    }
}
