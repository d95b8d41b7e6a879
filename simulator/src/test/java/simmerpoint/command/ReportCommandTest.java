package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class ReportCommandTest extends CommandRuns {
    private static final String DISH =
            "dish: {diameter: 1.2 m, focal-length: 0.8 m, hub: 6 cm, surface: {cut: flat-rings, sectors: 12, rings: 3}}\n";

    /** A name that no file of the project has: the page goes into the current folder if no other is named. */
    private static final String NAME = "page-of-a-test-4711";

    private final Path usual = Path.of(NAME + ".html");
    private String file;

    @BeforeEach
    void scenario() throws IOException {
        file = write(NAME + ".yaml", "title: A dish\n" + DISH);
    }

    @AfterEach
    void sweep() throws IOException {
        Files.deleteIfExists(usual);
    }

    @Test
    void thePageGoesWhereItIsAskedTo() throws IOException {
        Path page = folder.resolve("mine.html");
        assertEquals(0, run("report", file, "--html", page.toString(), "--rays", "1024", "--units", "inch"));
        String text = Files.readString(page);
        assertTrue(text.startsWith("<!DOCTYPE html>") && text.endsWith("</html>\n"));
        assertTrue(text.contains("<h1 dir=\"auto\">A dish</h1>"));
        assertTrue(text.contains(" --rays 1024 --units inch</code>"));
        assertTrue(out().matches("\\S+mine\\.html is written: \\d+ kB, everything in one file\\.\n"), out());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(2, files.count(), "nothing is left beside the page");
        }
    }

    /** A chapter on the logs: their answer, a drawing for each, and the caution of a trial. */
    @Test
    void logsMakeAChapter() throws IOException {
        Path page = folder.resolve("tried.html");
        String garden = "../scenarios/garden-strips.yaml";
        String logs = "../scenarios/garden-logs/";
        String[] call = {
            "report",
            garden,
            "--html",
            page.toString(),
            "--rays",
            "1024",
            "--log",
            logs + "monday.csv",
            "--log",
            logs + "monday-cooling.csv"
        };
        assertEquals(0, run(call));
        String text = Files.readString(page);
        String chapter = text.substring(text.indexOf("<section id=\"trial\""));
        chapter = chapter.substring(0, chapter.indexOf("</section>"));
        assertTrue(chapter.contains("3\u00a0l of water came to 98\u00a0°C"), chapter);
        assertTrue(chapter.contains("monday.csv: water, °C") && chapter.contains("monday-cooling.csv: water, °C"));
        assertTrue(chapter.contains("likeliest flaw") && chapter.contains("The standard\u2019s test"), chapter);
        assertEquals(2, chapter.split("<figure", -1).length - 1);
        assertTrue(text.contains("read the thermometer from the side"));
    }

    /** A log that cannot be used is told before anything is worked out, and no page is left. */
    @Test
    void aBadLogMakesNoPage() throws IOException {
        Path page = folder.resolve("tried.html");
        String log = write("bad.csv", "time_min,water_C\n0,20\n5,warm\n");
        assertEquals(2, run("report", "../scenarios/garden-strips.yaml", "--html", page.toString(), "--log", log));
        assertComplaint("bad.csv, line 3: water_C has 'warm'");
        bareDisc();
        assertEquals(2, run("report", file, "--html", page.toString(), "--log", "../scenarios/garden-logs/monday.csv"));
        assertComplaint("a log heats water in a pan");
        assertTrue(Files.notExists(page));
    }

    /** A bare disc needs no study of a pan: its page is written in a third of the time. */
    private void bareDisc() throws IOException {
        write(NAME + ".yaml", "title: A dish\n" + DISH + "plane: {disc: 20 cm}\n");
    }

    @Test
    void standardOutputGetsThePageAloneAndTheSame() throws IOException {
        bareDisc();
        Path page = folder.resolve("mine.html");
        assertEquals(0, run("report", file, "--html", page.toString(), "--rays", "1024", "--threads", "1"));
        assertEquals(0, run("report", file, "--html", "-", "--rays", "1024", "--threads", "2"));
        assertArrayEquals(Files.readAllBytes(page), bytes());
    }

    @Test
    void withoutANameItIsThatOfTheScenario() throws IOException {
        bareDisc();
        assertEquals(0, run("report", file, "--rays", "1024"));
        assertEquals(NAME + ".html is written", out().substring(0, out().indexOf(':')));
        assertEquals(0, run("report", file, "--rays", "1024", "--seed", "2"), "an older page of ours is replaced");
        assertTrue(Files.readString(usual).contains("--seed 2"));
    }

    @Test
    void nothingOfSomeoneElsesIsReplaced() throws IOException {
        Files.writeString(usual, "<!DOCTYPE html><p>my own notes</p>");
        assertEquals(2, run("report", file));
        assertComplaint(NAME + ".html is there already and is no page of simmerpoint's; name another with --html.");
        assertEquals("<!DOCTYPE html><p>my own notes</p>", Files.readString(usual));
        assertEquals(2, run("report", file, "--html", file));
        assertComplaint("--html: " + file + " is the scenario itself");
        assertTrue(Files.readString(Path.of(file)).startsWith("title: A dish"));
    }

    @Test
    void wrongUseIsOneSentence() throws IOException {
        assertEquals(2, run("report"));
        assertComplaint("a scenario file is missing");
        assertEquals(2, run("report", folder.resolve("none.yaml").toString()));
        assertComplaint("none.yaml");
        assertEquals(
                2,
                run("report", file, "--html", folder.resolve("no/folder.html").toString()));
        assertComplaint("there is no folder");
        assertEquals(2, run("report", file, "--html", ""));
        assertComplaint("--html needs the name of a file");
        assertEquals(2, run("report", file, "--png", "x.png"));
        assertComplaint("there is no option --png");
        String inTheMirror = write("deep.yaml", DISH + "stand: {pull-back: -79 cm}\n");
        assertEquals(2, run("report", inTheMirror, "--html", "-", "--quiet"));
        assertComplaint("deep.yaml: ");
        assertFalse(Files.exists(usual), () -> "there is " + usual.toAbsolutePath());
    }

    @Test
    void aPlaceWithoutATimeNeedsOne() throws IOException {
        String placed = write(
                "placed.yaml",
                DISH + "place: {latitude: 47.3°, longitude: 9.4°, altitude: 600 m, zone: Europe/Berlin}\n");
        assertEquals(2, run("report", placed, "--html", "-"));
        assertComplaint("placed.yaml");
    }

    @Test
    void itIsAmongTheCommands() {
        assertEquals(0, run("--help"));
        assertTrue(out().contains("report"), out());
        for (List<String> args : List.of(List.of(" "), List.of("reprot"))) {
            assertEquals(2, run(args.toArray(String[]::new)));
            assertComplaint("report");
        }
    }
}
