package simmerpoint.fuzz;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * Tries many cases, each made from its own seed. What fails is made smaller and kept as a file.
 *
 * @param <T> what is broken at random
 */
public final class Fuzz<T> {
    private static final int TRIES = Integer.getInteger("fuzz.tries", 150);
    private static final long FIRST_SEED = Long.getLong("fuzz.seed", 1);
    private static final Path KEPT = Path.of("target", "fuzz");
    private static final double PATIENCE_SECONDS = 20;

    private final String file;
    private final Check<T> check;
    private final Function<T, String> text;

    /**
     * A test.
     *
     * @param file name of the file that a failing case is kept in
     * @param check fails with any throwable
     * @param text what to keep of a case
     */
    public Fuzz(String file, Check<T> check, Function<T, String> text) {
        this.file = file;
        this.check = check;
        this.text = text;
    }

    /** What must not fail. */
    public interface Check<T> {
        void accept(T input) throws Exception;
    }

    /**
     * One case.
     *
     * @param start something good
     * @param edits what is done to it, in this order
     * @param <T> what is broken
     */
    public record Case<T>(T start, List<UnaryOperator<T>> edits) {
        T input() {
            T input = start;
            for (UnaryOperator<T> edit : edits) {
                input = edit.apply(input);
            }
            return input;
        }

        Case<T> without(int edit) {
            List<UnaryOperator<T>> fewer = new ArrayList<>(edits);
            fewer.remove(edit);
            return new Case<>(start, fewer);
        }
    }

    /** Runs the cases of {@code tries} seeds, the usual number multiplied by {@code share}. */
    public void run(double share, Function<SplittableRandom, Case<T>> cases) {
        for (long seed = FIRST_SEED; seed < FIRST_SEED + Math.max(1, Math.round(TRIES * share)); seed++) {
            Case<T> tried = cases.apply(new SplittableRandom(seed));
            if (failure(tried).isPresent()) {
                report(seed, smaller(tried));
            }
        }
    }

    private Optional<Throwable> failure(Case<T> tried) {
        long start = System.nanoTime();
        try {
            check.accept(tried.input());
        } catch (Exception | AssertionError | StackOverflowError e) {
            return Optional.of(e);
        }
        double seconds = (System.nanoTime() - start) * 1e-9;
        return seconds > PATIENCE_SECONDS
                ? Optional.of(new AssertionError("took " + Math.round(seconds) + " s"))
                : Optional.empty();
    }

    /** Leaves out one edit after the other as long as it still fails. */
    private Case<T> smaller(Case<T> failing) {
        for (int edit = 0; edit < failing.edits().size(); edit++) {
            Case<T> fewer = failing.without(edit);
            if (failure(fewer).isPresent()) {
                return smaller(fewer);
            }
        }
        return failing;
    }

    private void report(long seed, Case<T> failing) {
        Path kept = KEPT.resolve(seed + "-" + file);
        try {
            Files.createDirectories(KEPT);
            Files.writeString(kept, text.apply(failing.input()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Throwable why = failure(failing).orElseThrow();
        fail("seed " + seed + ", kept in " + kept + ": " + why, why);
    }
}
