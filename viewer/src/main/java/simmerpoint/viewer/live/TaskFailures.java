package simmerpoint.viewer.live;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import simmerpoint.study.trace.ImpossibleSetupException;

/** Turns failures of a task into a sentence for the user; unexpected exceptions are logged. */
final class TaskFailures {
    private static final Logger LOG = System.getLogger(TaskFailures.class.getName());

    private TaskFailures() {}

    /** Runs {@code work} and returns a sentence if it fails, except if it is cancelled. */
    static Optional<String> run(Runnable work) {
        try {
            work.run();
            return Optional.empty();
        } catch (CancellationException e) {
            throw e;
        } catch (ImpossibleSetupException e) {
            String text = e.getMessage();
            return Optional.of(text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".");
        } catch (OutOfMemoryError e) {
            return Optional.of("There is not enough memory for this dish.");
        } catch (RuntimeException e) {
            LOG.log(Level.ERROR, "an answer failed", e);
            return Optional.of("Something went wrong inside the program ("
                    + e.getClass().getSimpleName() + ": " + e.getMessage() + "); please report it with the scenario.");
        }
    }
}
