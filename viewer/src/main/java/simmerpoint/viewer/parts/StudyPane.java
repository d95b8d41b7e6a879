package simmerpoint.viewer.parts;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.dialog.FileKind;
import simmerpoint.viewer.dialog.TakeAwayMenu;
import simmerpoint.viewer.live.OnDemandStudy;
import simmerpoint.viewer.live.StudyRun;
import simmerpoint.viewer.workspace.Workspace;

/**
 * A study with what it needs to be asked: a button that starts and stops it, its progress, its result, and a menu to take that
 * away. A study that takes a second or two starts by itself while it is seen.
 *
 * @param <R> what the study finds
 */
public final class StudyPane<R> extends VBox {
    private static final double PROGRESS = 120;

    private final Workspace work;
    private final OnDemandStudy<R> study;
    private final BiFunction<R, UnitSystem, Node> shown;
    private final String id;
    private final Button start = new Button();
    private final ProgressBar progress = new ProgressBar(0);
    private final Label lead = new Label();
    private final HBox head = new HBox(8, lead, progress, start);
    private final ScrollPane room = new ScrollPane();
    private final String before;
    private boolean automatic;
    private BooleanSupplier ready = () -> true;
    private Optional<TakeAwayMenu> menu = Optional.empty();

    /**
     * A pane.
     *
     * @param id of the pane; ids of what is in it begin with it
     * @param before what is said before anything was asked
     * @param work what is worked on
     * @param study what is asked
     * @param shown makes a picture of a result
     */
    public StudyPane(
            String id, String before, Workspace work, OnDemandStudy<R> study, BiFunction<R, UnitSystem, Node> shown) {
        this.id = id;
        this.before = before;
        this.work = work;
        this.study = study;
        this.shown = shown;
        setId(id);
        getStyleClass().add("study-pane");
        lead.setId(id + "-lead");
        lead.getStyleClass().add("study-lead");
        lead.setWrapText(true);
        lead.setMinHeight(Region.USE_PREF_SIZE);
        lead.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(lead, Priority.ALWAYS);
        progress.setId(id + "-progress");
        progress.getStyleClass().add("thin");
        progress.setMinWidth(PROGRESS / 2);
        progress.setPrefWidth(PROGRESS);
        start.setId(id + "-start");
        start.setMinWidth(Region.USE_PREF_SIZE);
        start.setOnAction(e -> press());
        head.setAlignment(Pos.CENTER_LEFT);
        room.setId(id + "-room");
        room.setFitToWidth(true);
        room.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        room.setFocusTraversable(true);
        room.setMinSize(0, 0);
        VBox.setVgrow(room, Priority.ALWAYS);
        getChildren().addAll(head, room);
        study.stateProperty().addListener((value, old, now) -> show(old));
        work.units().addListener((value, old, now) -> {
            fill();
            follow();
        });
        work.theme().addListener((value, old, now) -> fill());
        work.document().readProperty().addListener((value, old, now) -> follow());
        sceneProperty().addListener((value, old, now) -> follow());
        tell();
        fill();
    }

    /** It starts by itself while it is seen, after every change. */
    public StudyPane<R> automatic() {
        automatic = true;
        follow();
        return this;
    }

    /** It can be started by its button only while that holds, which is asked at every change of the study. */
    public StudyPane<R> needing(BooleanSupplier condition) {
        ready = condition;
        tell();
        return this;
    }

    /** The result fills the height there is, and scrolls by itself. */
    public StudyPane<R> filling() {
        room.setFitToHeight(true);
        room.setFocusTraversable(false);
        return this;
    }

    /** The result can be taken away under that name, as picture, table and figures. */
    public StudyPane<R> takenAway(String name, BiFunction<R, UnitSystem, ResultFiles> files) {
        return takenAway(entries -> {
            entries.add("As a picture", FileKind.PICTURE, name, () -> files(files));
            entries.add("As a table", FileKind.TABLE, name, () -> files(files));
            entries.add("As figures", FileKind.FIGURES, name, () -> files(files));
        });
    }

    /** The result can be taken away by entries that are added to its menu here. */
    public StudyPane<R> takenAway(Consumer<TakeAwayMenu> filled) {
        if (menu.isEmpty()) {
            menu = Optional.of(new TakeAwayMenu(id + "-take-away", "Take this away as a file", work.export()));
            menu.get().setMinWidth(Region.USE_PREF_SIZE);
            head.getChildren().add(menu.get());
        }
        filled.accept(menu.get());
        return this;
    }

    /** Puts something to be filled in beside the button that starts. */
    public StudyPane<R> asked(Node... nodes) {
        HBox row = new HBox(8, nodes);
        row.setAlignment(Pos.CENTER_LEFT);
        getChildren().add(0, row);
        return this;
    }

    private Optional<Callable<ResultFiles>> files(BiFunction<R, UnitSystem, ResultFiles> files) {
        UnitSystem units = work.units().getValue();
        return current().map(result -> () -> files.apply(result, units));
    }

    /** The result of the scenario in force. */
    public Optional<R> current() {
        StudyRun<R> now = study.stateProperty().get();
        return now.hasResultOf(read()) ? now.result() : Optional.empty();
    }

    private CheckedScenario read() {
        return work.document().readProperty().get();
    }

    private void press() {
        if (study.stateProperty().get().working()) {
            study.stop();
        } else {
            study.startAnew(read());
        }
    }

    private void follow() {
        StudyRun<R> now = study.stateProperty().get();
        if (getScene() == null || (now.working() && !now.isOf(read()))) {
            study.stop();
        }
        if (automatic && getScene() != null) {
            study.start(read());
        }
        tell();
    }

    private void show(StudyRun<R> old) {
        if (!old.result().equals(study.stateProperty().get().result())) {
            fill();
        }
        tell();
    }

    private void tell() {
        StudyRun<R> now = study.stateProperty().get();
        boolean current = now.hasResultOf(read());
        boolean old = now.result().isPresent() && !current;
        start.setText(now.working() ? "Stop" : "Work it out");
        String meaning = now.working() ? "Stop this" : "Work this out for the design as it is now";
        start.setTooltip(new Tooltip(meaning));
        start.setAccessibleText(meaning);
        start.setVisible(now.working() || !(current || automatic || !ready.getAsBoolean()));
        start.setManaged(start.isVisible());
        progress.setVisible(now.working());
        progress.setManaged(now.working());
        progress.setProgress(now.done());
        progress.setAccessibleText("Progress: " + now.detail());
        lead.setText(words(now, old));
        room.setOpacity(old ? 0.55 : 1);
    }

    private String words(StudyRun<R> now, boolean old) {
        if (now.refusal().isPresent()) {
            return now.refusal().get();
        }
        if (now.working()) {
            return "Being worked out\u2026 " + now.detail();
        }
        return old ? "This is for the design before its last change." : before;
    }

    private void fill() {
        StudyRun<R> now = study.stateProperty().get();
        if (now.result().isPresent()) {
            room.setContent(shown.apply(now.result().get(), work.units().getValue()));
        } else if (!automatic) {
            room.setContent(null);
        }
    }
}
