package simmerpoint.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Collects what is wrong with one file. */
public final class Problems {
    private final String file;
    private final List<Problem> found = new ArrayList<>();
    private final Set<String> spoilt = new HashSet<>();

    /** None yet, in a file of that name. */
    public Problems(String file) {
        this.file = file;
    }

    /** A copy. */
    public Problems(Problems other) {
        this(other.file, other);
    }

    /** The same in a file of another name. */
    public Problems(String file, Problems other) {
        this.file = file;
        found.addAll(other.found);
        spoilt.addAll(other.spoilt);
    }

    /** Takes back what was told of a key, or of all keys of a section. */
    public void forget(String path) {
        found.removeIf(problem -> problem.key().equals(path) || problem.key().startsWith(path + "."));
        spoilt.removeIf(key -> key.equals(path) || key.startsWith(path + "."));
    }

    /** Tells what is wrong with something that stands in the file. */
    public void add(int line, String key, String text) {
        add(new Problem(line, key, text));
    }

    /** Tells that something is not there. */
    public void addMissing(int line, String key, String text) {
        add(new Problem(line, key, text, true));
    }

    private void add(Problem problem) {
        found.add(problem);
        spoilt.add(problem.key());
    }

    /** Remembers that a problem with this key was told, so that it is not also called missing. */
    public void spoilt(String key) {
        spoilt.add(key);
    }

    /** Whether something was told of this key or of a section around it. */
    public boolean isSpoilt(String key) {
        int dot = key.lastIndexOf('.');
        return spoilt.contains(key) || (dot > 0 && isSpoilt(key.substring(0, dot)));
    }

    /** Whether something was told of a key in this section. */
    public boolean isAnyIn(String section) {
        return spoilt.stream().anyMatch(key -> key.startsWith(section + "."));
    }

    /** Adds a problem after which nothing more can be read. */
    public ScenarioException refuse(int line, String key, String text) {
        add(line, key, text);
        return refusal();
    }

    /** Everything found so far. */
    public ScenarioException refusal() {
        return new ScenarioException(file, List.copyOf(found));
    }

    /** Refuses the file if anything was found. */
    public void throwIfAny() throws ScenarioException {
        if (!found.isEmpty()) {
            throw refusal();
        }
    }
}
