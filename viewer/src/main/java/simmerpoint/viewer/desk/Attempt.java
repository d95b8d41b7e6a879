package simmerpoint.viewer.desk;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import simmerpoint.scenario.Problem;
import simmerpoint.scenario.ReadScenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.ScenarioReader;
import simmerpoint.scenario.ScenarioWriter;

/**
 * Tries an edit on a state. As much of it as can be used comes into force; the rest is kept as it was typed. What was
 * waiting from before is tried again together with it, since one change often puts right what another broke.
 */
final class Attempt {
    private final String name;
    private final Path folder;
    private final Map<String, Problem> problems = new LinkedHashMap<>();

    private Attempt(String name, Path folder) {
        this.name = name;
        this.folder = folder;
    }

    /**
     * The state after an edit.
     *
     * @param state before
     * @param edit what is wanted
     * @param name of the file
     * @param folder where other files it names are looked for
     */
    static DeskState at(DeskState state, Edit edit, String name, Path folder) {
        Edit all = state.pending().then(edit);
        DeskState together = new Attempt(name, folder).asFarAsGood(state, all);
        boolean stuck = together.text().equals(state.text()) && !state.pending().isNone() && !edit.isNone();
        if (!stuck) {
            return together;
        }
        DeskState alone = new Attempt(name, folder).asFarAsGood(state.with(Edit.NONE, List.of()), edit);
        if (alone.text().equals(state.text())) {
            return together;
        }
        return new Attempt(name, folder)
                .asFarAsGood(alone.with(Edit.NONE, List.of()), state.pending().then(alone.pending()));
    }

    private DeskState asFarAsGood(DeskState state, Edit edit) {
        Edit wanted = edit;
        Edit held = Edit.NONE;
        while (true) {
            try {
                String text =
                        ScenarioWriter.write(ScenarioWriter.without(state.text(), wanted.dropped()), wanted.typed());
                if (text.equals(state.text())) {
                    return state.with(held, problemsOf(held));
                }
                ReadScenario read = ScenarioReader.parse(name, text, folder);
                return DeskState.good(text, read).with(held, problemsOf(held));
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
