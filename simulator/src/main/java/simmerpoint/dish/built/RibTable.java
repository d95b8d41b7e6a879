package simmerpoint.dish.built;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a file of measured ribs. Its first line names the columns, as in {@code from_middle_mm,rib_1,rib_2}; the unit there is that
 * of all numbers. Each further line has a distance from the middle and the depth of every rib there. What follows a # is a comment.
 */
public final class RibTable {
    private static final int MOST_BYTES = 1_000_000;
    private static final Map<String, Double> UNITS = Map.of("mm", 1e-3, "cm", 1e-2, "m", 1.0, "in", 0.0254);
    private static final Pattern FIRST = Pattern.compile("from_middle_(mm|cm|m|in)");
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)");
    private static final String HEAD =
            "the first line names the columns and the unit (mm, cm, m or in), as in from_middle_mm,rib_1,rib_2,rib_3";

    private final List<Double> radii = new ArrayList<>();
    private final List<List<Double>> depths = new ArrayList<>();
    private double unit;

    private RibTable() {}

    /**
     * The measurements in a file.
     *
     * @throws RibTableException if they cannot be used
     */
    public static RibMeasurements read(Path file) throws RibTableException {
        RibTable table = new RibTable();
        int number = 0;
        for (String line : text(file).split("\r\n|\r|\n", -1)) {
            number++;
            String row = line.replaceFirst("#.*", "").strip();
            if (!row.isEmpty()) {
                table.take(number, row.split(",", -1));
            }
        }
        if (table.radii.size() < 2) {
            throw new RibTableException("found " + table.radii.size() + " distances; 2 or more are allowed.");
        }
        return new RibMeasurements(table.radii, table.depths);
    }

    private static String text(Path file) throws RibTableException {
        if (!Files.isRegularFile(file)) {
            throw new RibTableException(
                    Files.exists(file) ? "this is not a plain file; a CSV file is allowed." : "there is no such file.");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new RibTableException("the file is larger than 1 MB; at most 1 MB is allowed.");
            }
            String text = new String(bytes, StandardCharsets.UTF_8);
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (IOException e) {
            RibTableException sentence = new RibTableException("the file cannot be read.");
            sentence.initCause(e);
            throw sentence;
        }
    }

    private void take(int number, String[] cells) throws RibTableException {
        if (unit == 0) {
            head(number, cells);
            return;
        }
        if (cells.length != depths.size() + 1) {
            throw wrong(number, cells.length + " numbers", "a distance and " + depths.size() + " depths");
        }
        double radius = number(number, cells[0]);
        if (!(radius >= 0) || (!radii.isEmpty() && !(radius > radii.get(radii.size() - 1)))) {
            throw wrong(number, "'" + cells[0].strip() + "'", "distances of 0 or more that rise from line to line");
        }
        radii.add(radius);
        for (int k = 1; k < cells.length; k++) {
            depths.get(k - 1).add(number(number, cells[k]));
        }
    }

    private void head(int number, String[] cells) throws RibTableException {
        Matcher first = FIRST.matcher(cells[0].strip().toLowerCase(Locale.ROOT));
        if (!first.matches() || cells.length < 4) {
            throw new RibTableException("line " + number + ": " + HEAD + ".");
        }
        for (int k = 1; k < cells.length; k++) {
            if (!cells[k].strip().toLowerCase(Locale.ROOT).equals("rib_" + k)) {
                throw wrong(number, "'" + cells[k].strip() + "'", "rib_" + k + " in this place");
            }
            depths.add(new ArrayList<>());
        }
        unit = UNITS.get(first.group(1));
    }

    private double number(int line, String cell) throws RibTableException {
        if (!NUMBER.matcher(cell.strip()).matches()) {
            throw wrong(line, "'" + cell.strip() + "'", "a number with a decimal point");
        }
        return unit * Double.parseDouble(cell.strip());
    }

    private static RibTableException wrong(int line, String found, String allowed) {
        String shown = found.length() <= 40 ? found : found.substring(0, 40) + "...";
        return new RibTableException(
                "line " + line + ": found " + shown.replaceAll("\\p{Cntrl}", "?") + "; " + allowed + " is allowed.");
    }
}
