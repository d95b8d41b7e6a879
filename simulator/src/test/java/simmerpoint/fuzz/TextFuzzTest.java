package simmerpoint.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;

/** Scenario files whose text is damaged: read, or refused with a line and a sentence. */
@Tag("fuzz")
class TextFuzzTest {
    private static final Path FOLDER = Path.of("../scenarios");
    private static final int MOST_EDITS = 4;

    @Test
    void isReadOrRefused() throws IOException {
        List<List<String>> texts = new ArrayList<>();
        for (String name : ScenarioFuzzTest.shipped()) {
            texts.add(Files.readAllLines(FOLDER.resolve(name)));
        }
        new Fuzz<List<String>>("text.yaml", TextFuzzTest::check, lines -> String.join("\n", lines))
                .run(
                        2,
                        random ->
                                new Fuzz.Case<>(RandomValues.pick(texts, random), LineEdits.some(random, MOST_EDITS)));
    }

    private static void check(List<String> lines) {
        try {
            CheckedScenario.of(ScenarioReader.values("t.yaml", String.join("\n", lines), FOLDER));
        } catch (ScenarioException e) {
            Sentences.check(e);
        }
    }
}
