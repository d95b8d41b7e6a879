package simmerpoint.viewer.app;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.Region;
import simmerpoint.safety.SafetyStudy;
import simmerpoint.scenario.Scenario;
import simmerpoint.viewer.build.BuildView;
import simmerpoint.viewer.comparison.ComparisonModel;
import simmerpoint.viewer.cook.CookView;
import simmerpoint.viewer.cook.TimePane;
import simmerpoint.viewer.light.LightChoice;
import simmerpoint.viewer.light.LightOverlay;
import simmerpoint.viewer.pan.PullControl;
import simmerpoint.viewer.pan.RibbonPane;
import simmerpoint.viewer.understand.LogsResult;
import simmerpoint.viewer.understand.UnderstandView;
import simmerpoint.viewer.workspace.Workspace;
import simmerpoint.viewer.yard.DocumentEdits;
import simmerpoint.viewer.yard.YardView;

/** The views of the window, each made when it is first seen. */
final class Views implements AutoCloseable {
    private final Workspace work;
    private final ComparisonModel beside;
    private final Consumer<LogsResult.Built> openBuilt;
    private final PullControl control;
    private final Map<View, Region> made = new EnumMap<>(View.class);
    private final LightChoice light = new LightChoice();
    private final LightOverlay overlay;
    private final YardView yard;
    private final TimePane time;
    private Optional<BuildView> build = Optional.empty();
    private Optional<UnderstandView> understand = Optional.empty();

    Views(Workspace work, ComparisonModel beside, Consumer<LogsResult.Built> openBuilt) {
        this.work = work;
        this.beside = beside;
        this.openBuilt = openBuilt;
        control = new PullControl(work.document(), work.live(), work.studies(), work.units());
        time = new TimePane(work);
        overlay = new LightOverlay(
                work.document().readProperty(), light, work.asked().withRays(SafetyStudy.USUAL_RAYS), work.delivery());
        ObservableValue<Scenario> scenario = Workspace.scenarioOf(work.document());
        yard = new YardView(
                scenario,
                work.live(),
                work.panels(),
                control.movingProperty(),
                work.units(),
                work.theme(),
                new DocumentEdits(work.document()),
                overlay);
    }

    /** The picture of the cooker. */
    YardView yard() {
        return yard;
    }

    /** A view. */
    Region of(View view) {
        return made.computeIfAbsent(view, this::make);
    }

    private Region make(View view) {
        return switch (view) {
            case COOK -> new CookView(yard, new RibbonPane(work, control), time);
            case BUILD -> build();
            case UNDERSTAND -> understand();
        };
    }

    /** The view for whoever builds. */
    BuildView build() {
        if (build.isEmpty()) {
            build = Optional.of(new BuildView(work, beside));
        }
        return build.get();
    }

    /** The view for whoever asks why. */
    UnderstandView understand() {
        if (understand.isEmpty()) {
            understand = Optional.of(new UnderstandView(work, control, light, openBuilt));
        }
        return understand.get();
    }

    /** Chooses a question of a view; nothing where it has none of that name. */
    void choose(View view, String question) {
        switch (view) {
            case COOK -> {
                // It has none.
            }
            case BUILD -> build().tabs().choose(question);
            case UNDERSTAND -> understand().tabs().choose(question);
        }
    }

    @Override
    public void close() {
        time.close();
        overlay.close();
        build.ifPresent(BuildView::close);
        understand.ifPresent(UnderstandView::close);
    }
}
