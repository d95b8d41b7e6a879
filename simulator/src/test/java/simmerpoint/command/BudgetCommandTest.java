package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class BudgetCommandTest extends CommandRuns {
    private static final String DISH =
            "dish: {diameter: 1.2 m, focal-length: 0.8 m, hub: 6 cm, surface: {cut: flat-rings, sectors: 24, rings: 6}}\n";

    @Test
    void theExampleIsAskedWithoutAFile() {
        assertEquals(0, run("budget", "--full", "--rays", "4k", "--width", "60"));
        assertTrue(out().contains("Perfect mirrors in this size would bring"), out());
        assertTrue(out().contains("What the flaws cost") && out().contains("One step more or less"), out());
        assertTrue(out().lines().allMatch(line -> line.length() <= 60), out());
    }

    @Test
    void filesOfABudget() throws IOException {
        String file = write("mine.yaml", DISH + "plane: {disc: 20 cm}\n");
        Path json = folder.resolve("b.json");
        Path csv = folder.resolve("b.csv");
        Path png = folder.resolve("b.png");
        assertEquals(
                0,
                run(
                        "budget",
                        file,
                        "--rays",
                        "4k",
                        "--json",
                        json.toString(),
                        "--csv",
                        csv.toString(),
                        "--png",
                        png.toString()));
        assertTrue(said().contains(" onto the disc; yours bring "), out());
        assertEquals(
                "caught",
                new ObjectMapper().readTree(json.toFile()).get("power").asText());
        assertTrue(Files.readString(csv).contains("kind,what,way,step,unit,share,power_W,power_W_se\n"));
        assertEquals(1400, ImageIO.read(png.toFile()).getWidth());
    }

    @Test
    void jsonOnStandardOutputIsAlone() throws IOException {
        assertEquals(0, run("budget", "--rays", "1024", "--json", "-"));
        assertTrue(new ObjectMapper().readTree(out()).get("flaws").size() > 5);
    }

    @Test
    void badInputIsOneSentenceAndTwo() throws IOException {
        assertEquals(2, run("budget", folder.resolve("none.yaml").toString()));
        assertComplaint("none.yaml");
        assertEquals(2, run("budget", write("odd.yaml", DISH + "mirror: {slop-error: 3 mrad}\n")));
        assertComplaint("slope-error");
        assertEquals(
                2,
                run(
                        "budget",
                        write("low.yaml", DISH + "pan: {diameter: 70 cm}\nstand: {pull-back: -70 cm}\n"),
                        "--quiet"));
        assertComplaint("into the mirror");
        assertEquals(2, run("budget", "--png", "-"));
        assertComplaint("a picture does not go to standard output");
    }
}
