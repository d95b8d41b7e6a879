package simmerpoint.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.values.ScenarioValues;

/** Scenarios with values of their keys changed: refused in a sentence, or traced within the laws of light. */
@Tag("fuzz")
class ScenarioFuzzTest {
    private static final Path FOLDER = Path.of("../scenarios");
    private static final int MOST_CHANGES = 6;

    /** One case in so many is put into words as well, which takes a hundred times as long. */
    private static final int IN_WORDS = 40;

    private final Fuzz<Map<String, String>> fuzz =
            new Fuzz<>("scenario.yaml", ScenarioFuzzTest::check, ScenarioFuzzTest::text);

    @Test
    void isRefusedOrTracedWithinTheLaws() throws IOException {
        List<String> files = shipped();
        fuzz.run(1, random -> broken(files, random));
    }

    @ParameterizedTest
    @MethodSource("keys")
    void bothEndsOfARangeAreRefusedWithAReasonOrTraced(Key key) throws Exception {
        for (String file : List.of("tea-kitchen.yaml", "lake-hut-evening.yaml")) {
            for (String end : RandomValues.ends(key)) {
                check(withChooser(key, Map.of("file", file, key.path(), end)));
            }
        }
    }

    static List<Key> keys() {
        return Keys.all().stream().filter(key -> key.range() != null).toList();
    }

    /** The same with the cut or kind that the key belongs to. */
    private static Map<String, String> withChooser(Key key, Map<String, String> changes) {
        Map<String, String> all = new HashMap<>(changes);
        if (!key.onlyFor().isEmpty()) {
            Keys.chooserOf(key.section())
                    .ifPresent(path -> all.put(path, key.onlyFor().iterator().next()));
        }
        return all;
    }

    private static Fuzz.Case<Map<String, String>> broken(List<String> files, SplittableRandom random) {
        Map<String, String> start = Map.of("file", RandomValues.pick(files, random));
        List<UnaryOperator<Map<String, String>>> edits = new ArrayList<>();
        int changes = 1 + random.nextInt(MOST_CHANGES);
        for (int i = 0; i < changes; i++) {
            Key key = RandomValues.pick(Keys.all(), random);
            String value = RandomValues.of(key, random);
            edits.add(before -> {
                Map<String, String> after = new HashMap<>(before);
                after.put(key.path(), value);
                return withChooser(key, after);
            });
        }
        return new Fuzz.Case<>(start, edits);
    }

    private static ScenarioValues values(Map<String, String> changes) throws ScenarioException {
        Map<String, String> typed = new HashMap<>(changes);
        Path file = FOLDER.resolve(typed.remove("file"));
        return ScenarioReader.values(file).with(typed);
    }

    private static void check(Map<String, String> changes) {
        CheckedScenario read;
        try {
            read = CheckedScenario.of(values(changes));
        } catch (ScenarioException e) {
            Sentences.check(e);
            return;
        }
        read.warnings().forEach(Sentences::check);
        boolean inWords = Math.floorMod(changes.hashCode(), IN_WORDS) == 0;
        if (inWords) {
            AnswerLaws.checkCut(read);
        }
        if (read.timeless().isEmpty()) {
            LightLaws.trace(read.scenario()).filter(result -> inWords).ifPresent(AnswerLaws::check);
        }
    }

    private static String text(Map<String, String> changes) {
        try {
            return values(changes).sourceText();
        } catch (ScenarioException e) {
            return changes.toString();
        }
    }

    static List<String> shipped() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }
}
