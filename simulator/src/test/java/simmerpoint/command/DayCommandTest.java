package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DayCommandTest extends CommandRuns {
    private static final String DISH =
            "dish: {diameter: 1.2 m, focal-length: 0.8 m, hub: 6 cm, surface: {cut: flat-rings, sectors: 24, rings: 6}}\n";
    private static final String PLACE =
            "place: {latitude: 47.3°, longitude: 9.4°, altitude: 600 m, zone: Europe/Berlin}\n";

    private String file;

    @BeforeEach
    void scenario() throws IOException {
        file = write("placed.yaml", DISH + PLACE + "when: {date: 2026-06-21, time: 12:00}\n");
    }

    @Test
    void theDayOfTheScenarioOrOfTheDateAskedFor() {
        assertEquals(0, run("day", file, "--rays", "4k"));
        assertTrue(out().contains("On 21 June 2026 it cooks from"), out());
        assertEquals(0, run("day", file, "--rays", "4k", "--date", "2026-10-05", "--step", "30 min", "--width", "50"));
        assertTrue(out().contains("On 5 October 2026 it cooks"), out());
        assertTrue(out().contains("09:30"), out());
        assertTrue(out().lines().allMatch(line -> line.length() <= 50), out());
    }

    @Test
    void filesOfADay() throws IOException {
        Path json = folder.resolve("d.json");
        Path csv = folder.resolve("d.csv");
        Path png = folder.resolve("d.png");
        assertEquals(
                0,
                run(
                        "day",
                        file,
                        "--rays",
                        "4k",
                        "--json",
                        json.toString(),
                        "--csv",
                        csv.toString(),
                        "--png",
                        png.toString()));
        assertEquals(
                "2026-06-21",
                new ObjectMapper().readTree(json.toFile()).get("date").asText());
        assertTrue(Files.readString(csv).contains("time,elevation_rad"));
        assertEquals(1400, ImageIO.read(png.toFile()).getWidth());
    }

    @Test
    @Tag("slow")
    void aYearOnStandardOutputIsAlone() throws IOException {
        assertEquals(0, run("day", file, "--year", "--rays", "1024", "--json", "-"));
        assertEquals(12, new ObjectMapper().readTree(out()).get("days").size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--date 2026-02-30 | --date: \"2026-02-30\" is not a date",
                "--date 5.10.2026 | write for instance 2026-10-05",
                "--date 1850-01-01 | from 1900 to 2199",
                "--step 30 | a time needs one",
                "--step 1s | from 5 min to 3 h",
                "--step 4h | from 5 min to 3 h",
                "--step NaN | not a finite number",
                "--year --step 30min | a year goes by full hours",
                "--png - | a picture does not go to standard output",
            })
    void aWrongCommandLineIsOneSentenceAndTwo(String line, String words) {
        String[] options = line.split(" ");
        String[] args = new String[options.length + 2];
        args[0] = "day";
        args[1] = file;
        System.arraycopy(options, 0, args, 2, options.length);
        assertEquals(2, run(args));
        assertComplaint(words);
    }

    @Test
    void aDayNeedsAPlaceAndAPan() throws IOException {
        assertEquals(2, run("day", write("nowhere.yaml", DISH)));
        assertComplaint("nowhere.yaml: a day needs a place; add for instance place: {");
        assertEquals(2, run("day", write("bare.yaml", DISH + PLACE + "plane: {disc: 20 cm}\n"), "--quiet"));
        assertComplaint("a day needs a pan");
        assertEquals(2, run("day"));
        assertComplaint("a scenario file is missing");
    }

    @Test
    void polarNightIsAnAnswer() throws IOException {
        String north = write("north.yaml", DISH + "place: {latitude: 69.6°, longitude: 18.9°, zone: Europe/Oslo}\n");
        assertEquals(0, run("day", north, "--date", "2026-12-21", "--quiet"));
        assertTrue(out().contains("polar night"), out());
    }

    /** At 69.6° north the sun does not rise on 21 December and does not set on 21 June. */
    @Test
    void aDateThatIsAskedForStandsInForOneWithoutSun() throws IOException {
        String north = write(
                "night.yaml",
                DISH
                        + "place: {latitude: 69.6°, longitude: 18.9°, zone: Europe/Oslo}\nwhen: {date: 2026-12-21, time: 12:00}\n");
        assertEquals(2, run("day", north, "--quiet"));
        assertEquals(0, run("day", north, "--date", "2026-06-21", "--rays", "4k", "--quiet"));
        assertTrue(out().contains("On 21 June 2026 it cooks from"), out());
    }

    @Test
    void aPlaceWithoutATimeHasADayAllTheSame() throws IOException {
        assertEquals(0, run("day", write("anytime.yaml", DISH + PLACE), "--rays", "4k", "--quiet"));
        assertTrue(out().contains("On 21 March 2026"), out());
    }
}
