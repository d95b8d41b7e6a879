package simmerpoint.trial.spot;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import simmerpoint.input.InputFileException;
import simmerpoint.input.TableText;

/**
 * Reads what was seen on a card. The first line is {@code from_middle_cm,width_cm} (or _mm, _m, _in), then a distance from the middle of the
 * dish and the width of the bright spot on each line; or {@code from_middle_cm,photo,pixels_per_cm} with the names of photographs
 * beside the file. What follows a # is a comment.
 */
public final class CardTable {
    private static final int MOST_MEGABYTES = 1;
    private static final int MOST_ROWS = 12;
    private static final Map<String, Double> UNITS = Map.of("mm", 1e-3, "cm", 1e-2, "m", 1.0, "in", 0.0254);
    private static final Pattern WIDTHS = Pattern.compile("from_middle_(mm|cm|m|in),width_(mm|cm|m|in)");
    private static final Pattern PHOTOS = Pattern.compile("from_middle_(mm|cm|m|in),photo,pixels_per_(mm|cm|m|in)");
    private static final Pattern NUMBER = Pattern.compile("(\\d+\\.?\\d*|\\.\\d+)");
    private static final String HEAD =
            "the first line is from_middle_cm,width_cm or from_middle_cm,photo,pixels_per_cm (or mm, m, in).";

    private final Path file;
    private final List<CardReading> readings = new ArrayList<>();
    private Optional<Matcher> widths = Optional.empty();
    private Optional<Matcher> photos = Optional.empty();

    private CardTable(Path file) {
        this.file = file;
    }

    /** The readings in a file, the nearest to the dish first. */
    public static List<CardReading> read(Path file) throws InputFileException {
        CardTable table = new CardTable(file);
        for (TableText.Row row : TableText.rows(file, MOST_MEGABYTES)) {
            table.take(row.line(), row.text());
        }
        if (table.readings.isEmpty()) {
            throw new InputFileException(file, "no reading; " + HEAD);
        }
        table.readings.sort((a, b) -> Double.compare(a.distance(), b.distance()));
        return List.copyOf(table.readings);
    }

    private void take(int line, String row) throws InputFileException {
        if (widths.isEmpty() && photos.isEmpty()) {
            widths = matched(WIDTHS, row);
            photos = matched(PHOTOS, row);
            if (widths.isEmpty() && photos.isEmpty()) {
                throw new InputFileException(file, line, HEAD);
            }
            return;
        }
        if (readings.size() >= MOST_ROWS) {
            throw new InputFileException(
                    file, line, "more than " + MOST_ROWS + " distances; at most so many are allowed.");
        }
        String[] cells = row.split(",", -1);
        int expected = widths.isPresent() ? 2 : 3;
        if (cells.length != expected) {
            throw new InputFileException(
                    file, line, "found " + cells.length + " cells and not " + expected + "; decimals take a point.");
        }
        readings.add(widths.isPresent() ? width(line, cells) : photo(line, cells));
    }

    private static Optional<Matcher> matched(Pattern head, String row) {
        Matcher matcher = head.matcher(row.toLowerCase(Locale.ROOT).replace(" ", ""));
        return matcher.matches() ? Optional.of(matcher) : Optional.empty();
    }

    private CardReading width(int line, String[] cells) throws InputFileException {
        Matcher units = widths.orElseThrow();
        double distance = UNITS.get(units.group(1)) * number(line, cells[0]);
        return new CardReading(line, distance, UNITS.get(units.group(2)) * number(line, cells[1]), Optional.empty());
    }

    private CardReading photo(int line, String[] cells) throws InputFileException {
        Matcher units = photos.orElseThrow();
        double distance = UNITS.get(units.group(1)) * number(line, cells[0]);
        double pixelsPerMetre = number(line, cells[2]) / UNITS.get(units.group(2));
        try {
            Path folder = file.toAbsolutePath().getParent();
            SpotPhoto photo = SpotPhoto.read(folder.resolve(cells[1].strip()), pixelsPerMetre);
            return new CardReading(line, distance, photo.profile().width(), Optional.of(photo));
        } catch (InvalidPathException e) {
            throw new InputFileException(file, line, cells[1].strip(), "the name of a picture is allowed");
        }
    }

    private double number(int line, String cell) throws InputFileException {
        String text = cell.strip();
        double value = NUMBER.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
        if (!(value > 0)) {
            throw new InputFileException(file, line, text, "a number above 0 with a decimal point is allowed");
        }
        return value;
    }
}
