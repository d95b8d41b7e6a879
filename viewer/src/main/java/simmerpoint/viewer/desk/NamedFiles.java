package simmerpoint.viewer.desk;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import simmerpoint.scenario.Key;
import simmerpoint.scenario.Keys;
import simmerpoint.scenario.ReadScenario;
import simmerpoint.scenario.ScenarioWriter;

/** Names of other files in a scenario, which count from its own folder and change when it moves to another. */
public final class NamedFiles {
    private NamedFiles() {}

    /** How a scenario in that folder names a file: from the folder on if both have a root in common. */
    public static String from(Path folder, Path file) {
        Path home = folder.toAbsolutePath().normalize();
        Path whole = file.toAbsolutePath().normalize();
        boolean related = home.getRoot() != null && home.getRoot().equals(whole.getRoot());
        return (related ? home.relativize(whole) : whole).toString().replace('\\', '/');
    }

    /** The state with the names of other files as they are from another folder; what they hold is the same. */
    static DeskState moved(DeskState state, Path before, Path after) {
        Map<String, String> names = new LinkedHashMap<>();
        for (Key key : Keys.all()) {
            String name = state.given().get(key.path());
            if (key.kind() == Key.Kind.FILE && name != null) {
                names.put(key.path(), renamed(name, before, after));
            }
        }
        String text = ScenarioWriter.write(state.text(), names);
        ReadScenario read = state.read();
        ReadScenario moved = new ReadScenario(read.scenario(), text, read.warnings(), read.timeless(), read.defaults());
        return DeskState.good(text, moved).with(state.pending(), state.problems());
    }

    private static String renamed(String name, Path before, Path after) {
        try {
            boolean whole = Path.of(name).isAbsolute();
            return whole ? name : from(after, before.toAbsolutePath().resolve(name));
        } catch (InvalidPathException e) {
            return name;
        }
    }
}
