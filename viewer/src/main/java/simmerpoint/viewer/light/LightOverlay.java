package simmerpoint.viewer.light;

import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import simmerpoint.safety.SafetyStudy;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.viewer.live.OnDemandStudy;
import simmerpoint.viewer.live.StudyRun;

/** The light for the side view: worked out while it is chosen and seen, anew after every change of the design. */
public final class LightOverlay implements AutoCloseable {
    /** Some seconds of work, so hands come to rest first. */
    private static final long PAUSE_MILLIS = 400;

    private final ObservableValue<CheckedScenario> read;
    private final LightChoice choice;
    private final OnDemandStudy<LightFound> study;
    private final ReadOnlyObjectWrapper<Optional<LightFound>> shown =
            new ReadOnlyObjectWrapper<>(this, "shown", Optional.empty());
    private final ReadOnlyObjectWrapper<String> words = new ReadOnlyObjectWrapper<>(this, "words", "");
    private boolean seen;

    /**
     * Of the scenario in force.
     *
     * @param read the scenario
     * @param choice whether the light is wanted
     * @param options how it is cast
     * @param delivery runs work on the thread of the window
     */
    public LightOverlay(
            ObservableValue<CheckedScenario> read, LightChoice choice, TraceOptions options, Executor delivery) {
        this.read = read;
        this.choice = choice;
        study = new OnDemandStudy<>("light", PAUSE_MILLIS, delivery, (now, progress) -> {
            now.atOneMoment();
            return LightFound.of(SafetyStudy.light(now.scenario(), options, progress));
        });
        read.addListener((value, before, now) -> follow());
        choice.onYardProperty().addListener((value, before, now) -> follow());
        study.stateProperty().addListener((value, before, now) -> tell());
    }

    /** The scenario in force. */
    public Scenario scenario() {
        return read.getValue().scenario();
    }

    /** What is chosen. */
    public LightChoice choice() {
        return choice;
    }

    /** The light to show; empty if none is wanted, or none is known of the scenario in force. */
    public ReadOnlyObjectProperty<Optional<LightFound>> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** Why none is shown though it is wanted; else empty. */
    public ReadOnlyObjectProperty<String> wordsProperty() {
        return words.getReadOnlyProperty();
    }

    /** Says whether anybody looks. */
    public void look(boolean now) {
        seen = now;
        follow();
    }

    private void follow() {
        if (seen && choice.onYardProperty().get()) {
            study.start(read.getValue());
        } else {
            study.stop();
        }
        tell();
    }

    private void tell() {
        StudyRun<LightFound> now = study.stateProperty().get();
        boolean wanted = choice.onYardProperty().get();
        boolean known = now.hasResultOf(read.getValue());
        shown.set(wanted && known ? now.result() : Optional.empty());
        words.set(
                !wanted || known
                        ? ""
                        : now.refusal().orElse(now.working() ? "The light is being worked out\u2026" : ""));
    }

    @Override
    public void close() {
        study.close();
    }
}
