package simmerpoint.viewer.editing;

import java.util.function.BooleanSupplier;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.VBox;

/** One of two ways to say something, between which other keys change. */
final class AlternativeButtons extends VBox {
    private final RadioButton first;
    private final RadioButton second;
    private final BooleanSupplier isSecond;

    /**
     * Two ways.
     *
     * @param id of the first button is {@code id-first}, of the second {@code id-second}
     * @param words of both
     * @param isSecond whether the second way holds now
     * @param actions what choosing each does
     */
    AlternativeButtons(String id, String[] words, BooleanSupplier isSecond, Runnable[] actions) {
        this.isSecond = isSecond;
        ToggleGroup group = new ToggleGroup();
        first = button(id + "-first", words[0], group, actions[0]);
        second = button(id + "-second", words[1], group, actions[1]);
        getStyleClass().add("two-ways");
        setSpacing(4);
        getChildren().setAll(first, second);
        follow();
    }

    private RadioButton button(String id, String words, ToggleGroup group, Runnable action) {
        RadioButton button = new RadioButton(words);
        button.setId(id);
        button.setToggleGroup(group);
        button.setWrapText(true);
        button.setOnAction(e -> {
            action.run();
            follow();
        });
        return button;
    }

    /** Shows the way that holds now. */
    void follow() {
        (isSecond.getAsBoolean() ? second : first).setSelected(true);
    }
}
