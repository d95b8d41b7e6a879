package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.study.trace.TraceStudy;

/** By default a command answers in about a dozen lines, with --full in all it knows. */
@Tag("slow")
class ShortAnswersTest extends CommandRuns {
    private static final String HUT = "../scenarios/lake-hut-evening.yaml";
    private static final int DOZEN = 18;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "trace --rays 1024",
                "pan --rays 1024",
                "aim --rays 1024",
                "budget --rays 1024",
                "panels --rays 4k",
                "compare --rays 1024 --vary dish.surface.sectors=12,16,24",
                "day " + HUT + " --rays 1024",
                "day " + HUT + " --rays 1024 --year",
                "cut ../scenarios/tea-kitchen.yaml",
                "check " + HUT
            })
    void aboutADozenLinesUnlessAllIsAskedFor(String command) {
        List<String> words = List.of(command.split(" "));
        for (String units : List.of("metric", "inch")) {
            assertEquals(0, run(with(words, "--units", units)), err());
            List<String> brief = out().lines().toList();
            assertTrue(brief.size() <= DOZEN, () -> String.join("\n", brief));
            assertTrue(brief.stream().allMatch(line -> line.length() <= 80), () -> String.join("\n", brief));
            assertFalse(out().contains("\u00b1"), out());
        }
        assertEquals(0, run(with(words, "--full")), err());
        assertTrue(out().lines().count() > DOZEN, out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"trace", "pan", "aim"})
    void whatBurnsIsAlwaysSaid(String command) {
        assertEquals(0, run(command, "--rays", "1024"), err());
        assertTrue(out().contains("! Focused sunlight blinds and burns."), out());
    }

    @Test
    void whatIsAskedNextIsACommand() {
        Terminal terminal = new Terminal(InputStream.nullInputStream(), System.out, System.err, false, false, 0);
        CommandLine line = CommandLines.of(terminal, TraceStudy::run, new Complaints(terminal));
        for (NextCommand next : NextCommand.values()) {
            assertNotNull(line.getSubcommands().get(next.command()), next.command());
        }
    }

    private static String[] with(List<String> words, String... more) {
        return Stream.concat(words.stream(), Stream.of(more)).toArray(String[]::new);
    }
}
