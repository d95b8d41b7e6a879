package simmerpoint.scenario.values;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.units.QuantityException;

/** Makes {@link ScenarioValues}: of a text key by key, or of others by changing some. */
final class ValuesBuilder {
    private final Optional<ScenarioValues> asRead;
    private final Map<String, KeyValue> given;
    private final Map<String, Integer> sectionLines;
    private ScenarioSource source;
    private Problems problems;

    /** Of a text; {@code problems} are those found in it so far. */
    ValuesBuilder(ScenarioSource source, Problems problems) {
        this.asRead = Optional.empty();
        this.source = source;
        this.given = new LinkedHashMap<>();
        this.sectionLines = new HashMap<>();
        this.problems = problems;
    }

    /** Of other values. */
    ValuesBuilder(ScenarioValues values) {
        this.asRead = Optional.of(values.asRead());
        this.source = values.source();
        this.given = new LinkedHashMap<>(values.given());
        this.sectionLines = new HashMap<>(values.sectionLines());
        this.problems = values.problems();
    }

    /** Reads what stands at a key in that line of the file. */
    void read(Key key, String typed, int line) {
        try {
            given.put(key.path(), KeyValue.read(key, typed, line));
        } catch (QuantityException e) {
            refuse(key, typed, line, e.getMessage());
        }
    }

    /** Remembers what is no value of that key, and why. */
    void refuse(Key key, String typed, int line, String why) {
        given.put(key.path(), KeyValue.wrong(typed, line));
        problems.add(line, key.path(), why);
    }

    /** A section in that line of the file. */
    void addSection(String path, int line) {
        sectionLines.put(path, line);
    }

    /** Sets a value that does not stand in the file. */
    void set(Key key, String typed) {
        addSections(key);
        problems.forget(key.path());
        read(key, typed, 0);
    }

    /** Sets a number that nobody typed, SI units or radians. */
    void setNumber(Key key, double si) {
        addSections(key);
        given.put(key.path(), KeyValue.ofNumber(si));
    }

    private void addSections(Key key) {
        for (String section = key.section(); !section.isEmpty(); section = Key.sectionOf(section)) {
            sectionLines.putIfAbsent(section, 0);
        }
    }

    /** Takes out a key or a whole section, and the sections around it that have nothing else. */
    void remove(String path) {
        boolean wasThere = given.keySet().removeIf(key -> isUnder(path, key));
        wasThere |= sectionLines.keySet().removeIf(other -> isUnder(path, other));
        problems.forget(path);
        String section = Key.sectionOf(path);
        if (wasThere && !section.isEmpty() && isEmpty(section)) {
            remove(section);
        }
    }

    private boolean isEmpty(String section) {
        String prefix = section + ".";
        return given.keySet().stream().noneMatch(key -> key.startsWith(prefix))
                && sectionLines.keySet().stream().noneMatch(key -> key.startsWith(prefix));
    }

    private static boolean isUnder(String parent, String key) {
        return key.equals(parent) || key.startsWith(parent + ".");
    }

    /** Gives the scenario another name and folder, and the files that it names their names from there. */
    void move(String name, Path folder) {
        boolean elsewhere = !absolute(folder).equals(absolute(source.folder()));
        for (Key key : elsewhere ? Keys.all() : List.<Key>of()) {
            if (key.kind() == Key.Kind.FILE && given.containsKey(key.path())) {
                set(key, FileNames.moved(given.get(key.path()).typed(), source.folder(), folder));
            }
        }
        source = new ScenarioSource(name, folder, source.text());
        problems = new Problems(name, problems);
    }

    private static Path absolute(Path folder) {
        return folder.toAbsolutePath().normalize();
    }

    ScenarioValues values() {
        return new ScenarioValues(this);
    }

    Optional<ScenarioValues> asRead() {
        return asRead;
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

    Problems problems() {
        return problems;
    }
}
