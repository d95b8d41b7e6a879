package simmerpoint.scenario.checks;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import simmerpoint.sun.SunDay;
import simmerpoint.sun.SunMoment;
import simmerpoint.units.QuantityWriter;

/** Says that the sun is down, and when it is not. */
final class SunDownMessage {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private SunDownMessage() {}

    static String of(SunMoment moment) {
        String below = QuantityWriter.degrees(-moment.position().elevationRadians());
        String found =
                moment.time().format(CLOCK) + " on " + moment.date() + ": the sun is " + below + " below the horizon; ";
        SunDay day = SunDay.of(moment.site(), moment.date());
        return found
                + switch (day.kind()) {
                    case NEVER_RISES -> "it does not rise there all day; choose another date";
                    case NEVER_SETS -> "it only grazes the horizon then; choose another time";
                    case RISES_AND_SETS -> "choose a time " + between(day);
                };
    }

    private static String between(SunDay day) {
        String rises =
                day.sunrise().map(SunDownMessage::clock).map(t -> "after " + t).orElse("");
        String sets =
                day.sunset().map(SunDownMessage::clock).map(t -> "before " + t).orElse("");
        String both = rises.isEmpty() || sets.isEmpty() ? rises + sets : rises + " and " + sets;
        return both + "; it stands highest at " + clock(day.solarNoon());
    }

    private static String clock(ZonedDateTime time) {
        return time.format(CLOCK);
    }
}
