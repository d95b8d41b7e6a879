package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import simmerpoint.scenario.file.ScenarioReader;

/** Laws for any text: a scenario or a sentence, never anything else. */
class ScenarioTextProperties {
    private static final Path HERE = Path.of("");

    @Property(seed = "51", tries = 1000)
    void anyTextIsReadOrRefusedInOneSentence(@ForAll @StringLength(max = 200) String text) {
        readOrRefused(text);
    }

    @Property(seed = "52", tries = 1000)
    void anySpoiltScenarioIsReadOrRefusedInOneSentence(
            @ForAll @IntRange(max = 400) int at,
            @ForAll @IntRange(max = 6) int cut,
            @ForAll @StringLength(max = 3) @CharRange(from = ' ', to = '~') String inserted) {
        String good = BadInput.GOOD;
        int from = at % good.length();
        int to = Math.min(good.length(), from + cut);
        readOrRefused(good.substring(0, from) + inserted + good.substring(to));
    }

    private static void readOrRefused(String text) {
        try {
            ScenarioReader.parse("t.yaml", text, HERE);
        } catch (ScenarioException e) {
            e.sentences().forEach(BadInput::assertOneSentence);
            long lines = text.codePoints()
                            .filter(c -> "\n\r\u0085\u2028\u2029".indexOf(c) >= 0)
                            .count()
                    + 1;
            assertTrue(e.problems().stream().allMatch(p -> p.line() >= 0 && p.line() <= lines), e.getMessage());
        }
    }
}
