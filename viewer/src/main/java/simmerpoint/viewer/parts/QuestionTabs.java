package simmerpoint.viewer.parts;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** Questions to choose from along the top, and below them the answer to the chosen one, which is made when it is first seen. */
public final class QuestionTabs extends BorderPane {
    private final String id;
    private final FlowPane row = new FlowPane(6, 4);
    private final StackPane place = new StackPane();
    private final ToggleGroup group = new ToggleGroup();
    private final Map<String, Node> made = new HashMap<>();
    private final Map<String, Supplier<Node>> makers = new HashMap<>();

    /** Without questions; {@code id} begins the ids of what is in it. */
    public QuestionTabs(String id) {
        this.id = id;
        setId(id);
        getStyleClass().add("question-tabs");
        row.getStyleClass().add("question-row");
        place.setMinSize(0, 0);
        setTop(row);
        setCenter(place);
        // One of them always holds.
        group.selectedToggleProperty().addListener((value, before, now) -> {
            if (now == null) {
                group.selectToggle(before);
            } else {
                show((String) now.getUserData());
            }
        });
    }

    /**
     * Adds a question.
     *
     * @param name its id after that of the whole
     * @param words on its tab
     * @param meaning what it answers
     * @param maker makes the answer when it is first seen
     */
    public QuestionTabs with(String name, String words, String meaning, Supplier<Node> maker) {
        ToggleButton tab = new ToggleButton(words);
        tab.setId(id + "-" + name);
        tab.setUserData(name);
        tab.getStyleClass().add("question-tab");
        tab.setTooltip(new Tooltip(meaning));
        tab.setAccessibleText(words + ": " + meaning);
        tab.setMinWidth(Region.USE_PREF_SIZE);
        tab.setToggleGroup(group);
        makers.put(name, maker);
        row.getChildren().add(tab);
        return this;
    }

    /** Chooses a question. */
    public void choose(String name) {
        group.getToggles().stream()
                .filter(toggle -> toggle.getUserData().equals(name))
                .forEach(group::selectToggle);
    }

    private void show(String name) {
        place.getChildren()
                .setAll(made.computeIfAbsent(name, key -> makers.get(key).get()));
    }
}
