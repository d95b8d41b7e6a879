package simmerpoint.viewer.comparison;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.compare.Comparison;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.live.PairEngine;
import simmerpoint.viewer.live.PairState;

/**
 * Comparison of the kept design with the document. Changes of the document from here can be undone there.
 */
public final class ComparisonModel implements AutoCloseable {
    private final ScenarioDocument document;
    private final ObservableValue<LiveState> live;
    private final TraceOptions asked;
    private final PairEngine engine;
    private final ReadOnlyObjectWrapper<ComparisonState> state =
            new ReadOnlyObjectWrapper<>(this, "state", ComparisonState.NOTHING_KEPT);
    private PairState pair = PairState.NOTHING_YET;

    /**
     * With nothing kept.
     *
     * @param document what lies there is kept and compared
     * @param live its quick answers
     * @param asked how pairs are traced
     * @param delivery the thread of the window
     */
    public ComparisonModel(
            ScenarioDocument document, ObservableValue<LiveState> live, TraceOptions asked, Executor delivery) {
        this.document = document;
        this.live = live;
        this.asked = asked;
        engine = new PairEngine(asked, delivery, this::arrived);
        live.addListener((value, before, now) -> follow());
        document.readProperty().addListener((value, before, now) -> follow());
    }

    /** What is seen; never null. */
    public ReadOnlyObjectProperty<ComparisonState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    private void arrived(PairState newest) {
        pair = newest;
        show(state.get().kept());
    }

    /** Asks for the pair once the answer at hand is finished. */
    private void follow() {
        LiveState now = live.getValue();
        Optional<KeptDesign> kept = state.get().kept();
        if (kept.isPresent() && now != null && now.settled() && now.refusal().isEmpty()) {
            Scenario first = kept.get().read().scenario();
            if (!pair.isOf(first, now.scenario())) {
                engine.pair(first, now.scenario());
            }
        } else {
            engine.stop();
        }
        show(kept);
    }

    private void show(Optional<KeptDesign> kept) {
        LiveState now = live.getValue();
        Optional<TraceResult> old = state.get().keptResult();
        state.set(
                kept.isEmpty()
                        ? ComparisonState.NOTHING_KEPT
                        : new ComparisonState(
                                kept, old, Optional.of(KeptDesign.of(document)), Optional.ofNullable(now), pair));
    }

    /** Whether the document can be kept: it has been traced. */
    public boolean canKeep() {
        return live.getValue() != null && live.getValue().current();
    }

    /** Keeps the document's scenario instead of the one kept before. */
    public void keep() {
        if (canKeep()) {
            put(KeptDesign.of(document), live.getValue().result());
        }
    }

    private void put(KeptDesign kept, Optional<TraceResult> result) {
        state.set(new ComparisonState(
                Optional.of(kept),
                result,
                Optional.of(KeptDesign.of(document)),
                Optional.ofNullable(live.getValue()),
                pair));
        follow();
    }

    /** Lets go of what is kept. */
    public void drop() {
        show(Optional.empty());
        engine.stop();
    }

    /** Opens the kept design in the document; it stays kept. */
    public void goBack() {
        state.get().kept().ifPresent(this::lay);
    }

    /** Swaps the kept design and the document's scenario. */
    public void swap() {
        state.get().kept().ifPresent(kept -> {
            KeptDesign other = KeptDesign.of(document);
            LiveState now = live.getValue();
            Optional<TraceResult> result = now != null && now.current() ? now.result() : Optional.empty();
            put(other, result);
            lay(kept);
        });
    }

    private void lay(KeptDesign kept) {
        document.apply(kept.from(document.state().given(), document.folder()));
    }

    /**
     * What makes the whole comparison that the command line makes of such a pair, away from this thread: it traces both anew
     * and how far each may be off the sun. Empty while the two are not paired.
     */
    Optional<Supplier<Comparison>> comparison() {
        return state.get().figures().map(figures -> () -> figures.comparison(asked));
    }

    @Override
    public void close() {
        engine.close();
    }
}
