package simmerpoint.viewer.yard;

import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Point2D;
import javafx.scene.layout.Region;
import simmerpoint.drawing.cooker.FieldDrawing;
import simmerpoint.drawing.cooker.SideScene;
import simmerpoint.drawing.cooker.SideScenes;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.light.RaySample;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.light.LightFound;
import simmerpoint.viewer.light.LightOverlay;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.live.PanelState;
import simmerpoint.viewer.theme.Theme;

/**
 * The yard: the cooker from its side, with things to take hold of. Made and used on the FX thread.
 */
public final class YardView extends Region {
    private final ObservableValue<Scenario> scenario;
    private final ObservableValue<LiveState> live;
    private final ObservableValue<PanelState> panels;
    private final ObservableValue<Boolean> held;
    private final ObservableValue<UnitSystem> units;
    private final ObservableValue<Theme> theme;
    private final SideScenes scenes = new SideScenes();
    private final LightOverlay overlay;
    private final SideSheet side;
    private boolean stale;

    /**
     * A yard.
     *
     * @param scenario what is shown; its value may be null only before the first
     * @param live why it cannot be, if it cannot; its value may be null
     * @param panels rays to draw; its value may be null
     * @param held whether somebody is moving something, here or elsewhere, so that the picture must stay
     * @param units in which lengths are told and typed
     * @param theme its colours
     * @param edits gets what hands do
     * @param overlay the light under the picture
     */
    public YardView(
            ObservableValue<Scenario> scenario,
            ObservableValue<LiveState> live,
            ObservableValue<PanelState> panels,
            ObservableValue<Boolean> held,
            ObservableValue<UnitSystem> units,
            ObservableValue<Theme> theme,
            YardEdits edits,
            LightOverlay overlay) {
        this.scenario = scenario;
        this.live = live;
        this.panels = panels;
        this.held = held;
        this.units = units;
        this.theme = theme;
        this.overlay = overlay;
        LightLayer layer = new LightLayer(overlay);
        side = new SideSheet(new Hand(edits), layer);
        getStyleClass().add("yard");
        getChildren().add(side);
        getStylesheets().add(YardView.class.getResource("yard.css").toExternalForm());
        scenario.addListener((value, before, now) -> show());
        panels.addListener((value, before, now) -> sampled(before, now));
        held.addListener((value, before, now) -> show());
        live.addListener((value, before, now) -> refused(before, now));
        units.addListener((value, before, now) -> show());
        theme.addListener((value, before, now) -> show());
        overlay.shownProperty().addListener((value, before, now) -> show());
        overlay.wordsProperty().addListener((value, before, now) -> show());
        overlay.choice().panTakenProperty().addListener((value, before, now) -> show());
        overlay.choice().personProperty().addListener((value, before, now) -> layer.repaint());
        sceneProperty().addListener((value, before, now) -> overlay.look(now != null));
        show();
    }

    /** Watts of panels are not seen here, other rays are. */
    private void sampled(PanelState before, PanelState now) {
        if (before == null || now == null || before.sample() != now.sample()) {
            show();
        }
    }

    private void refused(LiveState before, LiveState now) {
        boolean news = before == null || now == null || !before.refusal().equals(now.refusal());
        if (news) {
            show();
        }
    }

    /** Why a scenario cannot be; only of the very scenario shown. */
    static Optional<String> refusal(LiveState state, Scenario now) {
        return state == null || !state.scenario().equals(now) ? Optional.empty() : state.refusal();
    }

    /** Draws with the next frame, once for all that changes until then. */
    private void show() {
        stale = true;
        requestLayout();
    }

    /** Whether the newest scenario is drawn with all that is known of it. */
    boolean drawn() {
        PanelState known = panels.getValue();
        return !stale && known != null && known.scenario().equals(scenario.getValue());
    }

    private void draw() {
        stale = false;
        Scenario now = scenario.getValue();
        if (now == null) {
            return;
        }
        PanelState known = panels.getValue();
        Optional<String> refusal = refusal(live.getValue(), now);
        Optional<LightFound> light = refusal.isPresent()
                ? Optional.empty()
                : overlay.shownProperty().get().filter(found -> found.scenario().equals(now));
        RaySample sample = known == null || refusal.isPresent() ? RaySample.NONE : known.sample();
        side.show(
                light.map(this::lit).orElseGet(() -> scenes.of(now, sample.paths(now), refusal, units.getValue())),
                units.getValue(),
                theme.getValue(),
                held.getValue());
    }

    private SideScene lit(LightFound light) {
        boolean panTaken = overlay.choice().panTakenProperty().get();
        Scenario seen = FieldDrawing.seen(light.risks(panTaken).light());
        return scenes.of(seen, List.of(), Optional.empty(), units.getValue()).lit(LightLayer.ends(light, panTaken));
    }

    /** Middle of a handle in the coordinates of the scene, for scripted hands. */
    public Point2D handleInScene(Handle handle) {
        return side.handle(handle);
    }

    /** Pixels per metre as drawn now; 0 before the first drawing. */
    public double pixelsPerMetre() {
        return side.perMetre();
    }

    @Override
    protected void layoutChildren() {
        side.resizeRelocate(0, 0, getWidth(), getHeight());
        if (stale) {
            draw();
        }
    }
}
