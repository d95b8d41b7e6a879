package simmerpoint.viewer.comparison;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.variants.Variant;
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
    private final ObservableList<KeptDesign> shelf = FXCollections.observableArrayList();
    private final Map<KeptDesign, TraceResult> results = new HashMap<>();
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

    /** All kept designs, in the order in which they were kept. */
    ObservableList<KeptDesign> kept() {
        return FXCollections.unmodifiableObservableList(shelf);
    }

    private void arrived(PairState newest) {
        pair = newest;
        show(state.get().kept());
    }

    /** Asks for the pair once the current answer is finished. */
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

    /** Keeps the document's scenario beside those kept before, and holds it against what becomes of it. */
    public void keep() {
        if (canKeep()) {
            KeptDesign now = KeptDesign.of(document);
            if (!shelf.contains(now)) {
                shelf.add(now);
            }
            put(now, live.getValue().result());
        }
    }

    /** Holds one of the kept designs against the document. */
    void choose(KeptDesign design) {
        put(design, Optional.ofNullable(results.get(design)));
    }

    private void put(KeptDesign kept, Optional<TraceResult> result) {
        result.ifPresent(known -> results.put(kept, known));
        state.set(new ComparisonState(
                Optional.of(kept),
                result,
                Optional.of(KeptDesign.of(document)),
                Optional.ofNullable(live.getValue()),
                pair));
        follow();
    }

    /** Lets go of the kept design that is held against the document; the one kept before it takes its place. */
    public void drop() {
        state.get().kept().ifPresent(design -> {
            shelf.remove(design);
            results.remove(design);
        });
        if (shelf.isEmpty()) {
            show(Optional.empty());
            engine.stop();
        } else {
            choose(shelf.get(shelf.size() - 1));
        }
    }

    /** The kept designs and the document's, under those names, as they are compared. */
    List<Variant> variants(Function<KeptDesign, String> names) {
        List<Variant> all = new ArrayList<>();
        shelf.forEach(design -> all.add(design.variant(names.apply(design))));
        KeptDesign now = KeptDesign.of(document);
        if (!shelf.contains(now)) {
            all.add(now.variant("the current design"));
        }
        return all;
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
            shelf.set(shelf.indexOf(kept), other);
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
