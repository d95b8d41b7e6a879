package simmerpoint.dish.built;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import simmerpoint.input.InputFileException;
import simmerpoint.input.TableText;

/**
 * Reads a file of measured ribs. Its first line names the columns, as in {@code from_middle_mm,rib_1,rib_2}; the unit there is that
 * of all numbers. Each further line has a distance from the middle and the depth of every rib there. What follows a # is a comment.
 */
public final class RibTable {
    private static final int MOST_MEGABYTES = 1;
    private static final Map<String, Double> UNITS = Map.of("mm", 1e-3, "cm", 1e-2, "m", 1.0, "in", 0.0254);
    private static final Pattern FIRST = Pattern.compile("from_middle_(mm|cm|m|in)");
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)");
    private static final String HEAD =
            "the first line names the columns and the unit (mm, cm, m or in), as in from_middle_mm,rib_1,rib_2,rib_3";

    private final List<Double> radii = new ArrayList<>();
    private final List<List<Double>> depths = new ArrayList<>();
    private final Path file;
    private double unit;

    private RibTable(Path file) {
        this.file = file;
    }

    /**
     * The measurements in a file.
     *
     * @throws InputFileException if they cannot be used
     */
    public static RibMeasurements read(Path file) throws InputFileException {
        RibTable table = new RibTable(file);
        for (TableText.Row row : TableText.rows(file, MOST_MEGABYTES)) {
            table.take(row.line(), row.text().split(",", -1));
        }
        if (table.radii.size() < 2) {
            throw new InputFileException(file, "found " + table.radii.size() + " distances; 2 or more are allowed.");
        }
        return new RibMeasurements(table.radii, table.depths);
    }

    private void take(int number, String[] cells) throws InputFileException {
        if (unit == 0) {
            head(number, cells);
            return;
        }
        if (cells.length != depths.size() + 1) {
            throw new InputFileException(
                    file,
                    number,
                    "found " + cells.length + " numbers; a distance and " + depths.size() + " depths are allowed.");
        }
        double radius = number(number, cells[0]);
        if (!(radius >= 0) || (!radii.isEmpty() && !(radius > radii.get(radii.size() - 1)))) {
            throw wrong(number, cells[0].strip(), "a distance of 0 or more that rises from line to line");
        }
        radii.add(radius);
        for (int k = 1; k < cells.length; k++) {
            depths.get(k - 1).add(number(number, cells[k]));
        }
    }

    private void head(int number, String[] cells) throws InputFileException {
        Matcher first = FIRST.matcher(cells[0].strip().toLowerCase(Locale.ROOT));
        if (!first.matches() || cells.length < 4) {
            throw new InputFileException(file, number, HEAD + ".");
        }
        for (int k = 1; k < cells.length; k++) {
            if (!cells[k].strip().toLowerCase(Locale.ROOT).equals("rib_" + k)) {
                throw wrong(number, cells[k].strip(), "rib_" + k + " in this place");
            }
            depths.add(new ArrayList<>());
        }
        unit = UNITS.get(first.group(1));
    }

    private double number(int line, String cell) throws InputFileException {
        if (!NUMBER.matcher(cell.strip()).matches()) {
            throw wrong(line, cell.strip(), "a number with a decimal point");
        }
        return unit * Double.parseDouble(cell.strip());
    }

    private InputFileException wrong(int line, String found, String allowed) {
        return new InputFileException(file, line, found, allowed + " is allowed");
    }
}
