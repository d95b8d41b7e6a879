package simmerpoint.trial.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import simmerpoint.input.InputFileException;
import simmerpoint.input.TableText;
import simmerpoint.trial.log.LogColumn.Quantity;

/**
 * Reads a log: comments behind a #, then a line that names the columns, then the readings, in order of time. Cells are parted by commas,
 * or by semicolons or tabs if the line of names is; then decimals may take a comma. Empty cells are allowed but for the time.
 */
public final class LogReader {
    /** A day at two readings a second is a tenth of this. */
    private static final int MOST_ROWS = 2_000_000;

    private static final int MOST_MEGABYTES = 100;
    private static final int LONGEST_LINE = 10_000;
    private static final double LONGEST_SECONDS = 48 * 3600;
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+");
    private static final Pattern WITH_UNIT = Pattern.compile("[+-]?\\d[\\d.]*\\s*[°a-zA-Z/%²]+.*");
    private static final String EXAMPLE = "time_min,water_C,air_C,irradiance_W_m2,beam_W_m2,wind_m_s";
    private static final double DEGREES_FAHRENHEIT = 115;

    private final Path file;
    private final LogComments comments = new LogComments();
    private final LogClock clock = new LogClock();
    private final List<Reading> readings = new ArrayList<>();
    private List<LogColumn> columns = List.of();
    private String separator = ",";
    private int number;
    private double first = Double.NaN;

    private LogReader(Path file) {
        this.file = file;
    }

    /**
     * The log in a file.
     *
     * @throws InputFileException if it cannot be used
     */
    public static TrialLog read(Path file) throws InputFileException {
        LogReader reader = new LogReader(file);
        Iterator<String> lines = TableText.read(file, MOST_MEGABYTES).lines().iterator();
        while (lines.hasNext()) {
            reader.number++;
            reader.take(lines.next());
        }
        return reader.log();
    }

    private void take(String line) throws InputFileException {
        if (line.length() > LONGEST_LINE) {
            throw wrong("the line has " + line.length() + " letters; this is no log.");
        }
        String text = line.strip();
        if (text.startsWith("#")) {
            String trouble = comments.take(text);
            if (!trouble.isEmpty()) {
                throw wrong(trouble.endsWith("?") ? trouble : trouble + ".");
            }
        } else if (!text.isEmpty()) {
            if (columns.isEmpty()) {
                head(text);
            } else {
                row(cells(line));
            }
        }
    }

    private void head(String text) throws InputFileException {
        separator = text.contains(";") ? ";" : text.contains("\t") ? "\t" : ",";
        List<LogColumn> found = new ArrayList<>();
        Map<Quantity, String> seen = new EnumMap<>(Quantity.class);
        for (String cell : text.split(separator, -1)) {
            String name = unquoted(cell);
            if (NUMBER.matcher(name).matches()) {
                throw wrong("the first line must name the columns, as in " + EXAMPLE + ".");
            }
            LogColumn column = LogColumn.of(name).orElseThrow(() -> wrong(LogColumn.unknown(shown(name))));
            String twice = seen.put(column.quantity(), column.head());
            if (twice != null) {
                throw wrong(twice + " and " + column.head() + " both give the "
                        + column.quantity().word() + "; keep one of them.");
            }
            found.add(column);
        }
        for (Quantity needed : List.of(Quantity.TIME, Quantity.WATER)) {
            if (!seen.containsKey(needed)) {
                throw wrong("a column for the " + needed.word()
                        + " is missing; the first line names the columns, as in " + EXAMPLE + ".");
            }
        }
        columns = found;
    }

    /** Separators between quotes part nothing. */
    private String[] cells(String line) {
        if (line.indexOf('"') < 0) {
            return line.split(separator, -1);
        }
        List<String> cells = new ArrayList<>();
        boolean quoted = false;
        int from = 0;
        for (int k = 0; k < line.length(); k++) {
            quoted ^= line.charAt(k) == '"';
            if (!quoted && line.startsWith(separator, k)) {
                cells.add(line.substring(from, k));
                from = k + 1;
            }
        }
        cells.add(line.substring(from));
        return cells.toArray(String[]::new);
    }

    private void row(String[] cells) throws InputFileException {
        if (readings.size() >= MOST_ROWS) {
            throw wrong("more than " + MOST_ROWS + " rows; a reading every ten seconds is more than enough.");
        }
        String[] own = joinedNotes(cells);
        if (own.length != columns.size()) {
            throw wrong("found " + own.length + " cells under " + columns.size() + " names of columns"
                    + (own.length > columns.size()
                            ? "; decimals take a point, not a comma."
                            : "; leave a cell empty, but keep its comma."));
        }
        Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
        for (int k = 0; k < own.length; k++) {
            LogColumn column = columns.get(k);
            if (column.quantity() != Quantity.NOTES) {
                values.put(column.quantity(), value(column, unquoted(own[k])));
            }
        }
        add(values);
    }

    /** Notes in the last column may hold the separator. */
    private String[] joinedNotes(String[] cells) {
        int n = columns.size();
        if (cells.length <= n || columns.get(n - 1) != LogColumn.NOTES) {
            return cells;
        }
        String[] own = new String[n];
        System.arraycopy(cells, 0, own, 0, n - 1);
        own[n - 1] = String.join(separator, List.of(cells).subList(n - 1, cells.length));
        return own;
    }

    private void add(Map<Quantity, Double> v) throws InputFileException {
        double time = v.get(Quantity.TIME);
        if (Double.isNaN(first)) {
            first = time;
        }
        double seconds = time - first;
        if (!readings.isEmpty()) {
            Reading before = readings.get(readings.size() - 1);
            if (seconds == before.seconds()) {
                throw wrong("the same time as in line " + before.line() + "; keep one of the two rows.");
            }
            if (seconds < before.seconds()) {
                throw wrong(
                        "earlier than line " + before.line()
                                + "; rows follow in order of time, and over midnight times need dates, as in 2026-08-30 00:10.");
            }
        }
        if (seconds > LONGEST_SECONDS) {
            throw wrong("more than 48 hours after the first row; one log is one trial." + LogChecks.otherUnit(columns));
        }
        readings.add(new Reading(
                number,
                seconds,
                v.get(Quantity.WATER),
                v.getOrDefault(Quantity.AIR, Double.NaN),
                v.getOrDefault(Quantity.IRRADIANCE, Double.NaN),
                v.getOrDefault(Quantity.BEAM, Double.NaN),
                v.getOrDefault(Quantity.WIND, Double.NaN)));
    }

    private double value(LogColumn column, String cell) throws InputFileException {
        if (column == LogColumn.TIME_LOCAL) {
            return clock.seconds(cell)
                    .orElseThrow(
                            () -> wrong("'" + shown(cell) + "' is no time of day; write 11:05 or 11:05:30, with a date"
                                    + " (2026-08-30 11:05) in all rows or in none."));
        }
        if (cell.isEmpty() && column.quantity() != Quantity.TIME) {
            return Double.NaN;
        }
        OptionalDouble elapsed = column.quantity() == Quantity.TIME && cell.indexOf(':') >= 0
                ? LogClock.elapsed(cell)
                : OptionalDouble.empty();
        if (elapsed.isPresent()) {
            return elapsed.getAsDouble();
        }
        String text = pointed(cell);
        if (!isNumber(text)) {
            throw wrong(notANumber(column, cell));
        }
        double value = column.si(Double.parseDouble(text));
        if (!column.quantity().allows(value)) {
            throw wrong(outside(column, cell, value));
        }
        return value;
    }

    /** With a decimal point, where commas part no cells. */
    private String pointed(String cell) {
        boolean comma = !separator.equals(",") && cell.indexOf(',') >= 0;
        return comma && DECIMAL_COMMA.matcher(cell).matches() ? cell.replace(',', '.') : cell;
    }

    /** Digits with a point are most of what is read, so they are looked at without a pattern. */
    private static boolean isNumber(String cell) {
        boolean plain = !cell.isEmpty() && cell.charAt(0) != '.';
        int points = 0;
        for (int k = 0; k < cell.length() && plain; k++) {
            char c = cell.charAt(k);
            points += c == '.' ? 1 : 0;
            plain = c == '.' || (c >= '0' && c <= '9');
        }
        return (plain && points <= 1) || NUMBER.matcher(cell).matches();
    }

    private static String notANumber(LogColumn column, String cell) {
        String found = column.head() + " has '" + shown(cell) + "'";
        if (cell.isEmpty()) {
            return column.head() + " is empty; every row needs its time.";
        }
        if (DECIMAL_COMMA.matcher(cell).matches()) {
            return found + "; decimals take a point: " + cell.replace(',', '.') + ", or part the cells by semicolons.";
        }
        return found
                + (WITH_UNIT.matcher(cell).matches()
                        ? "; only the number, the unit stands in the column's name."
                        : "; a number is allowed, or nothing.");
    }

    private static String outside(LogColumn column, String cell, double value) {
        String hint = column == LogColumn.WATER_C && value > DEGREES_FAHRENHEIT
                ? " If these are °F, call the column water_F."
                : "";
        return column.head() + " has " + cell + "; " + column.quantity().range() + " is allowed." + hint;
    }

    private TrialLog log() throws InputFileException {
        if (columns.isEmpty()) {
            throw new InputFileException(
                    file, "the file is empty; the first line names the columns, as in " + EXAMPLE + ".");
        }
        long water = readings.stream().filter(Reading::hasWater).count();
        if (water < 2) {
            throw new InputFileException(
                    file, "found " + water + " readings of the water; two or more are needed, and a dozen are of use.");
        }
        TrialLog log = new TrialLog(file, comments.settings(), comments.sunless(), clock.begins(), readings);
        Optional<String> trouble = LogChecks.trouble(log, columns);
        if (trouble.isPresent()) {
            throw new InputFileException(file, trouble.get());
        }
        return log;
    }

    private InputFileException wrong(String sentence) {
        return new InputFileException(file, number, sentence);
    }

    private static String unquoted(String cell) {
        String text = cell.strip();
        boolean quoted = text.length() >= 2 && text.startsWith("\"") && text.endsWith("\"");
        return quoted ? text.substring(1, text.length() - 1).strip() : text;
    }

    private static String shown(String text) {
        String plain = text.replaceAll("\\p{Cntrl}", "?");
        return String.format(Locale.ROOT, plain.length() <= 40 ? "%s" : "%.40s...", plain);
    }
}
