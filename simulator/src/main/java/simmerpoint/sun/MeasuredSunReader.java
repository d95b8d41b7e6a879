package simmerpoint.sun;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import simmerpoint.input.InputFileException;
import simmerpoint.input.TableText;

/** Reads and checks one file for {@link MeasuredSun}; the format is described there. */
final class MeasuredSunReader {
    /** Largest file. */
    static final int MOST_MEGABYTES = 1;

    private static final double WIDEST_MRAD = 1e3 * MeasuredSun.WIDEST_ANGLE_RADIANS;
    private static final double MOST_RADIANCE = 1e12;
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
    private static final String ROW =
            "a row is two numbers with decimal points and a comma between them, as in 4.6,0.35";

    /** Units that a header may name. */
    private enum AngleUnit {
        MRAD("mrad", 1),
        ARCMIN("arcmin", 1e3 * Math.PI / (180 * 60)),
        DEG("deg", 1e3 * Math.PI / 180);

        private final String symbol;
        private final double milliradians;

        AngleUnit(String symbol, double milliradians) {
            this.symbol = symbol;
            this.milliradians = milliradians;
        }

        static Optional<AngleUnit> of(String columnName) {
            String name = columnName.toLowerCase(Locale.ROOT);
            return Arrays.stream(values()).filter(u -> name.contains(u.symbol)).findFirst();
        }

        String shown(double mrad) {
            return SunShapeChecks.fourDigits(mrad / milliradians) + " " + symbol;
        }
    }

    private final Path file;
    private double[] angles = new double[64];
    private double[] radiances = new double[64];
    private int rows;
    private int lineOfLastRow;
    private AngleUnit unit;

    MeasuredSunReader(Path file) {
        this.file = file;
    }

    MeasuredSun read() throws InputFileException {
        for (TableText.Row each : TableText.rows(file, MOST_MEGABYTES)) {
            if (unit != null) {
                row(each.line(), each.text());
            } else {
                header(each.line(), each.text());
            }
        }
        return sun();
    }

    private void header(int line, String text) throws InputFileException {
        String[] names = text.split(",", -1);
        Optional<AngleUnit> named = names.length == 2 ? AngleUnit.of(names[0]) : Optional.empty();
        if (named.isEmpty()) {
            throw wrong(
                    line,
                    text,
                    "the first line names two columns and the angle's unit (mrad, deg or arcmin), as in"
                            + " angle_mrad,relative_radiance");
        }
        unit = named.get();
    }

    private void row(int line, String text) throws InputFileException {
        String[] fields = text.split(",", -1);
        if (fields.length != 2) {
            throw wrong(line, text, ROW);
        }
        add(line, angle(line, fields[0].strip()), radiance(line, fields[1].strip()));
    }

    private double angle(int line, String field) throws InputFileException {
        double angle = number(line, field) * unit.milliradians;
        if (rows == 0 && angle != 0) {
            throw wrong(line, field, "the first row is the sun's centre, angle 0");
        }
        if (!(angle >= 0 && angle <= WIDEST_MRAD)) {
            throw wrong(line, field, "an angle is 0 to " + unit.shown(WIDEST_MRAD));
        }
        if (rows > 0 && !(angle > angles[rows - 1])) {
            throw wrong(
                    line,
                    field,
                    "angles ascend, so it is more than the " + unit.shown(angles[rows - 1]) + " of line "
                            + lineOfLastRow);
        }
        return angle;
    }

    private double radiance(int line, String field) throws InputFileException {
        double radiance = number(line, field);
        if (!(radiance >= 0 && radiance <= MOST_RADIANCE)) {
            throw wrong(line, field, "a radiance is 0 to 1e12");
        }
        return radiance;
    }

    private double number(int line, String field) throws InputFileException {
        if (!NUMBER.matcher(field).matches()) {
            throw wrong(line, field, ROW);
        }
        return Double.parseDouble(field);
    }

    private void add(int line, double angle, double radiance) {
        if (rows == angles.length) {
            angles = Arrays.copyOf(angles, 2 * rows);
            radiances = Arrays.copyOf(radiances, 2 * rows);
        }
        angles[rows] = angle;
        radiances[rows] = radiance;
        rows++;
        lineOfLastRow = line;
    }

    private MeasuredSun sun() throws InputFileException {
        if (rows < MeasuredSun.FEWEST_ROWS) {
            throw new InputFileException(
                    file, "found " + rows + " rows; " + MeasuredSun.FEWEST_ROWS + " or more are allowed.");
        }
        double brightest = Arrays.stream(radiances, 0, rows).max().orElse(0);
        if (brightest == 0) {
            throw new InputFileException(file, "no row has any light; at least the centre has a radiance above 0.");
        }
        if (radiances[0] < MeasuredSun.LEAST_CENTRE * brightest) {
            throw new InputFileException(
                    file,
                    "the radiance at angle 0 is " + radiances[0] + " and the greatest is " + brightest
                            + "; the centre has at least a thousandth of the greatest.");
        }
        double[] radians = Arrays.stream(angles, 0, rows).map(t -> 1e-3 * t).toArray();
        return MeasuredSun.of(String.valueOf(file.getFileName()), radians, Arrays.copyOf(radiances, rows));
    }

    private InputFileException wrong(int line, String found, String allowed) {
        return new InputFileException(file, line, found, allowed);
    }
}
