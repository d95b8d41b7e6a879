package simmerpoint.viewer.parts;

import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;

/** Buttons with words that are never cut short. */
public final class Buttons {
    private Buttons() {}

    /**
     * A button.
     *
     * @param id for style sheets and tests
     * @param words on it
     * @param meaning what it does, in a tooltip and for screen readers
     * @param action what it does
     */
    public static Button button(String id, String words, String meaning, Runnable action) {
        Button button = new Button(words);
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setTooltip(new Tooltip(meaning));
        button.setAccessibleHelp(meaning);
        button.setOnAction(e -> action.run());
        return button;
    }
}
