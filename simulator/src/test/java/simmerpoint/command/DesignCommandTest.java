package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.quantities.Schemas;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ExampleScenario;
import simmerpoint.scenario.file.ScenarioReader;

class DesignCommandTest extends CommandRuns {
    private static final List<String> SMALL = List.of(
            "--rays=8192",
            "--watts=225W",
            "--sectors=12..14",
            "--rings=2..2",
            "--diameter=90cm..1.1m",
            "--focal-length=75cm..85cm");

    private Path file;

    @BeforeEach
    void write() throws IOException {
        file = Files.writeString(folder.resolve("mine.yaml"), ExampleScenario.text());
    }

    private int run(List<String> options) {
        List<String> all = new ArrayList<>(List.of("design", file.toString()));
        all.addAll(options);
        return run(all.toArray(String[]::new));
    }

    private List<String> with(String... more) {
        List<String> all = new ArrayList<>(SMALL);
        all.addAll(List.of(more));
        return all;
    }

    @Test
    void answersAndWritesFilesThatParse() throws IOException, ScenarioException {
        Path found = folder.resolve("found");
        List<String> options = with(
                "--png=" + folder.resolve("d.png"),
                "--csv=" + folder.resolve("d.csv"),
                "--json=" + folder.resolve("d.json"),
                "--write=" + found);
        assertEquals(0, run(options), err());
        String text = out().substring(0, out().indexOf("fewest-panels.yaml is written."));
        assertTrue(text.contains("Fewest panels: a dish of"), text);
        assertTrue(text.lines().allMatch(line -> line.length() <= 80 || line.startsWith(found.toString())), text);
        assertEquals(1400, ImageIO.read(folder.resolve("d.png").toFile()).getWidth());
        assertTrue(Files.readString(folder.resolve("d.csv")).contains("flat-rings,12,2"));
        JsonNode best = Schemas.read(folder.resolve("d.json")).get("front").get(0);
        assertTrue(best.get("absorbed_power_W_se").isNumber(), best.toString());
        for (String name : List.of("fewest-panels.yaml", "smallest-dish.yaml", "easiest-aim.yaml")) {
            double across =
                    ScenarioReader.read(found.resolve(name)).scenario().dish().diameterMetres();
            assertTrue(across >= 0.9 && across <= 1.1, name);
            assertTrue(Files.readString(found.resolve(name)).contains("#"), "comments are kept");
            assertTrue(out().contains("\n" + found.resolve(name) + " is written.\n"), out());
        }
        assertEquals(2, run(options), "nothing is replaced");
        assertTrue(err().contains("exists already"));
    }

    @Test
    void saysWhatBinds() {
        assertEquals(0, run(with("--pan-height=20cm")));
        String text = said();
        assertTrue(text.contains("height of the pan binds"), text);
    }

    @Test
    void aPanInTheMirrorIsTheScenariosMistake() throws IOException {
        Files.writeString(file, ExampleScenario.text().replace("pull-back: 0 cm", "pull-back: -75 cm"));
        for (List<String> wish : List.of(List.of("--level=boil"), List.of("--watts=225W"))) {
            List<String> options = new ArrayList<>(wish);
            options.addAll(List.of("--quiet", "--sectors=12..12", "--rings=2..2", "--rays=8192"));
            int code = run(options);
            String said = err();
            assertFalse(said.contains("went wrong"), said);
            assertEquals(wish.get(0).startsWith("--level") ? 2 : 0, code, said);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--level=biol|did you mean boil?",
                "--diameter=1.2m..60cm|runs the wrong way",
                "--diameter=60|is not a range of lengths",
                "--diameter=60..70|unit",
                "--sectors=2..8|3 sectors or more",
                "--panels=10..20|only bounds from above",
                "--sheet=50|is not the size of a sheet",
                "--cut=round|flat-rings, bent-strips, both",
                "--write=nowhere/found|there is no folder nowhere to make found in",
                "--write=pom.xml|pom.xml is a file",
                "--precision=1%|use --rays",
                "--level=boil|give one of them"
            })
    void refusesInOneSentence(String option, String words) {
        List<String> options = option.contains("biol") ? List.of(option) : List.of("--watts=225W", option);
        assertEquals(2, run(options));
        String said = err();
        assertTrue(said.contains(words), said);
        assertEquals(1, said.lines().count(), said);
        assertFalse(said.contains("Exception"), said);
    }
}
