package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static simmerpoint.scenario.BadInput.GOOD;
import static simmerpoint.scenario.BadInput.assertRefused;
import static simmerpoint.scenario.BadInput.refused;
import static simmerpoint.scenario.BadInput.with;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** YAML that no scenario may use, and text that is no YAML. */
class BadYamlTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "hub: 60 mm|hub: !!str 60 mm|5|dish.hub|YAML tags (!name) are not used",
                "hub: 60 mm|hub: !java.net.URL 60 mm|5|dish.hub|YAML tags",
                "sun:|sun: !!map|10|sun|YAML tags",
                "hub: 60 mm|hub: &h 60 mm|5|dish.hub|YAML anchors (&name) are not used",
                "hub: 60 mm|hub: *h|5|dish.hub|YAML aliases (*name) are not used",
                "hub: 60 mm|hub: {a: {a: {a: {a: {a: {a: {a: {a: 1}}}}}}}}|5||more than 8 deep",
                "hub: 60 mm|`\thub: 60 mm`|5||tab",
                "`  hub: 60 mm`|`\thub: 60 mm`|5||begins with a tab; indent with spaces",
                "hub: 60 mm|hub: 60: mm|5||a colon here where none is expected",
                "hub: 60 mm|hub: '60 mm|5||quotation mark is opened and not closed",
                "hub: 60 mm|hub: @60 mm|5||put the value in quotes",
                "rings: 6}|rings: 6|7||a bracket is opened and not closed",
                "`  hub: 60 mm`|`   hub: 60 mm`|5||a colon here where none is expected",
                "`  hub: 60 mm`|` hub: 60 mm`|5||not indented like the lines before it",
                "hub: 60 mm|hub|5||a colon is missing",
                "title: test|? [a, b]|1||a key must be a plain word",
                "hub: 60 mm|hub: 60\u0007 mm|5||cannot be printed"
            })
    void isRefusedWithItsLine(String line, String replacement, int at, String key, String words) {
        String text = with(line, replacement);
        ScenarioException e = refused(text);
        Problem first = e.problems().get(0);
        assertTrue(e.getMessage().contains(words), e.getMessage());
        assertEquals(key == null ? "" : key, first.key(), e.getMessage());
        assertEquals(at, first.line(), e.getMessage());
        BadInput.assertOneSentence(e.getMessage());
    }

    @Test
    void twoDocumentsAreRefused() {
        assertRefused(GOOD + "---\n" + GOOD, 17, "", "a second document begins here");
    }

    @Test
    void tagDirectivesAreRefused() {
        ScenarioException e = refused("%TAG !e! tag:example.com,2000:\n---\n" + GOOD);
        assertTrue(e.getMessage().contains("YAML tags"), e.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "# only a comment\n", "---\n", "\uFEFF", "null\n", "---\n...\n"})
    void emptyFilesAreRefused(String text) {
        assertRefused(text, 0, "", "the file is empty");
    }

    @ParameterizedTest
    @ValueSource(strings = {"just text\n", "- a\n- b\n", "42\n"})
    void otherTextIsNoScenario(String text) {
        assertRefused(text, 1, "", "this is not a scenario");
    }

    @Test
    void aDecimalCommaInBracesIsCalledOne() {
        assertRefused(
                with("diameter: 24 cm", "diameter: 24 cm\nplane: {disc: 1,5 cm}")
                        .replace("pan:\n  diameter: 24 cm\n", ""),
                13,
                "plane.disc",
                "1,5 cm has a comma; decimals take a point; write 1.5 cm");
    }

    /** Ten levels of ten aliases would be ten thousand million values. */
    @Test
    void aliasBombsGoOffNowhere() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i <= 10; i++) {
            String alias = "*a" + (i - 1);
            bomb.append("a").append(i).append(": &a").append(i).append(" [");
            bomb.append((alias + ", ").repeat(9)).append(alias).append("]\n");
        }
        assertTimeoutPreemptively(Duration.ofSeconds(2), () -> assertRefused(bomb.toString(), 1, "a0", "YAML anchors"));
    }

    @Test
    void manyBracketsAreRefusedAtOnce() {
        String brackets = "title: " + "[".repeat(900_000);
        assertTimeoutPreemptively(Duration.ofSeconds(5), () -> refused(brackets));
        String braces = "{a: ".repeat(200_000);
        assertTimeoutPreemptively(Duration.ofSeconds(5), () -> refused(braces));
    }
}
