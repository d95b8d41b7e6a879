package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompareCommandTest extends CommandRuns {
    private static final String DISH = "dish: {diameter: 1.2 m, focal-length: 0.8 m, hub: 6 cm, "
            + "surface: {cut: flat-rings, sectors: 24, rings: 6}}\n";

    private String file;
    private String other;

    @BeforeEach
    void scenarios() throws IOException {
        file = write("one.yaml", "title: First\n" + DISH);
        other = write("two.yaml", "title: Second\n" + DISH + "mirror: {material: kitchen foil on card}\n");
    }

    @Test
    void filesAreCompared() {
        assertEquals(0, run("compare", "--full", other, file, "--rays", "4k"));
        assertTrue(out().contains("Best is First with "), out());
        assertTrue(out().contains("Second costs "), out());
        assertTrue(out().contains("mirror.material"), out());
        assertEquals("", err());
    }

    /** A spreadsheet would run it. */
    @Test
    void aTitleThatLooksLikeAFormulaIsMadeHarmless() throws IOException {
        String formula = write("three.yaml", "title: '=1+1'\n" + DISH);
        Path csv = folder.resolve("out.csv");
        assertEquals(0, run("compare", file, formula, "--rays", "1024", "--csv", csv.toString()));
        String text = Files.readString(csv);
        assertTrue(text.contains("'=1+1"), text);
        assertFalse(text.matches("(?s).*(^|[,\n])=1.*"), text);
    }

    @Test
    void keysAreVariedInOneFileInSeveralAndInTheExample() {
        assertEquals(0, run("compare", "--full", file, "--vary", "dish.surface.sectors=12,24", "--rays", "4k"));
        assertTrue(out().contains("Best is sectors 24 with "), out());
        assertEquals(0, run("compare", "--full", "--vary=dish.hub=6 cm,30 cm", "--rays", "4k"));
        assertTrue(out().contains("Best is hub 6 cm with "), out());
        assertEquals(0, run("compare", "--full", file, other, "--vary", "dish.hub=6 cm,30 cm", "--rays", "4k"));
        assertTrue(out().contains("Best is First: hub 6 cm with "), out());
    }

    @Test
    void filesAreWrittenBesideTheAnswer() throws IOException {
        Path json = folder.resolve("c.json");
        Path csv = folder.resolve("c.csv");
        Path png = folder.resolve("c.png");
        String[] args = {
            "compare",
            file,
            "--vary",
            "dish.hub=1 cm,2 cm",
            "--rays",
            "4k",
            "--json",
            json.toString(),
            "--csv",
            csv.toString(),
            "--png",
            png.toString()
        };
        assertEquals(0, run(args));
        assertEquals(2, new ObjectMapper().readTree(json.toFile()).get("rows").size());
        assertTrue(Files.readString(csv).contains("rank,name,file,dish.hub,cooking_power_W"));
        assertEquals(1400, ImageIO.read(png.toFile()).getWidth());
        assertEquals(0, run("compare", file, other, "--rays", "4k", "--json", "-"));
        assertTrue(out().startsWith("{") && out().endsWith("}\n"), out());
    }

    @Test
    void anOddityIsToldOnceAndOfHowMany() throws IOException {
        file = write("tall.yaml", DISH + "stand: {highest-pan: 2 m}\n");
        assertEquals(0, run("compare", file, "--vary", "stand.pull-back=0 cm,30 cm,31 cm", "--rays", "4k"));
        assertEquals(1, err().lines().count(), err());
        assertTrue(
                err().contains("note: stand.pull-back: ") && err().contains("(pull-back 30 cm, and 1 more like it)"),
                err());
        assertEquals(0, run("compare", file, "--vary", "stand.pull-back=0 cm,30 cm", "--rays", "4k", "--quiet"));
        assertEquals("", err());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "compare | there is nothing to compare; name two scenario files",
                "compare FILE | one.yaml: there is nothing to compare this one with",
                "compare FILE --vary dish.hub=1cm | nothing to compare this one with",
                "compare FILE FILE | this file is named twice",
                "compare FILE --vary dish.hub= | --vary, dish.hub: no value is given",
                "compare FILE --vary dish.hib=1cm,2cm | this key is not known; did you mean dish.hub?",
                "compare FILE --vary dish.hub=1cm,2cm --vary dish.hub=3cm | this key is varied twice",
                "compare FILE --vary dish.surface.sectors=2,12 | 2 is out of range; allowed is 3 to 10000",
                "compare FILE --vary dish.hub=1cm,2m | --vary dish.hub=2m in",
                "compare FILE --vary stand.pull-back=0cm,-79cm | the pan would reach",
                "compare FILE --vary | --vary needs a value",
                "compare FILE none.yaml | none.yaml: there is no such file",
                "compare FILE OTHER --json OTHER | is the scenario itself",
                "compare FILE OTHER --png - | a picture does not go to standard output",
                "comapre FILE | did you mean compare?",
            })
    void whatIsWrongIsOneSentenceAndTwo(String line, String words) {
        assertEquals(2, run(line.replace("FILE", file).replace("OTHER", other).split(" ")));
        assertComplaint(words);
    }
}
