package simmerpoint.viewer.live;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import simmerpoint.input.InputFileException;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.trace.Progress;
import simmerpoint.workshop.CuttingException;

/**
 * A study that runs when it is asked for, on a thread of its own, and can be stopped. A newer question cancels the older one.
 * All calls and changes of its state are on the thread of the executor.
 *
 * @param <R> what it finds
 */
public final class OnDemandStudy<R> implements AutoCloseable {
    /**
     * The work itself.
     *
     * @param <R> what it finds
     */
    public interface Work<R> {
        /** Finds it; asks {@code progress} whether to go on. */
        R run(CheckedScenario read, Progress progress) throws ScenarioException, CuttingException, InputFileException;
    }

    private final Work<R> work;
    private final LatestTaskExecutor executor;
    private final LatestValueDelivery<Runnable> out;
    private final ReadOnlyObjectWrapper<StudyRun<R>> state = new ReadOnlyObjectWrapper<>(StudyRun.nothingYet());
    private Optional<Task> latest = Optional.empty();

    /**
     * An idle study.
     *
     * @param name of its thread
     * @param pauseMillis so long without a newer question it waits before it begins
     * @param delivery runs work on the thread of the property
     * @param work what is done
     */
    public OnDemandStudy(String name, long pauseMillis, Executor delivery, Work<R> work) {
        this.work = work;
        executor = new LatestTaskExecutor(name, pauseMillis);
        out = new LatestValueDelivery<>(delivery, Runnable::run);
    }

    /** How far it has come; never null. */
    public ReadOnlyObjectProperty<StudyRun<R>> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** What an earlier task found may arrive late. */
    private void arrived(Task from, StudyRun<R> next) {
        if (state.get().working() && latest.filter(task -> task == from).isPresent()) {
            state.set(next);
        }
    }

    /** Begins, unless the same question is being worked on or has had its answer. */
    public void start(CheckedScenario read) {
        if (!state.get().isOf(read)) {
            startAnew(read);
        }
    }

    /** Begins in any case: somebody asks, and more than the scenario may have changed since, such as a file. */
    public void startAnew(CheckedScenario read) {
        StudyRun<R> begun = state.get().begun(read);
        Task task = new Task(begun);
        latest = Optional.of(task);
        state.set(begun);
        executor.submit(task);
    }

    /** Stops; what was found before stays. */
    public void stop() {
        executor.cancel();
        if (state.get().working()) {
            state.set(state.get().ended(Optional.empty()));
        }
    }

    /** Stops, and forgets what was found. */
    public void forget() {
        executor.cancel();
        state.set(StudyRun.nothingYet());
    }

    @Override
    public void close() {
        executor.close();
    }

    private final class Task implements LatestTaskExecutor.Task {
        private final StudyRun<R> begun;

        Task(StudyRun<R> begun) {
            this.begun = begun;
        }

        @Override
        public void runFirst() {
            // All of it may be interrupted.
        }

        @Override
        public void runRest() {
            Optional<String> why = TaskFailures.run(this::find);
            why.ifPresent(words -> tell(begun.ended(Optional.of(words))));
        }

        private void find() {
            try {
                R found = work.run(begun.of().orElseThrow(), this::report);
                tell(begun.found(found));
            } catch (ScenarioException | InputFileException e) {
                tell(begun.ended(Optional.of(e.getMessage())));
            } catch (CuttingException e) {
                tell(begun.ended(Optional.of(e.sentence())));
            }
        }

        private boolean report(double share, String detail) {
            tell(begun.at(share, detail));
            return executor.shouldContinue();
        }

        private void tell(StudyRun<R> next) {
            if (!executor.shouldContinue()) {
                throw new CancellationException();
            }
            out.deliver(() -> arrived(this, next));
        }
    }
}
