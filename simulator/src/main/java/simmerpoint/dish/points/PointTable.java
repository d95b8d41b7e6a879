package simmerpoint.dish.points;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import simmerpoint.input.InputFileException;
import simmerpoint.input.TableText;

/**
 * Reads a table of measured points. Its first line names the columns and the unit of each, as in {@code x_mm,y_mm,z_mm}, or {@code depth_mm}
 * in place of the last, counted down from a straight edge across the rim. What follows a # is a comment.
 */
public final class PointTable {
    private static final int MOST_MEGABYTES = 60;
    private static final int MOST_POINTS = 1_000_000;
    private static final Map<String, Double> UNITS = Map.of("mm", 1e-3, "cm", 1e-2, "m", 1.0, "in", 0.0254);
    private static final Pattern COLUMN = Pattern.compile("(x|y|z|depth)_(mm|cm|m|in)");
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)(e[+-]?\\d+)?", Pattern.CASE_INSENSITIVE);
    private static final List<String> NAMES = List.of("x", "y", "z");
    private static final String HEAD =
            "the first line names three columns with their unit (mm, cm, m or in), parted by commas or semicolons, as in"
                    + " x_mm,y_mm,z_mm or x_cm,y_cm,depth_mm.";

    private final Path file;
    private final double[] scale = new double[3];
    private final double[][] columns;
    private final int[] lines;
    private int count;

    private PointTable(Path file, int rows) {
        this.file = file;
        columns = new double[3][rows];
        lines = new int[rows];
    }

    /**
     * The shape that the points in a file have.
     *
     * @throws InputFileException if they cannot be used
     */
    public static MeasuredShape read(Path file) throws InputFileException {
        List<TableText.Row> rows = TableText.rows(file, MOST_MEGABYTES);
        if (rows.isEmpty()) {
            throw new InputFileException(file, "the file is empty; " + HEAD);
        }
        if (rows.size() - 1 > MOST_POINTS) {
            throw new InputFileException(
                    file, (rows.size() - 1) + " points are too many; at most " + MOST_POINTS + " are allowed.");
        }
        PointTable table = new PointTable(file, rows.size() - 1);
        table.head(rows.get(0));
        for (TableText.Row row : rows.subList(1, rows.size())) {
            table.take(row.line(), row.text().split(",", -1));
        }
        return new PointChecks(file, table.points(), table.lines).shape();
    }

    private MeasuredPoints points() {
        return new MeasuredPoints(columns[0], columns[1], columns[2]);
    }

    private void head(TableText.Row row) throws InputFileException {
        String[] cells = row.text().split(",", -1);
        if (cells.length != 3) {
            throw new InputFileException(file, row.line(), HEAD);
        }
        for (String cell : cells) {
            Matcher column = COLUMN.matcher(cell.strip().toLowerCase(Locale.ROOT));
            if (!column.matches()) {
                throw new InputFileException(file, row.line(), HEAD);
            }
        }
        for (int k = 0; k < cells.length; k++) {
            Matcher column = COLUMN.matcher(cells[k].strip().toLowerCase(Locale.ROOT));
            boolean depth = column.matches() && column.group(1).equals("depth");
            if (!(depth ? "z" : column.group(1)).equals(NAMES.get(k))) {
                throw new InputFileException(file, row.line(), HEAD);
            }
            scale[k] = UNITS.get(column.group(2)) * (depth ? -1 : 1);
        }
    }

    private void take(int line, String[] cells) throws InputFileException {
        if (cells.length != 3) {
            throw new InputFileException(
                    file,
                    line,
                    "found " + cells.length
                            + " cells; x, y and z are allowed, parted by commas (semicolons if the first line"
                            + " has them).");
        }
        for (int k = 0; k < 3; k++) {
            String cell = cells[k].strip();
            if (cell.isEmpty()) {
                throw new InputFileException(
                        file, line, NAMES.get(k) + " is missing; take the row out where nothing was measured.");
            }
            if (!NUMBER.matcher(cell).matches()) {
                throw new InputFileException(file, line, cell, "a number with a decimal point is allowed");
            }
            columns[k][count] = scale[k] * Double.parseDouble(cell);
        }
        lines[count++] = line;
    }
}
