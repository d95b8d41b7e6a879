package simmerpoint.viewer.pan;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import simmerpoint.viewer.workspace.Workspace;

/** The ribbon of the pan's places, a button that plays, and what the ribbon says in words. */
public final class RibbonPane extends VBox {
    private final Workspace work;
    private final PullControl control;
    private final PlaceRibbon ribbon;
    private final Label sentence = new SteadyLabel(RibbonState.LONGEST);
    private final ProgressBar progress = new ProgressBar(0);
    private Optional<Double> pointed = Optional.empty();

    /** Follows what is worked on. */
    public RibbonPane(Workspace work, PullControl control) {
        this.work = work;
        this.control = control;
        ribbon = new PlaceRibbon("place-ribbon", control, this::point);
        getStyleClass().add("ribbon-pane");
        getStylesheets().add(RibbonPane.class.getResource("pan.css").toExternalForm());
        sentence.setId("ribbon-sentence");
        sentence.getStyleClass().add("ribbon-words");
        sentence.setAlignment(Pos.TOP_LEFT);
        sentence.setMinHeight(Region.USE_PREF_SIZE);
        sentence.setMaxWidth(Double.MAX_VALUE);
        progress.setId("ribbon-progress");
        progress.getStyleClass().add("thin");
        progress.setMaxWidth(Double.MAX_VALUE);
        progress.setAccessibleText("How far the ribbon has come");
        HBox.setHgrow(sentence, Priority.ALWAYS);
        HBox foot = new HBox(10, new PlayButton(control), sentence);
        foot.setAlignment(Pos.TOP_LEFT);
        getChildren().addAll(ribbon, progress, foot);
        control.stateProperty().addListener((value, before, now) -> show());
        work.units().addListener((value, before, now) -> show());
        work.theme().addListener((value, before, now) -> ribbon.applyTheme(now));
        ribbon.applyTheme(work.theme().getValue());
        show();
    }

    private void point(Optional<Double> place) {
        pointed = place;
        show();
    }

    private void show() {
        PullState pull = control.stateProperty().get();
        RibbonState state = new RibbonState(pull, pointed, work.units().getValue());
        ribbon.show(state);
        sentence.setText(state.sentence());
        progress.setProgress(pull.done());
        progress.setVisible(pull.hasPan() && pull.working() && !pull.fits());
    }
}
