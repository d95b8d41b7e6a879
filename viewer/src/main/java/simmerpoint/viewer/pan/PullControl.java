package simmerpoint.viewer.pan;

import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.live.StudyState;

/**
 * The pan's pull-back to be changed: by hand, by keys, or playing back and forth. Whatever is done in one go is undone
 * in one step. It never plays by itself, and stops as soon as anything else is changed.
 */
public final class PullControl {
    private static final String KEY = "stand.pull-back";

    /** So long a place waits for its light before the next one is played, s. */
    private static final double PATIENCE = 0.25;

    private final ScenarioDocument document;
    private final ObservableValue<LiveState> live;
    private final ObservableValue<StudyState> studies;
    private final ObservableValue<UnitSystem> units;
    private final ReadOnlyObjectWrapper<PullState> state = new ReadOnlyObjectWrapper<>(this, "state");
    private final ReadOnlyBooleanWrapper playing = new ReadOnlyBooleanWrapper(this, "playing");
    private Optional<PlayClock> clock = Optional.empty();
    private double playedAt;
    private double last;
    private boolean own;
    private final ReadOnlyBooleanWrapper held = new ReadOnlyBooleanWrapper(this, "held");

    /** Follows the document, its results and the units. */
    public PullControl(
            ScenarioDocument document,
            ObservableValue<LiveState> live,
            ObservableValue<StudyState> studies,
            ObservableValue<UnitSystem> units) {
        this.document = document;
        this.live = live;
        this.studies = studies;
        this.units = units;
        studies.addListener((value, before, now) -> follow());
        document.readProperty().addListener((value, before, now) -> changed());
        follow();
    }

    private void changed() {
        if (!own) {
            stop();
        }
        follow();
    }

    private void follow() {
        state.set(PullState.next(
                Optional.ofNullable(state.get()),
                document.readProperty().get().scenario(),
                studies.getValue(),
                held.get() || playing.get()));
    }

    ReadOnlyObjectProperty<PullState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    ReadOnlyBooleanProperty playingProperty() {
        return playing.getReadOnlyProperty();
    }

    /** Whether somebody has the pan in hand, or it plays. */
    public ObservableValue<Boolean> movingProperty() {
        return held.or(playing);
    }

    PullWords words() {
        return new PullWords(units.getValue());
    }

    /** Somebody takes the pan in hand. */
    void take() {
        stop();
        if (!held.get()) {
            held.set(true);
            document.beginGesture();
        }
    }

    /** And lets go of it. */
    void letGo() {
        if (held.get()) {
            held.set(false);
            document.endGesture();
            follow();
        }
    }

    /** Pulls the pan to a place, m from the focus, as near as the way shown reaches. */
    void pullTo(double metres) {
        PullState now = state.get();
        double inside = Math.max(now.lowMetres(), Math.min(now.highMetres(), metres));
        PullWords words = words();
        if (words.snapped(inside) == words.snapped(now.presentMetres())) {
            return;
        }
        own = true;
        try {
            document.change(Map.of(KEY, words.typed(inside)));
        } finally {
            own = false;
        }
    }

    /** Moves it by so many steps of the keys. */
    void step(int steps, boolean large) {
        PullWords words = words();
        pullTo(state.get().presentMetres() + steps * (large ? words.large() : words.small()));
    }

    /** Begins to play at a time, s. */
    void play(double seconds) {
        letGo();
        PullState now = state.get();
        clock = Optional.of(new PlayClock(now.lowMetres(), now.highMetres(), now.presentMetres()));
        playedAt = 0;
        last = seconds;
        document.beginGesture();
        playing.set(true);
    }

    /** The next frame. A place whose light is still on its way is waited for, and the way goes on from there. */
    void frame(double seconds) {
        if (clock.isEmpty()) {
            return;
        }
        boolean arrived = live.getValue() == null || live.getValue().current();
        if (arrived || seconds - last > PATIENCE) {
            playedAt += Math.min(seconds - last, PATIENCE);
            last = seconds;
            pullTo(clock.get().at(playedAt));
        }
    }

    /** Stops playing; the pan stays where it is. */
    void stop() {
        if (clock.isPresent()) {
            clock = Optional.empty();
            playing.set(false);
            document.endGesture();
            follow();
        }
    }

    /** Plays or stops. */
    void toggle(double seconds) {
        if (playing.get()) {
            stop();
        } else {
            play(seconds);
        }
    }
}
