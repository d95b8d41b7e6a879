package simmerpoint.command;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import simmerpoint.report.TextReport;
import simmerpoint.study.day.DayPlan;
import simmerpoint.sun.SunMoment;
import simmerpoint.units.Dimension;
import simmerpoint.units.QuantityException;
import simmerpoint.units.QuantityParser;

/** Reads the values of options; each refuses with a sentence what it does not take. */
final class Converters {
    private static final Pattern RAYS =
            Pattern.compile("([0-9]{1,15}(?:\\.[0-9]{1,12})?)(?:[eE]\\+?([0-9]{1,2})|([kKmMgG]?))");
    private static final Pattern BARE_NUMBER = Pattern.compile("[0-9]{1,15}(?:\\.[0-9]{1,15})?");
    private static final Pattern PERCENT = Pattern.compile("([0-9]{1,15}(?:\\.[0-9]{1,15})?)\\s*%");
    private static final long FEWEST_RAYS = 1024;
    private static final long MOST_RAYS = 1_000_000_000_000L;
    private static final int MOST_THREADS = 1024;
    private static final int WIDEST = 1000;
    private static final double LARGEST_DISC = 1;
    private static final double SMALLEST_LOSS = 0.1;
    private static final double LARGEST_LOSS = 99;
    private static final double SHORTEST_STICK = 0.01;
    private static final double LONGEST_STICK = 3;

    private Converters() {}

    private static TypeConversionException refused(String text, String allowed) {
        return new TypeConversionException("\"" + text + "\" is not " + allowed);
    }

    private static long whole(String text, long least, long most, String allowed) {
        try {
            long n = Long.parseLong(text.strip());
            if (n >= least && n <= most) {
                return n;
            }
        } catch (NumberFormatException e) {
            throw refused(text, allowed);
        }
        throw refused(text, allowed);
    }

    /** 200000, 200k, 1.5M, 1e6. */
    static final class Rays implements ITypeConverter<Long> {
        @Override
        public Long convert(String text) {
            String allowed = "a number of rays from 1024 to 1e12; write for instance 200000, 200k, 1M or 1e6";
            Matcher m = RAYS.matcher(text.strip());
            if (!m.matches()) {
                throw refused(text, allowed);
            }
            BigDecimal rays =
                    new BigDecimal(m.group(1)).scaleByPowerOfTen(power(m)).stripTrailingZeros();
            boolean good = rays.scale() <= 0
                    && rays.compareTo(BigDecimal.valueOf(FEWEST_RAYS)) >= 0
                    && rays.compareTo(BigDecimal.valueOf(MOST_RAYS)) <= 0;
            if (!good) {
                throw refused(text, allowed);
            }
            return rays.longValueExact();
        }

        private static int power(Matcher m) {
            if (m.group(2) != null) {
                return Integer.parseInt(m.group(2));
            }
            return switch (m.group(3).toLowerCase(java.util.Locale.ROOT)) {
                case "k" -> 3;
                case "m" -> 6;
                case "g" -> 9;
                default -> 0;
            };
        }
    }

    /** 0.2%: a share is refused, since 0.2 could mean either. */
    static final class Precision implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            if (BARE_NUMBER.matcher(text.strip()).matches()) {
                throw new TypeConversionException("the % is missing: write " + text.strip() + "%");
            }
            Matcher m = PERCENT.matcher(text.strip());
            double share = m.matches() ? Double.parseDouble(m.group(1)) / 100 : Double.NaN;
            if (!(share > 0 && share < 1)) {
                throw refused(text, "a precision above 0 % and below 100 %; write for instance 0.2%");
            }
            return share;
        }
    }

    /** 10%: a share is refused, since 0.1 could mean either. */
    static final class Loss implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            if (BARE_NUMBER.matcher(text.strip()).matches()) {
                throw new TypeConversionException("the % is missing: write " + text.strip() + "%");
            }
            Matcher m = PERCENT.matcher(text.strip());
            double percent = m.matches() ? Double.parseDouble(m.group(1)) : Double.NaN;
            if (!(percent >= SMALLEST_LOSS && percent <= LARGEST_LOSS)) {
                throw refused(text, "a loss from 0.1 % to 99 %; write for instance 5%");
            }
            return percent / 100;
        }
    }

    /** Any whole number. */
    static final class Seed implements ITypeConverter<Long> {
        @Override
        public Long convert(String text) {
            return whole(text, Long.MIN_VALUE, Long.MAX_VALUE, "a whole number; write for instance 7");
        }
    }

    /** 1 to 1024. */
    static final class Threads implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String text) {
            return (int) whole(text, 1, MOST_THREADS, "a number of threads from 1 to 1024");
        }
    }

    /** Columns. */
    static final class Width implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String text) {
            return (int) whole(
                    text,
                    TextReport.NARROWEST,
                    WIDEST,
                    "a number of columns from " + TextReport.NARROWEST + " to 1000");
        }
    }

    /** A length above 0, m. */
    static final class Disc implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            double radius;
            try {
                radius = QuantityParser.parse(text, Dimension.LENGTH, "10 mm or 0.4 in");
            } catch (QuantityException e) {
                throw new TypeConversionException(e.getMessage());
            }
            if (!(radius > 0 && radius <= LARGEST_DISC)) {
                throw refused(text, "a radius above 0 and up to 1 m; write for instance 10 mm");
            }
            return radius;
        }
    }

    /** A length of a stick, m. */
    static final class Stick implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            double length;
            try {
                length = QuantityParser.parse(text, Dimension.LENGTH, "10 cm or 4 in");
            } catch (QuantityException e) {
                throw new TypeConversionException(e.getMessage());
            }
            if (!(length >= SHORTEST_STICK && length <= LONGEST_STICK)) {
                throw refused(text, "a length from 1 cm to 3 m; write for instance 10 cm");
            }
            return length;
        }
    }

    /** metric or inch. */
    static final class Units implements ITypeConverter<simmerpoint.units.UnitSystem> {
        @Override
        public simmerpoint.units.UnitSystem convert(String text) {
            return switch (text.strip().toLowerCase(java.util.Locale.ROOT)) {
                case "metric" -> simmerpoint.units.UnitSystem.METRIC;
                case "inch" -> simmerpoint.units.UnitSystem.INCH;
                default -> throw refused(text, "a system of units: metric or inch");
            };
        }
    }

    /** 2026-10-05. */
    static final class Date implements ITypeConverter<LocalDate> {
        @Override
        public LocalDate convert(String text) {
            String allowed = "a date from " + SunMoment.FIRST_YEAR + " to " + SunMoment.LAST_YEAR
                    + ", year first; write for instance 2026-10-05";
            try {
                LocalDate date = LocalDate.parse(text.strip());
                // The years at either end are kept to their inner days: a local day may run over midnight.
                if (date.minusDays(1).getYear() >= SunMoment.FIRST_YEAR
                        && date.plusDays(1).getYear() <= SunMoment.LAST_YEAR) {
                    return date;
                }
            } catch (DateTimeParseException e) {
                throw refused(text, allowed);
            }
            throw refused(text, allowed);
        }
    }

    /** 30 min. */
    static final class Step implements ITypeConverter<Duration> {
        @Override
        public Duration convert(String text) {
            double seconds;
            try {
                seconds = QuantityParser.parse(text, Dimension.TIME, "30 min or 1 h");
            } catch (QuantityException e) {
                throw new TypeConversionException(e.getMessage());
            }
            boolean good = seconds >= DayPlan.SHORTEST_STEP.toSeconds() && seconds <= DayPlan.LONGEST_STEP.toSeconds();
            if (!good) {
                throw refused(text, "a step from 5 min to 3 h; write for instance 30 min");
            }
            return Duration.ofSeconds(Math.round(seconds));
        }
    }
}
