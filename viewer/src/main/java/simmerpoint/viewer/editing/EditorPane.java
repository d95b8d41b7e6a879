package simmerpoint.viewer.editing;

import java.net.URL;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javafx.application.Platform;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.units.InputText;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.document.ScenarioDocument;

/** Everything that can be changed in a scenario, grouped by what a builder asks, with a field to find a key by its words. */
public final class EditorPane extends BorderPane {
    private static final Set<QuestionGroup> OPEN_AT_FIRST = EnumSet.of(QuestionGroup.FOOD, QuestionGroup.DISH);

    private final ScenarioDocument document;
    private final List<QuestionPane> groups = new ArrayList<>();
    private final TextField find = new TextField();
    private final CheckBox explain = new CheckBox("Explain each");
    private final Label found = new Label();
    private final ScrollPane scroll = new ScrollPane();
    private final ChoiceEdits choosing;
    private final List<AlternativeButtons> ways = new ArrayList<>();
    private boolean finding;

    /**
     * For the scenario of a document.
     *
     * @param document what is changed
     * @param units in which values are shown
     * @param dialogs asks for files
     */
    public EditorPane(ScenarioDocument document, ObservableValue<UnitSystem> units, Dialogs dialogs) {
        this.document = document;
        this.choosing = new ChoiceEdits(document, dialogs);
        getStyleClass().add("editor");
        setId("editor");
        URL sheet = EditorPane.class.getResource("editing.css");
        if (sheet != null) {
            getStylesheets().add(sheet.toExternalForm());
        }
        for (QuestionGroup asked : QuestionGroup.values()) {
            group(asked, units, dialogs);
        }
        scroll.setContent(new VBox(groups.toArray(Node[]::new)));
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        setTop(head());
        setCenter(scroll);
        addEventFilter(KeyEvent.KEY_PRESSED, this::onKey);
        document.stateProperty().addListener((value, before, now) -> show());
        show();
    }

    private void group(QuestionGroup asked, ObservableValue<UnitSystem> units, Dialogs dialogs) {
        if (!asked.keys().isEmpty()) {
            QuestionPane group = new QuestionPane(
                    asked,
                    document,
                    key -> new KeyRow(new KeyModel(key, document, units), choosing, dialogs, units),
                    above(asked));
            group.setExpanded(OPEN_AT_FIRST.contains(asked));
            groups.add(group);
        }
    }

    private Node above(QuestionGroup asked) {
        AlternativeButtons two = switch (asked) {
            case FOOD ->
                new AlternativeButtons(
                        "vessel",
                        new String[] {"In a pan", "On a bare disc, to look at the light alone"},
                        () -> document.state().hasSection("plane"),
                        new Runnable[] {choosing::takePan, choosing::takeDisc});
            case SUN ->
                new AlternativeButtons(
                        "daylight",
                        new String[] {"Under a sun that I type in", "Under the sun of a place and day"},
                        () -> document.state().hasSection("when"),
                        new Runnable[] {
                            choosing::takeGivenSun, () -> choosing.takeDay(LocalDate.now(ZoneId.systemDefault()))
                        });
            default -> null;
        };
        if (two != null) {
            ways.add(two);
        }
        return two;
    }

    private Node head() {
        find.setId("find-key");
        find.setTooltip(new Tooltip("Find a key by its name or a word of its explanation (Ctrl+F)"));
        find.setPromptText("Find: wind, tile, turn …");
        find.setAccessibleText("Find a key by its name or a word of its explanation");
        find.textProperty().addListener((value, before, now) -> show());
        find.setOnAction(e -> firstFound().ifPresent(row -> row.control().requestFocus()));
        explain.setId("explain");
        explain.setTooltip(new Tooltip("Under each key: what it means, what is allowed, what holds if it is left out"));
        explain.setSelected(true);
        explain.selectedProperty().addListener((value, before, now) -> show());
        explain.setMinWidth(USE_PREF_SIZE);
        found.setId("found");
        found.setWrapText(true);
        found.getStyleClass().add("quiet");
        found.managedProperty().bind(found.visibleProperty());
        BorderPane line = new BorderPane(find);
        line.setRight(explain);
        BorderPane.setMargin(explain, new javafx.geometry.Insets(5, 0, 0, 10));
        VBox head = new VBox(6, line, found);
        head.getStyleClass().add("editor-head");
        return head;
    }

    private void onKey(KeyEvent event) {
        boolean held = event.isShortcutDown();
        if (held && event.getCode() == KeyCode.F) {
            find.requestFocus();
            find.selectAll();
        } else if (held && event.getCode() == KeyCode.Z) {
            ValueField.sendFocused(getScene());
            step(event.isShiftDown());
        } else if (held && event.getCode() == KeyCode.Y) {
            ValueField.sendFocused(getScene());
            step(true);
        } else if (event.getCode() == KeyCode.ESCAPE
                && find.isFocused()
                && !find.getText().isEmpty()) {
            find.clear();
        } else {
            return;
        }
        event.consume();
    }

    private void step(boolean forward) {
        if (forward) {
            document.redo();
        } else {
            document.undo();
        }
    }

    private void show() {
        String text = InputText.normalised(find.getText()).toLowerCase(Locale.ROOT);
        List<String> wanted = text.isEmpty() ? List.of() : Arrays.asList(text.split(" "));
        boolean any = false;
        for (QuestionPane group : groups) {
            group.tell();
            boolean shown = group.show(wanted, explain.isSelected());
            group.setVisible(shown);
            group.setManaged(shown);
            any |= shown;
        }
        ways.forEach(AlternativeButtons::follow);
        unfold(!wanted.isEmpty());
        tellFound(any, text);
    }

    /** While something is looked for all that holds it lies open; afterwards everything is as it was. */
    private void unfold(boolean now) {
        if (now && !finding) {
            groups.forEach(group -> group.getProperties().put(this, group.isExpanded()));
        }
        if (now != finding) {
            groups.forEach(group -> group.setExpanded(
                    now || Boolean.TRUE.equals(group.getProperties().get(this))));
        }
        finding = now;
    }

    private void tellFound(boolean any, String text) {
        found.setVisible(!any);
        if (!any) {
            Optional<String> near = Keys.nearest(text).or(() -> nearestName(text));
            found.setText("Nothing here has that name."
                    + near.map(n -> " Did you mean " + n + "?").orElse(""));
        }
    }

    private static Optional<String> nearestName(String text) {
        return Keys.all().stream()
                .filter(key -> key.name().startsWith(text.substring(0, Math.min(3, text.length()))))
                .map(Key::name)
                .findFirst();
    }

    private Optional<KeyRow> firstFound() {
        return groups.stream()
                .filter(Node::isVisible)
                .flatMap(group -> group.rows().stream())
                .filter(row -> row.isVisible() && !row.control().isDisabled())
                .findFirst();
    }

    /** Opens the question under which a key stands and gives the key the keyboard. */
    public void goTo(String path) {
        find.clear();
        for (QuestionPane group : groups) {
            for (KeyRow row : group.rows()) {
                if (row.model().key().path().equals(path)) {
                    group.setExpanded(true);
                    Platform.runLater(() -> reveal(row));
                }
            }
        }
    }

    private void reveal(KeyRow row) {
        scroll.applyCss();
        scroll.layout();
        double height = scroll.getContent().getBoundsInLocal().getHeight()
                - scroll.getViewportBounds().getHeight();
        double at = scroll.getContent()
                .sceneToLocal(row.localToScene(row.getBoundsInLocal()))
                .getMinY();
        scroll.setVvalue(height <= 0 ? 0 : Math.max(0, Math.min(1, (at - 40) / height)));
        row.control().requestFocus();
    }

    /** The questions, for tests. */
    List<TitledPane> groups() {
        return List.copyOf(groups);
    }

    /** The row of a key. */
    Optional<KeyRow> row(String path) {
        return groups.stream()
                .flatMap(group -> group.rows().stream())
                .filter(row -> row.model().key().path().equals(path))
                .findFirst();
    }
}
