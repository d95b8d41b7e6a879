package simmerpoint.scenario.keys;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import simmerpoint.sun.SunMoment;
import simmerpoint.units.InputText;
import simmerpoint.units.QuantityException;

/** Reads dates (year first, since 3/4 is two days of the year) and times of day (24 hours). */
final class DateTimeParser {
    private static final Pattern DATE = Pattern.compile("([0-9]{4})-([0-9]{1,2})-([0-9]{1,2})");
    private static final Pattern TIME = Pattern.compile("([0-9]{1,2}):([0-9]{2})(?::([0-9]{2}))?");

    private DateTimeParser() {}

    static LocalDate date(String typed) throws QuantityException {
        String text = InputText.normalised(typed);
        Matcher m = DATE.matcher(text);
        if (!m.matches()) {
            throw new QuantityException(
                    InputText.shown(text) + " is not a date; write year, month and day, for instance 2026-06-21");
        }
        int year = Integer.parseInt(m.group(1));
        int month = Integer.parseInt(m.group(2));
        int day = Integer.parseInt(m.group(3));
        if (year < SunMoment.FIRST_YEAR || year > SunMoment.LAST_YEAR) {
            throw new QuantityException(text + " is out of range; years from " + SunMoment.FIRST_YEAR + " to "
                    + SunMoment.LAST_YEAR + " are known");
        }
        if (month < 1 || month > 12) {
            throw new QuantityException(text + " is not a date: its month is " + month + ", allowed is 1 to 12");
        }
        int last = YearMonth.of(year, month).lengthOfMonth();
        if (day < 1 || day > last) {
            String name = Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
            throw new QuantityException(
                    text + " is not a date: the days of " + name + " " + year + " are 1 to " + last);
        }
        return LocalDate.of(year, month, day);
    }

    static LocalTime time(String typed) throws QuantityException {
        String text = InputText.normalised(typed);
        Matcher m = TIME.matcher(text);
        int hour = m.matches() ? Integer.parseInt(m.group(1)) : 99;
        int minute = m.matches() ? Integer.parseInt(m.group(2)) : 99;
        int second = m.matches() && m.group(3) != null ? Integer.parseInt(m.group(3)) : 0;
        if (hour > 23 || minute > 59 || second > 59) {
            throw new QuantityException(InputText.shown(text)
                    + " is not a time of day; write hours and minutes from 00:00 to 23:59, for instance 09:30");
        }
        return LocalTime.of(hour, minute, second);
    }
}
