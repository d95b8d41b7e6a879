package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.Tuple.Tuple2;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.scenario.yaml.SourceWriter;

/** A written file says what the reader makes of the old file with the same values beside it: derived from the reader alone. */
class SourceWriterProperties {
    private static final Path FOLDER = Path.of("../scenarios");
    private static final List<String> NASTY = List.of(
            "",
            " ",
            "on",
            "no",
            "~",
            "#1",
            "a # b",
            "a: b",
            "- a",
            "'",
            "\"",
            "{x",
            "a, b",
            "é°²",
            "\u4e16\ud83d\udd25",
            "\n",
            "a\u0085b",
            "%",
            "\ud800",
            "012",
            "&a",
            "*a",
            "!a",
            "@",
            "1,5 m",
            "null");

    @Property(seed = "61", tries = 600)
    void saysWhatTheReaderMakesOfTheSameValues(
            @ForAll("scenarios") String text, @ForAll("changes") Map<String, String> changes) throws ScenarioException {
        ScenarioValues changed = read(text).with(changes);
        String written = changed.sourceText();
        assertEquals(outcome(changed), outcome(read(written)), () -> changes + "\n" + written);
    }

    @Property(seed = "62", tries = 300)
    void givesEveryNewValueBack(@ForAll("scenarios") String text, @ForAll("changes") Map<String, String> changes)
            throws ScenarioException {
        Map<String, String> values =
                SourceWriter.values(read(text).with(changes).sourceText());
        changes.forEach((path, typed) -> assertEquals(typed, values.get(path), path));
    }

    @Property(seed = "63", tries = 300)
    void leavesOutWhatIsTakenOut(@ForAll("scenarios") String text, @ForAll("changes") Map<String, String> changes)
            throws ScenarioException {
        Map<String, String> left = SourceWriter.values(text);
        left.keySet().removeAll(changes.keySet());
        assertEquals(
                left, SourceWriter.values(read(text).without(changes.keySet()).sourceText()));
    }

    private static ScenarioValues read(String text) throws ScenarioException {
        return ScenarioReader.values("t.yaml", text, FOLDER);
    }

    /** The scenario with what is said beside it, or everything said against it but for the lines. */
    private static Object outcome(ScenarioValues values) {
        try {
            CheckedScenario read = CheckedScenario.of(values);
            return List.of(shown(read.scenario()), read.warnings(), read.defaults());
        } catch (ScenarioException e) {
            Set<String> said = new TreeSet<>();
            e.problems().forEach(problem -> said.add(problem.key() + ": " + problem.text()));
            return said;
        }
    }

    /** Every value as text; skies and the arrays of a mesh, which know no equality, by their class. */
    private static String shown(Scenario scenario) {
        return scenario.toString().replaceAll("(AshraeSky|Turbidity|\\[[DI])@[0-9a-f]+", "$1");
    }

    @Provide
    Arbitrary<String> scenarios() throws IOException {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                String text = Files.readString(file);
                texts.addAll(List.of(text, text.replace("\n", "\r\n"), text.stripTrailing(), "\uFEFF" + text));
            }
        }
        texts.add(BadInput.GOOD);
        texts.add("{dish: {diameter: 1 m, 'focal-length' : 60 cm, surface: {\"cut\":smooth}}, stand: {}}");
        texts.add(
                "---\ndish:\n    ? diameter\n    : 1 m\n    focal-length: >\n      60\n      cm\n    surface: {cut: smooth,}\n...\n");
        return Arbitraries.of(texts);
    }

    @Provide
    Arbitrary<Map<String, String>> changes() {
        return Arbitraries.of(Keys.all())
                .flatMap(key -> Arbitraries.of(typed(key)).map(value -> Tuple.of(key.path(), value)))
                .list()
                .ofMinSize(1)
                .ofMaxSize(5)
                .map(SourceWriterProperties::asMap);
    }

    /** Good values five times as often as nasty ones. */
    private static List<String> typed(Key key) {
        List<String> good = new ArrayList<>(List.of(key.example()));
        good.addAll(key.words());
        if (key.defaultIsValue()) {
            good.add(key.defaultText());
        }
        List<String> typed = new ArrayList<>(NASTY);
        while (typed.size() < 6 * NASTY.size()) {
            typed.addAll(good);
        }
        return typed;
    }

    private static Map<String, String> asMap(List<Tuple2<String, String>> pairs) {
        Map<String, String> map = new LinkedHashMap<>();
        pairs.forEach(pair -> map.put(pair.get1(), pair.get2()));
        return map;
    }
}
