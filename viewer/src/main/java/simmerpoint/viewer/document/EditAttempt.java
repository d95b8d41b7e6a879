package simmerpoint.viewer.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import simmerpoint.scenario.Problem;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.values.ScenarioValues;

/**
 * Applies an edit to a state. Valid values take effect; invalid ones stay pending as they were typed. Pending values of
 * earlier edits are tried again with it, since one change often corrects another.
 */
final class EditAttempt {
    private final Map<String, Problem> problems = new LinkedHashMap<>();

    private EditAttempt() {}

    /** The state after an edit of {@code state}. */
    static DocumentState at(DocumentState state, Edit edit) {
        Edit all = state.pending().then(edit);
        DocumentState together = new EditAttempt().asFarAsGood(state, all);
        boolean stuck = isUnchanged(state, together) && !state.pending().isNone() && !edit.isNone();
        if (!stuck) {
            return together;
        }
        DocumentState alone = new EditAttempt().asFarAsGood(DocumentState.good(state.read()), edit);
        if (isUnchanged(state, alone)) {
            return together;
        }
        Edit rest = state.pending().then(alone.pending());
        return new EditAttempt().asFarAsGood(DocumentState.good(alone.read()), rest);
    }

    private static boolean isUnchanged(DocumentState before, DocumentState after) {
        return after.values().isSameAs(before.values());
    }

    private DocumentState asFarAsGood(DocumentState state, Edit edit) {
        Edit wanted = edit;
        Edit held = Edit.NONE;
        while (true) {
            try {
                ScenarioValues values = state.values().without(wanted.dropped()).with(wanted.typed());
                CheckedScenario read = values.isSameAs(state.values()) ? state.read() : CheckedScenario.of(values);
                return new DocumentState(read, held, problemsOf(held));
            } catch (ScenarioException e) {
                Set<String> culprits = culprits(e, wanted);
                if (culprits.isEmpty()) {
                    return state.with(edit, List.copyOf(problems.values()));
                }
                held = held.then(wanted.only(culprits));
                wanted = wanted.without(culprits);
            }
        }
    }

    private List<Problem> problemsOf(Edit held) {
        return problems.values().stream()
                .filter(problem -> held.names(problem.key()))
                .toList();
    }

    /** Which keys of the edit are found fault with; everything said is remembered, the first word on each key. */
    private Set<String> culprits(ScenarioException e, Edit wanted) {
        e.problems().forEach(problem -> problems.putIfAbsent(problem.key(), problem));
        return e.problems().stream().map(Problem::key).filter(wanted::names).collect(Collectors.toSet());
    }
}
