package simmerpoint.viewer.yard;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.Region;
import simmerpoint.scenario.Scenario;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.live.PanelState;
import simmerpoint.viewer.theme.Theme;

/** The dish seen from the sun's side, its panels by what lands of their light. Follows what it is given. */
public final class PanelsPane extends Region implements AutoCloseable {
    private final ObservableValue<Scenario> scenario;
    private final ObservableValue<LiveState> live;
    private final ObservableValue<PanelState> panels;
    private final ObservableValue<Theme> theme;
    private final PanelView view;
    private final ExecutorService background = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "panel picture");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * A pane.
     *
     * @param scenario what is shown
     * @param live why it cannot be, if it cannot; its value may be null
     * @param panels figures panel by panel; its value may be null
     * @param theme its colours
     * @param delivery runs work on the FX thread
     */
    public PanelsPane(
            ObservableValue<Scenario> scenario,
            ObservableValue<LiveState> live,
            ObservableValue<PanelState> panels,
            ObservableValue<Theme> theme,
            Executor delivery) {
        this.scenario = scenario;
        this.live = live;
        this.panels = panels;
        this.theme = theme;
        view = new PanelView(background, delivery);
        getStyleClass().add("yard");
        getStylesheets().add(PanelsPane.class.getResource("yard.css").toExternalForm());
        getChildren().add(view);
        scenario.addListener((value, before, now) -> show());
        live.addListener((value, before, now) -> refused(before, now));
        panels.addListener((value, before, now) -> show());
        theme.addListener((value, before, now) -> show());
        show();
    }

    private void refused(LiveState before, LiveState now) {
        Scenario shown = scenario.getValue();
        if (shown != null && !YardView.refusal(before, shown).equals(YardView.refusal(now, shown))) {
            show();
        }
    }

    private void show() {
        Scenario now = scenario.getValue();
        if (now == null) {
            return;
        }
        PanelState known = panels.getValue();
        Optional<String> note = YardView.refusal(live.getValue(), now).isPresent()
                ? Optional.of("There are no figures for panels: the pan cannot stand here.")
                : Optional.ofNullable(known).flatMap(PanelState::refusal);
        view.show(now, known == null ? Optional.empty() : known.panels(), note, theme.getValue());
    }

    /** Whether everything shown is drawn. */
    boolean drawn() {
        return view.drawn();
    }

    @Override
    protected void layoutChildren() {
        view.resizeRelocate(0, 0, getWidth(), getHeight());
    }

    @Override
    public void close() {
        background.shutdownNow();
    }
}
