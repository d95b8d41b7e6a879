package simmerpoint.answer;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.HourLight;
import simmerpoint.study.day.LightLimit;

/** Times, minutes and levels of a day in words. */
public final class DayWords {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d\u00a0MMMM\u00a0yyyy", Locale.ENGLISH);
    private static final double MINUTE = 60;
    private static final double LONG_MINUTES = 119.5;

    private DayWords() {}

    /** "09:30". */
    public static String clock(ZonedDateTime time) {
        return CLOCK.format(time.plusSeconds((long) (MINUTE / 2)));
    }

    /** "5 October 2026". */
    public static String date(LocalDate date) {
        return DATE.format(date);
    }

    /** "28 to 33 min", "2.1 to 2.4 h". */
    static String minutes(double lowSeconds, double highSeconds) {
        double low = lowSeconds / MINUTE;
        double high = highSeconds / MINUTE;
        if (high > LONG_MINUTES) {
            return span(Figures.fixed(low / MINUTE, 1), Figures.fixed(high / MINUTE, 1)) + Figures.NBSP + "h";
        }
        return span(Figures.fixed(low, 0), Figures.fixed(high, 0)) + Figures.NBSP + "min";
    }

    private static String span(String low, String high) {
        return low.equals(high) ? low : low + Figures.NBSP + "to" + Figures.NBSP + high;
    }

    /** When the water boils, with both doubts: "28 to 33 min", "45 min or never", "never (62 to 70 °C)". */
    static String boil(HourLight light, HeatWords words) {
        if (light.boil() instanceof BoilingOutcome.Never never) {
            return boil(never, words);
        }
        if (light.boil() instanceof BoilingOutcome.Boils boils
                && light.lowBeamBoilSeconds().isPresent()) {
            double low = least(boils.seconds().low(), light.highBeamBoilSeconds());
            double high =
                    Math.max(boils.seconds().high(), light.lowBeamBoilSeconds().getAsDouble());
            return minutes(low, high);
        }
        double soonest = light.boil() instanceof BoilingOutcome.Boils boils
                ? boils.seconds().low()
                : ((BoilingOutcome.MayBoil) light.boil()).soonestSeconds();
        double low = least(soonest, light.highBeamBoilSeconds());
        return minutes(low, low) + " or never";
    }

    /** The same for light that is what it is: "28 to 33 min", "45 min or never", "never (62 to 70 °C)". */
    static String boil(BoilingOutcome boil, HeatWords words) {
        if (boil instanceof BoilingOutcome.Never never) {
            return "never (" + words.span(never.settlesCelsius()) + ")";
        }
        if (boil instanceof BoilingOutcome.Boils boils) {
            return minutes(boils.seconds().low(), boils.seconds().high());
        }
        double soonest = ((BoilingOutcome.MayBoil) boil).soonestSeconds();
        return minutes(soonest, soonest) + " or never";
    }

    private static double least(double seconds, OptionalDouble other) {
        return Math.min(seconds, other.orElse(seconds));
    }

    /** "boil", or "boil (from simmer to fast boil, by what is not known of sky and pan)". */
    static String level(HeatLevelRange level) {
        String likely = LevelWords.of(level.likely());
        if (level.lowest() == level.highest()) {
            return likely;
        }
        return likely + " (from " + LevelWords.of(level.lowest()) + " to " + LevelWords.of(level.highest())
                + ", by what is not known of sky and pan)";
    }

    /** The sun's elevation, whole degrees. */
    static String elevation(DayHour hour) {
        return Figures.fixed(Math.toDegrees(hour.elevationRadians()), 0) + "°";
    }

    /** What keeps the pan from more at an hour, in a clause; empty if nothing does. */
    static String limits(HourLight light, Figures figures) {
        return enumerated(light.limits().stream()
                .map(limit -> limit(limit, figures.percent(limit.share())))
                .toList());
    }

    private static String limit(LightLimit limit, String share) {
        return switch (limit.kind()) {
            case WEAK_BEAM -> "the beam is weak, " + share + " below 700\u00a0W/m²";
            case MISSES ->
                share + " of the reflected light misses the pan, whose underside is seen at a slant from the dish";
            case CLIMBS_WALL -> share + " of the light on the pan climbs its wall instead of reaching the underside";
        };
    }

    private static String enumerated(List<String> parts) {
        if (parts.size() < 2) {
            return String.join("", parts);
        }
        return String.join("; ", parts.subList(0, parts.size() - 1)) + "; and " + parts.get(parts.size() - 1);
    }

    /** The hours for which {@code is} holds, as spans of the table's times: "06:00 to 08:00 and 20:00"; empty if none. */
    static String when(List<DayHour> hours, Predicate<DayHour> is) {
        List<String> spans = new ArrayList<>();
        int k = 0;
        while (k < hours.size()) {
            int first = k;
            while (k < hours.size() && is.test(hours.get(k))) {
                k++;
            }
            if (k > first) {
                spans.add(span(
                        clock(hours.get(first).time()), clock(hours.get(k - 1).time())));
            }
            k++;
        }
        return String.join(" and ", spans);
    }
}
