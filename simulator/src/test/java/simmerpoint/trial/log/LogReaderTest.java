package simmerpoint.trial.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.input.InputFileException;

class LogReaderTest {
    @TempDir
    Path folder;

    private TrialLog read(String text) throws IOException, InputFileException {
        return LogReader.read(Files.writeString(folder.resolve("log.csv"), text));
    }

    @Test
    void columnsComeInAnyOrderWithGaps() throws Exception {
        TrialLog log = read(
                "# stand.pull-back: 8 cm\n# a word\nwater_C,notes,time_min,beam_W_m2\n20,\"lid on, dry\",5,\n\n21,,7.5,800\n,cloud,9,\n");
        assertEquals(Map.of("stand.pull-back", "8 cm"), log.settings());
        assertEquals(3, log.readings().size());
        assertEquals(150, log.readings().get(1).seconds());
        assertEquals(800, log.readings().get(1).beam());
        assertTrue(Double.isNaN(log.readings().get(0).beam()));
        assertEquals(2, log.water().size());
        assertFalse(log.has(Reading::airCelsius));
    }

    /** 212 °F and 32 °F by definition; 36 km/h and 22.369 mph are 10 m/s. */
    @Test
    void unitsStandInTheHeader() throws Exception {
        TrialLog log = read("time_h;water_F;air_F;wind_km_h\n0;212;32;36\n0.5;50;41;18\n");
        assertEquals(100, log.readings().get(0).waterCelsius(), 1e-12);
        assertEquals(0, log.readings().get(0).airCelsius(), 1e-12);
        assertEquals(10, log.readings().get(0).wind(), 1e-12);
        assertEquals(1800, log.readings().get(1).seconds(), 1e-9);
        assertEquals(
                10,
                read("time_s,water_C,wind_mph\n0,20,22.36936\n9,20,1\n")
                        .readings()
                        .get(0)
                        .wind(),
                1e-5);
    }

    /** As a German spreadsheet writes them: 2,5 min are 150 s; 1:02:30 is 3750 s whatever unit the column has. */
    @Test
    void decimalsMayTakeACommaBetweenSemicolonsAndTimesMinutesAndSeconds() throws Exception {
        TrialLog log = read("time_min;water_C\n0;18,0\n2,5;20,9\n1:02:30;23.8\n");
        assertEquals(20.9, log.readings().get(1).waterCelsius(), 1e-12);
        assertEquals(150, log.readings().get(1).seconds(), 1e-9);
        assertEquals(3750, log.seconds(), 1e-9);
        assertTrue(log.begins().isEmpty());
    }

    /** One second written as one minute makes a day of 24 minutes; light in kW/m² is a thousandth. */
    @Test
    void aColumnInAnotherUnitIsAskedAbout() throws Exception {
        String rows = "0,20\n600,50\n1200,80\n";
        InputFileException seconds = assertThrows(InputFileException.class, () -> read("time_min,water_C\n" + rows));
        assertTrue(seconds.getMessage().contains("lasts 20 hours"), seconds.getMessage());
        assertTrue(seconds.getMessage().contains("Are the times in seconds?"), seconds.getMessage());
        assertEquals(1200, read("time_s,water_C\n" + rows).seconds());
        assertEquals(72_000, read("time_min,water_C\n0,90\n600,40\n1200,20\n").seconds());
        assertEquals(
                72_000,
                read("time_min,water_C,beam_W_m2\n0,20,800\n600,80,0\n1200,30,0\n")
                        .seconds());
        InputFileException light = assertThrows(
                InputFileException.class, () -> read("time_min,water_C,beam_W_m2\n0,20,0.78\n10,50,0.8\n"));
        assertTrue(light.getMessage().contains("beam_W_m2 is never more than 0.80"), light.getMessage());
        assertTrue(light.getMessage().contains("kW/m²"), light.getMessage());
        assertTrue(read("time_min,water_C,beam_W_m2\n0,90,0.5\n10,80,0.5\n").isCooling());
    }

    @Test
    void timesOfDayCountFromTheFirst() throws Exception {
        TrialLog log = read("time_local\twater_C\n2026-08-30 23:50\t20\n2026-08-31 00:10:30\t25\n");
        assertEquals(1230, log.seconds());
        assertEquals("23:50", log.begins().orElseThrow().toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    time_min,air_C\\n0,20\\n1,21 | line 1: a column for the water is missing
                    water_C\\n20\\n21 | line 1: a column for the time is missing
                    time_min,water\\n0,20 | line 1: the column 'water' needs its unit, as in water_C or water_F
                    time_min,watre_C\\n0,20 | line 1: there is no column 'watre_C'; did you mean water_C?
                    time_min,water_C,water_F\\n0,20,68 | line 1: water_C and water_F both give the water
                    0,20\\n1,21 | line 1: the first line must name the columns
                    time_min,water_C\\n0,20,5\\n1,21 | line 2: found 3 cells under 2 names of columns; decimals take a point
                    time_min,water_C\\n0,"20,5" | line 2: water_C has '20,5'; decimals take a point: 20.5, or part the cells by semicolons.
                    time_min;water_C\\n0;1,20,5 | line 2: water_C has '1,20,5'; a number is allowed, or nothing
                    time_min,water_C\\n0:61:00,20 | line 2: time_min has '0:61:00'
                    time_min,water_C\\n0,20\\n0,21 | line 3: the same time as in line 2
                    time_min,water_C\\n5,20\\n4,21 | line 3: earlier than line 2
                    time_min,water_C\\n0,warm | line 2: water_C has 'warm'; a number is allowed, or nothing
                    time_min,water_C\\n0,20 °C | line 2: water_C has '20 °C'; only the number
                    time_min,water_C\\n0,NaN | line 2: water_C has 'NaN'
                    time_min,water_C\\n0,1e999 | line 2: water_C has 1e999; -5 to 115 °C is allowed
                    time_min,water_C\\n0,160 | If these are °F, call the column water_F
                    time_min,water_C\\n,20 | line 2: time_min is empty
                    time_min,water_C\\n0,20\\n2881,90 | line 3: more than 48 hours
                    time_local,water_C\\n25:00,20 | line 2: '25:00' is no time of day
                    time_local,water_C\\n11:00,20\\n2026-08-30 11:05,21 | line 3: '2026-08-30 11:05' is no time of day
                    # stand.pul-back: 8 cm\\ntime_min,water_C | line 1: stand.pul-back:
                    # stand.pull-back: far\\ntime_min,water_C | line 1: stand.pull-back:
                    # sun: much\\ntime_min,water_C | line 1: behind sun only none
                    time_min,water_C\\n0,20 | found 1 readings of the water
                    time_min,water_C\\n0,\\n1, | found 0 readings of the water
                    # nothing | the file is empty
                    """)
    void badLogsAreRefusedWithTheirLine(String text, String sentence) {
        InputFileException e = assertThrows(InputFileException.class, () -> read(text.replace("\\n", "\n")));
        assertTrue(
                e.getMessage().contains("log.csv, " + sentence)
                        || e.getMessage().contains(sentence),
                e.getMessage());
        assertTrue(e.getMessage().startsWith(folder.resolve("log.csv").toString()), e.getMessage());
    }

    @Test
    void whatIsNoFileIsRefused() {
        assertTrue(assertThrows(InputFileException.class, () -> LogReader.read(folder))
                .getMessage()
                .contains("this is a folder"));
        Path none = folder.resolve("none.csv");
        assertTrue(assertThrows(InputFileException.class, () -> LogReader.read(none))
                .getMessage()
                .contains("no such file"));
    }

    /** A logger that writes ten rows a second for a day. */
    @Test
    void aMillionRowsAreRead() throws Exception {
        Path file = folder.resolve("long.csv");
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("time_s,water_C,beam_W_m2\n");
            for (int k = 0; k < 1_000_000; k++) {
                out.write(k / 10 + "." + k % 10 + "," + (20 + k % 7) + ",800\n");
            }
        }
        TrialLog log = LogReader.read(file);
        assertEquals(1_000_000, log.readings().size());
        assertEquals(99_999.9, log.seconds(), 1e-9);
    }

    @Test
    void coolingIsWhatHasNoSun() throws Exception {
        String rows = "time_min,water_C\n0,90\n10,84\n20,79\n";
        assertTrue(read(rows).isCooling());
        assertTrue(read("# sun: none\ntime_min,water_C\n0,90\n10,91\n").isCooling());
        assertFalse(read("time_min,water_C\n0,20\n10,84\n20,79\n").isCooling());
        assertFalse(read("time_min,water_C,beam_W_m2\n0,90,700\n10,84,700\n").isCooling());
        assertTrue(read("time_min,water_C,beam_W_m2\n0,90,0\n10,84,5\n").isCooling());
    }
}
