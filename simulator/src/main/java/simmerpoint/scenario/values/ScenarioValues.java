package simmerpoint.scenario.values;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.yaml.SourceWriter;
import simmerpoint.units.InputText;

/**
 * The values of all keys of one scenario: those of the file or set since, and the defaults for the rest. Immutable; setting a
 * value gives another one. The text of the file is only read to make the first and only changed to save the last.
 */
public final class ScenarioValues {
    private final ScenarioSource source;
    private final Map<String, KeyValue> given;
    private final Map<String, Integer> sectionLines;
    private final Problems problems;
    private final ScenarioValues asRead;

    /** What {@code editor} holds now. */
    ScenarioValues(ValuesBuilder editor) {
        this.source = editor.source();
        this.given = new LinkedHashMap<>(editor.given());
        this.sectionLines = new HashMap<>(editor.sectionLines());
        this.problems = new Problems(editor.problems());
        this.asRead = editor.asRead().orElse(this);
    }

    /**
     * The scenario with values set.
     *
     * @param typed value by full path of the key, each as it would be typed in the file. If one of them chooses another cut or
     *     kind, the keys that do not belong to it are left out; another mirror.material brings its own figures
     * @throws ScenarioException if there is no such key; whether the key takes the value is not asked here
     */
    public ScenarioValues with(Map<String, String> typed) throws ScenarioException {
        return typed.isEmpty() ? this : Overrides.apply(this, typed);
    }

    /**
     * The scenario without some keys or sections, so that their defaults hold. A section that is left without keys goes too.
     *
     * @param paths full paths of keys or sections; what is not given is passed over
     */
    public ScenarioValues without(Collection<String> paths) {
        ValuesBuilder editor = new ValuesBuilder(this);
        paths.forEach(editor::remove);
        return editor.values();
    }

    /** The same under another name and in another folder, from where the other files that it names are found again. */
    public ScenarioValues movedTo(String name, Path folder) {
        ValuesBuilder editor = new ValuesBuilder(this);
        editor.move(name, folder);
        return editor.values();
    }

    /**
     * The scenario with other numbers, each within what its key allows, for work that draws them; such values have no text.
     *
     * @param si number in SI units or radians by full path of the key
     */
    public ScenarioValues withNumbers(Map<String, Double> si) {
        ValuesBuilder editor = new ValuesBuilder(this);
        si.forEach((path, number) -> editor.setNumber(Keys.get(path), number));
        return editor.values();
    }

    /** The text of the file that says so: as it was read, with the changed values in their places and all comments. */
    public String sourceText() {
        if (isSameAs(asRead)) {
            return source.text();
        }
        Map<String, String> changed = new LinkedHashMap<>(typed());
        changed.entrySet()
                .removeIf(e -> e.getValue().equals(asRead.typed(e.getKey()).orElse(null)));
        return SourceWriter.write(source.text(), changed, asRead.missingIn(this));
    }

    /** Keys and whole sections that {@code other} does not give any more. */
    private List<String> missingIn(ScenarioValues other) {
        return Stream.concat(given.keySet().stream(), sectionLines.keySet().stream())
                .filter(path -> !other.given.containsKey(path) && !other.hasSection(path))
                .toList();
    }

    /** Whether the same keys and sections are given, and each as typed there. */
    public boolean isSameAs(ScenarioValues other) {
        return this == other || (typed().equals(other.typed()) && sections().equals(other.sections()));
    }

    /** What to call the scenario in messages. */
    public String name() {
        return source.name();
    }

    /** Where other files that it names are looked for. */
    public Path folder() {
        return source.folder();
    }

    /** Every value given, right or wrong, by full path, as it was typed. */
    public Map<String, String> typed() {
        Map<String, String> typed = new LinkedHashMap<>();
        given.forEach((path, value) -> typed.put(path, value.typed()));
        return Collections.unmodifiableMap(typed);
    }

    /** What is given at a key, right or wrong, as it was typed. */
    public Optional<String> typed(String path) {
        return Optional.ofNullable(given.get(path)).map(KeyValue::typed);
    }

    ScenarioSource source() {
        return source;
    }

    Map<String, KeyValue> given() {
        return given;
    }

    Map<String, Integer> sectionLines() {
        return sectionLines;
    }

    /** A copy of what was found wrong with single keys. */
    public Problems problems() {
        return new Problems(problems);
    }

    ScenarioValues asRead() {
        return asRead;
    }

    private Set<String> sections() {
        return sectionLines.keySet();
    }

    /** Whether the key is given a value that it takes. */
    public boolean has(String path) {
        return given.containsKey(path) && given.get(path).isGood();
    }

    /** Whether the section is there, even without keys. */
    public boolean hasSection(String path) {
        return sectionLines.containsKey(path);
    }

    /** Line of the key's own entry, or of the nearest section around it; 0 if there is none. */
    public int line(String path) {
        if (has(path)) {
            return given.get(path).line();
        }
        if (sectionLines.containsKey(path)) {
            return sectionLines.get(path);
        }
        int dot = path.lastIndexOf('.');
        return dot < 0 ? 0 : line(path.substring(0, dot));
    }

    /** The value given or the default; not for keys that have neither. */
    public KeyValue get(String path) {
        return has(path) ? given.get(path) : KeyValue.byDefault(path);
    }

    /** What was typed at a key or holds by default, for messages. */
    public String shown(String path) {
        return InputText.shown(get(path).typed());
    }

    /** The number at a key in SI units or radians. */
    public double number(String path) {
        return get(path).number();
    }

    /** The number given, or {@code otherwise}. */
    public double number(String path, double otherwise) {
        return has(path) ? given.get(path).number() : otherwise;
    }

    /** The standard deviation that the file gives for the number at a key; empty if it says nothing of that. */
    public OptionalDouble deviation(String path) {
        return has(path) ? given.get(path).deviation() : OptionalDouble.empty();
    }

    /** The whole number at a key. */
    public int count(String path) {
        return get(path).count();
    }

    /** Whether a switch is on. */
    public boolean isOn(String path) {
        return (Boolean) get(path).value();
    }

    /** The day at a key. */
    public LocalDate date(String path) {
        return (LocalDate) get(path).value();
    }

    /** The time of day at a key. */
    public LocalTime time(String path) {
        return (LocalTime) get(path).value();
    }

    /** The clock's zone at a key. */
    public ZoneId zone(String path) {
        return (ZoneId) get(path).value();
    }

    /** The word, text or name of a file at a key. */
    public String text(String path) {
        return get(path).text();
    }
}
