package simmerpoint.viewer.app;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * The last resort of every thread of the window: whatever nobody else caught is told in one sentence, and the design stays
 * as it was.
 */
final class UncaughtFailures implements Thread.UncaughtExceptionHandler {
    private static final Logger LOG = System.getLogger(UncaughtFailures.class.getName());

    private final Executor fx;
    private final Consumer<String> tell;

    /**
     * For one window.
     *
     * @param fx where {@code tell} is called
     * @param tell gets one sentence
     */
    UncaughtFailures(Executor fx, Consumer<String> tell) {
        this.fx = fx;
        this.tell = tell;
    }

    @Override
    public void uncaughtException(Thread thread, Throwable failure) {
        LOG.log(Level.ERROR, "on thread " + thread.getName(), failure);
        fx.execute(() -> tell.accept(sentence(failure)));
    }

    private static String sentence(Throwable failure) {
        return failure instanceof OutOfMemoryError
                ? "There is not enough memory for this; close other programs."
                : "Something went wrong inside the program ("
                        + failure.getClass().getSimpleName()
                        + "). Your design is as it was; save it, and please report what you did last.";
    }
}
