package simmerpoint.viewer.comparison;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;
import simmerpoint.viewer.live.LiveState;

/** Keeps the current design, to be held against what becomes of it. */
public final class KeepButton extends Button {
    /** For that model; can be pressed while {@code live} has the light of the current design. */
    public KeepButton(ComparisonModel model, ObservableValue<LiveState> live) {
        super("Keep this design");
        setId("keep");
        setMinWidth(Region.USE_PREF_SIZE);
        setTooltip(new Tooltip("Keep it beside, change it, and see both on one scale with their difference"));
        setAccessibleHelp(getTooltip().getText());
        setOnAction(e -> model.keep());
        live.addListener((value, before, now) -> setDisable(!model.canKeep()));
        setDisable(!model.canKeep());
    }
}
