package simmerpoint.answer.words;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import simmerpoint.heat.BoilingOutcome;

/** Times of the clock, dates and spans of minutes. */
public final class TimeWords {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d\u00a0MMMM\u00a0yyyy", Locale.ENGLISH);
    private static final double MINUTE = 60;
    private static final double LONG_MINUTES = 119.5;
    private static final double IN_SECONDS = 90;

    private TimeWords() {}

    /** "09:30". */
    public static String clock(ZonedDateTime time) {
        return CLOCK.format(time.plusSeconds((long) (MINUTE / 2)));
    }

    /** "5 October 2026". */
    public static String date(LocalDate date) {
        return DATE.format(date);
    }

    /** "25 seconds", "3 min". */
    public static String after(double seconds) {
        if (seconds >= IN_SECONDS) {
            return HeatWords.time(seconds);
        }
        String figure = FigureFormat.rounded(Math.max(1, seconds), seconds < 10 ? 1 : 2);
        return figure + FigureFormat.NBSP + (figure.equals("1") ? "second" : "seconds");
    }

    /** "28 to 33 min", "2.1 to 2.4 h". */
    public static String minutes(double lowSeconds, double highSeconds) {
        double low = lowSeconds / MINUTE;
        double high = highSeconds / MINUTE;
        if (high > LONG_MINUTES) {
            return FigureFormat.span(FigureFormat.fixed(low / MINUTE, 1), FigureFormat.fixed(high / MINUTE, 1))
                    + FigureFormat.NBSP + "h";
        }
        return FigureFormat.span(FigureFormat.fixed(low, 0), FigureFormat.fixed(high, 0)) + FigureFormat.NBSP + "min";
    }

    /** When water boils: "28 to 33 min", "45 min or never", "never (62 to 70 °C)". */
    public static String boil(BoilingOutcome boil, HeatWords words) {
        if (boil instanceof BoilingOutcome.Never never) {
            return "never (" + words.span(never.settlesCelsius()) + ")";
        }
        if (boil instanceof BoilingOutcome.Boils boils) {
            return minutes(boils.seconds().low(), boils.seconds().high());
        }
        double soonest = ((BoilingOutcome.MayBoil) boil).soonestSeconds();
        return minutes(soonest, soonest) + " or never";
    }
}
