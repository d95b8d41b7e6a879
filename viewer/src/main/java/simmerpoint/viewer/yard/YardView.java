package simmerpoint.viewer.yard;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Point2D;
import javafx.scene.layout.Region;
import simmerpoint.drawing.cooker.SideScenes;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.light.RaySample;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.live.PanelEngine;
import simmerpoint.viewer.live.PanelState;
import simmerpoint.viewer.theme.Theme;

/**
 * The yard: the cooker from its side, with things to take hold of, and beside or below it the dish along its axis. Made and
 * used on the FX thread.
 */
public final class YardView extends Region implements AutoCloseable {
    private static final double BESIDE_FROM = 1.2;

    /** With less height the parts stand beside each other, however narrow, px. */
    private static final double TWO_HIGH = 460;

    private final ObservableValue<Scenario> scenario;
    private final ObservableValue<LiveState> live;
    private final ObservableValue<UnitSystem> units;
    private final ObservableValue<Theme> theme;
    private final SideScenes scenes = new SideScenes();
    private final SideSheet side;
    private final PanelView panels;
    private final PanelEngine engine;
    private final ExecutorService background = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "yard");
        thread.setDaemon(true);
        return thread;
    });
    private PanelState known;
    private boolean stale;

    /**
     * A yard.
     *
     * @param scenario what is shown; its value may be null only before the first
     * @param live why it cannot be, if it cannot; its value may be null
     * @param units in which lengths are told and typed
     * @param theme its colours
     * @param edits gets what hands do
     * @param options seed and threads of what is traced for it
     * @param delivery runs work on the FX thread
     */
    public YardView(
            ObservableValue<Scenario> scenario,
            ObservableValue<LiveState> live,
            ObservableValue<UnitSystem> units,
            ObservableValue<Theme> theme,
            YardEdits edits,
            TraceOptions options,
            Executor delivery) {
        this.scenario = scenario;
        this.live = live;
        this.units = units;
        this.theme = theme;
        side = new SideSheet(new Hand(edits));
        panels = new PanelView(background, delivery);
        engine = new PanelEngine(options, delivery, this::arrived);
        getStyleClass().add("yard");
        getChildren().addAll(side, panels);
        getStylesheets().add(YardView.class.getResource("yard.css").toExternalForm());
        scenario.addListener((value, before, now) -> ask(now));
        live.addListener((value, before, now) -> refused(before, now));
        units.addListener((value, before, now) -> show());
        theme.addListener((value, before, now) -> show());
        ask(scenario.getValue());
    }

    private void ask(Scenario now) {
        if (now != null) {
            engine.show(now);
            show();
        }
    }

    private void arrived(PanelState state) {
        known = state;
        show();
    }

    private void refused(LiveState before, LiveState now) {
        boolean news = before == null || now == null || !before.refusal().equals(now.refusal());
        if (news) {
            show();
        }
    }

    /** Why the scenario cannot be; only of the very scenario shown. */
    private Optional<String> refusal(Scenario now) {
        LiveState state = live.getValue();
        return state == null || !state.scenario().equals(now) ? Optional.empty() : state.refusal();
    }

    /** Draws with the next frame, once for all that changes until then. */
    private void show() {
        stale = true;
        requestLayout();
    }

    /** Whether the newest scenario is drawn with all that is known of it. */
    boolean drawn() {
        return !stale && known != null && known.scenario().equals(scenario.getValue());
    }

    private void draw() {
        stale = false;
        Scenario now = scenario.getValue();
        if (now == null) {
            return;
        }
        Optional<String> refusal = refusal(now);
        RaySample sample = known == null || refusal.isPresent() ? RaySample.NONE : known.sample();
        side.show(scenes.of(now, sample.paths(now), refusal, units.getValue()), units.getValue(), theme.getValue());
        Optional<String> note = refusal.isPresent()
                ? Optional.of("Nothing is told of the panels while this cannot stand.")
                : Optional.ofNullable(known).flatMap(PanelState::refusal);
        panels.show(now, known == null ? Optional.empty() : known.panels(), note, theme.getValue());
    }

    /** Middle of a handle in the coordinates of the scene, for scripted hands. */
    public Point2D handleInScene(Handle handle) {
        return side.handle(handle);
    }

    /** Pixels per metre of the side view as drawn now. */
    public double pixelsPerMetre() {
        return side.perMetre();
    }

    /** What is known of single panels now; null before the first. */
    public PanelState known() {
        return known;
    }

    @Override
    protected void layoutChildren() {
        double w = getWidth();
        double h = getHeight();
        if (w >= BESIDE_FROM * h || h < TWO_HIGH) {
            double wide = Math.round(Math.max(200, Math.min(0.35 * w, 0.95 * h)));
            side.resizeRelocate(0, 0, w - wide, h);
            panels.resizeRelocate(w - wide, 0, wide, h);
        } else {
            double high = Math.round(Math.max(180, Math.min(0.4 * h, 0.8 * w)));
            side.resizeRelocate(0, 0, w, h - high);
            panels.resizeRelocate(0, h - high, w, high);
        }
        if (stale) {
            draw();
        }
    }

    /** Stops all work behind it. */
    @Override
    public void close() {
        engine.close();
        background.shutdownNow();
    }
}
