package simmerpoint.viewer.document;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.scenario.Problem;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.values.ScenarioValues;

/**
 * State of the document: the valid scenario, and invalid input with its problems until it is corrected or undone.
 *
 * @param read the scenario in force, always valid
 * @param pending invalid input
 * @param problems of the pending input
 */
public record DocumentState(CheckedScenario read, Edit pending, List<Problem> problems) {
    /** Keeps its own copy. */
    public DocumentState {
        problems = List.copyOf(problems);
    }

    /** Nothing is wrong. */
    static DocumentState good(CheckedScenario read) {
        return new DocumentState(read, Edit.NONE, List.of());
    }

    /** The same with something that cannot be used beside it. */
    DocumentState with(Edit wrong, List<Problem> why) {
        return new DocumentState(read, wrong, why);
    }

    /** The values in force. */
    public ScenarioValues values() {
        return read.values();
    }

    /** The same under another name and in another folder; what it means is the same. */
    DocumentState movedTo(String name, Path folder) {
        ScenarioValues moved = values().movedTo(name, folder);
        CheckedScenario same =
                new CheckedScenario(read.scenario(), moved, read.warnings(), read.timeless(), read.defaults());
        return new DocumentState(same, pending, problems);
    }

    /** Whether the same values are in force and the same are pending. */
    boolean isSameAs(DocumentState other) {
        return values().isSameAs(other.values()) && pending.equals(other.pending());
    }

    /** Every value in force that is no default, by full path, as typed. */
    public Map<String, String> given() {
        return values().typed();
    }

    /** What stands at a key as typed, right or wrong; empty if its default holds. */
    public Optional<String> typed(String path) {
        if (pending.typed().containsKey(path)) {
            return Optional.of(pending.typed().get(path));
        }
        return pending.drops(path) ? Optional.empty() : values().typed(path);
    }

    /** Whether a section is there, right or wrong. */
    public boolean hasSection(String section) {
        String prefix = section + ".";
        return (values().hasSection(section) && !pending.drops(section))
                || pending.typed().keySet().stream().anyMatch(path -> path.startsWith(prefix));
    }

    /** What is wrong at that key or section itself: what was found and what is allowed. */
    public Optional<String> wrongAt(String path) {
        return problems.stream()
                .filter(problem -> problem.key().equals(path))
                .map(Problem::text)
                .findFirst();
    }
}
