package simmerpoint.viewer.desk;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.scenario.Problem;
import simmerpoint.scenario.ReadScenario;
import simmerpoint.scenario.ScenarioWriter;

/**
 * The scenario at one moment of its editing. The text is always good; what was typed and is not good stands beside it,
 * with what is wrong with it, until it is put right, undone or taken back.
 *
 * @param text of the file, good
 * @param read what the text says; this is in force
 * @param pending what was typed beyond that and cannot be used
 * @param problems why not
 * @param given every value of the text by full path, as typed there
 */
public record DeskState(
        String text, ReadScenario read, Edit pending, List<Problem> problems, Map<String, String> given) {
    /** Keeps its own copies. */
    public DeskState {
        problems = List.copyOf(problems);
        given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
    }

    /** A good text. */
    static DeskState good(String text, ReadScenario read) {
        return new DeskState(text, read, Edit.NONE, List.of(), ScenarioWriter.values(text));
    }

    /** The same with something that cannot be used beside it. */
    DeskState with(Edit wrong, List<Problem> why) {
        return new DeskState(text, read, wrong, why, given);
    }

    /** What stands at a key as typed, right or wrong; empty if its default holds. */
    public Optional<String> typed(String path) {
        if (pending.typed().containsKey(path)) {
            return Optional.of(pending.typed().get(path));
        }
        return pending.drops(path) ? Optional.empty() : Optional.ofNullable(given.get(path));
    }

    /** Whether anything is given in a section, right or wrong. */
    public boolean hasSection(String section) {
        String prefix = section + ".";
        return given.keySet().stream()
                        .anyMatch(path -> path.startsWith(prefix) && typed(path).isPresent())
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
