package simmerpoint.dish.points;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.input.InputFileException;

/** Tables of measured points: how they may be written, and one sentence for whatever is wrong. */
class PointTableTest {
    @TempDir
    Path folder;

    /** A dish of 0.5 m focal length on a grid of 10 cm, in cm; row k is line k + 2 of the file. */
    private static String[] rows() {
        String[] rows = new String[81];
        for (int k = 0; k < rows.length; k++) {
            int x = 10 * (k % 9 - 4);
            int y = 10 * (k / 9 - 4);
            rows[k] = String.format(Locale.ROOT, "%d, %d, %.4f", x, y, (x * x + y * y) / 200.0);
        }
        return rows;
    }

    private MeasuredShape read(String head, String... rows) throws Exception {
        return PointTable.read(
                Files.writeString(folder.resolve("p.csv"), head + "\n" + String.join("\n", rows) + "\n"));
    }

    @Test
    void unitsStandInTheFirstLine() throws Exception {
        assertEquals(0.5, read("x_cm,y_cm,z_cm", rows()).focalLength(), 1e-6);
        assertEquals(5, read("# of my dish\nX_cm , y_cm, Z_cm", rows()).focalLength() * 10, 1e-5);
        assertEquals(0.05, read("x_mm,y_mm,z_mm", rows()).focalLength(), 1e-6);
        assertEquals(81, read("x_cm,y_cm,z_cm", rows()).points());
    }

    @Test
    void depthIsCountedDown() throws Exception {
        String[] rows = rows();
        for (int k = 0; k < rows.length; k++) {
            String[] cells = rows[k].split(",");
            rows[k] = cells[0] + "," + cells[1] + "," + (16 - Double.parseDouble(cells[2]));
        }
        assertEquals(0.5, read("x_cm,y_cm,depth_cm", rows).focalLength(), 1e-6);
        refused("x_cm,y_cm,z_cm", rows, "do not gather light in front of them");
    }

    private void refused(String head, String[] rows, String said) {
        InputFileException refusal = assertThrows(InputFileException.class, () -> read(head, rows));
        assertTrue(refusal.getMessage().contains(said), refusal.getMessage());
        assertEquals(1, refusal.getMessage().lines().count());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "x,y,z|p.csv, line 1: the first line names three columns with their unit",
                "x_cm,y_cm|p.csv, line 1: the first line names three columns",
                "y_cm,x_cm,z_cm|p.csv, line 1: the first line names",
                "x_cm,y_cm,z_furlong|p.csv, line 1: the first line names"
            })
    void wrongHeads(String head, String said) {
        refused(head, rows(), said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1, 2|p.csv, line 22: found 2 cells; x, y and z are allowed",
                "1, 2, |p.csv, line 22: z is missing; take the row out where nothing was measured",
                ", 2, 3|p.csv, line 22: x is missing",
                "1, 2, high|p.csv, line 22: found 'high'; a number with a decimal point is allowed",
                "1, 2, NaN|p.csv, line 22: found 'NaN'; a number",
                "10, 20, 8.1|p.csv, line 61: this point lies 28 mm off a smooth surface",
                "-15, 15, 9.5|p.csv, line 22: this point lies 72 mm off a smooth surface through its neighbours"
            })
    void wrongRows(String row, String said) {
        String[] rows = rows();
        rows[20] = row;
        refused("x_cm,y_cm,z_cm", rows, said);
    }

    @Test
    void tooFewPointsOrPointsAlongALine() {
        refused(
                "x_cm,y_cm,z_cm",
                new String[] {"0,0,0", "1,0,0", "0,1,0"},
                "3 points are too few; measure at least 12");
        String[] line = new String[20];
        for (int k = 0; k < line.length; k++) {
            line[k] = k + ",0," + k * k / 100.0;
        }
        refused("x_cm,y_cm,z_cm", line, "all points lie along one line");
        InputFileException none = assertThrows(InputFileException.class, () -> read("# nothing"));
        assertTrue(none.getMessage().contains("the file is empty"), none.getMessage());
    }

    /** As a spreadsheet writes where decimals take a comma, and as it copies cells. */
    @ParameterizedTest
    @ValueSource(strings = {";", "\t"})
    void cellsPartedBySemicolonsOrTabsTakeDecimalCommas(String mark) throws Exception {
        String[] rows = rows();
        MeasuredShape expected = read("x_cm,y_cm,z_cm", rows);
        String[] commas = rows.clone();
        for (int k = 0; k < rows.length; k++) {
            rows[k] = rows[k].replace(",", mark);
            commas[k] = rows[k].replace('.', ',');
        }
        String head = "x_cm,y_cm,z_cm".replace(",", mark);
        assertEquals(expected.focalLength(), read(head, rows).focalLength(), 0);
        assertEquals(expected.focalLength(), read(head, commas).focalLength(), 0);
        refused("x_cm,y_cm,z_cm", rows, "semicolons if the first line has them");
    }

    @Test
    void ofAPlaceMeasuredTwiceTheMeanIsTaken() throws Exception {
        MeasuredShape once = read("x_cm,y_cm,z_cm", rows());
        assertEquals(0, once.apart(), 0);
        String[] rows = Arrays.copyOf(rows(), 83);
        rows[81] = rows[10];
        rows[82] = rows[10];
        MeasuredShape copied = read("x_cm,y_cm,z_cm", rows);
        assertEquals(81, copied.points());
        assertEquals(0, copied.apart(), 0);
        assertEquals(once.focalLength(), copied.focalLength(), 1e-12);
        String[] cells = rows()[10].split(",");
        double z = Double.parseDouble(cells[2]);
        rows[10] = cells[0] + "," + cells[1] + "," + (z + 0.3);
        rows[81] = cells[0] + "," + cells[1] + "," + (z - 0.3);
        MeasuredShape unlike = read("x_cm,y_cm,z_cm", rows);
        assertEquals(81, unlike.points());
        assertEquals(0.006, unlike.apart(), 1e-12);
        assertEquals(once.focalLength(), unlike.focalLength(), 1e-12);
        assertEquals(0.006, unlike.straightened().apart(), 1e-12);
    }

    /** Rough hands are no slips: a millimetre or two at every point. */
    @Test
    void honestNoiseIsNotRefused() throws Exception {
        String[] rows = rows();
        java.util.Random chance = new java.util.Random(5);
        for (int k = 0; k < rows.length; k++) {
            String[] cells = rows[k].split(",");
            double z = Double.parseDouble(cells[2]) + 0.15 * chance.nextGaussian();
            rows[k] = cells[0] + "," + cells[1] + "," + String.format(Locale.ROOT, "%.3f", z);
        }
        MeasuredShape shape = read("x_cm,y_cm,z_cm", rows);
        assertEquals(0.5, shape.focalLength(), 0.02);
        assertEquals(0.0015, shape.offParaboloid(), 0.0006);
    }
}
