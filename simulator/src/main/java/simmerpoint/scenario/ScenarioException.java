package simmerpoint.scenario;

import java.util.Comparator;
import java.util.List;

/** A scenario that cannot be used. The message is the first problem as one sentence with file, line and key. */
public final class ScenarioException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final transient List<Problem> problems;

    /**
     * With all that is wrong, in any order.
     *
     * @param file name of the file as the user knows it
     * @param problems at least one
     */
    public ScenarioException(String file, List<Problem> problems) {
        super(inOrder(problems).get(0).sentence(file));
        this.file = file;
        this.problems = inOrder(problems);
    }

    /** By line, what is missing last: a misspelt word may be what seems to be missing. */
    private static List<Problem> inOrder(List<Problem> problems) {
        return problems.stream()
                .sorted(Comparator.comparing(Problem::missing).thenComparingInt(Problem::line))
                .toList();
    }

    /** Name of the file as the user knows it. */
    public String file() {
        return file;
    }

    /** All that was found wrong: what stands in the file by line, then what is missing. */
    public List<Problem> problems() {
        return problems;
    }

    /** Every problem as a sentence with file, line and key, in the same order. */
    public List<String> sentences() {
        return problems.stream().map(problem -> problem.sentence(file)).toList();
    }
}
