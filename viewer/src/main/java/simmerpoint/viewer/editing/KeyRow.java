package simmerpoint.viewer.editing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;
import simmerpoint.scenario.keys.Key;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.theme.Zoom;

/** One key: its name, its control, what it means and what is allowed, the way back to its default, and what is wrong. */
final class KeyRow extends VBox {
    private static final String BACK = "M6 1 L1.5 5 L6 9 V6.4 C9.5 6.2 11.3 7.6 12 10.5 C12.6 6.2 10.3 3.7 6 3.6 Z";
    private static final double LABEL_WIDTH = 104;
    private static final double FIELD_WIDTH = 104;
    private static final double CAPTION_WIDTH = 340;
    private static final int LONG_WORD = 20;

    private final KeyModel model;
    private final Control control;
    private final Label meaning = new Label();
    private final Tooltip caption = new Tooltip();
    private final String haystack;

    KeyRow(KeyModel model, ChoiceEdits choosing, Dialogs dialogs, ObservableValue<UnitSystem> units) {
        this.model = model;
        this.control = control(model, choosing);
        this.haystack = haystack(model.key());
        setId("row-" + model.key().path());
        getStyleClass().add("key-row");
        setSpacing(3);
        meaning.getStyleClass().add("meaning");
        meaning.setWrapText(true);
        meaning.setMinHeight(USE_PREF_SIZE);
        meaning.managedProperty().bind(meaning.visibleProperty());
        getChildren().setAll(line(dialogs), new ErrorMark(model.stateProperty().map(KeyState::wrong)), meaning);
        List.of(model.stateProperty(), units).forEach(value -> value.addListener((v, before, now) -> describe()));
        control.disableProperty().bind(model.stateProperty().map(state -> !state.applies()));
        describe();
    }

    private static Control control(KeyModel model, ChoiceEdits choosing) {
        return switch (model.key().kind()) {
            case WORD -> new WordBox(model, choosing);
            case SWITCH -> new SwitchBox(model);
            default -> new ValueField(model);
        };
    }

    private Node line(Dialogs dialogs) {
        Key key = model.key();
        Label label = new Label(KeyLabels.label(key));
        label.setLabelFor(control);
        label.getStyleClass().add("key-label");
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        caption.setWrapText(true);
        caption.setMaxWidth(CAPTION_WIDTH);
        label.setTooltip(caption);
        control.setTooltip(caption);
        boolean above = key.kind() == Key.Kind.TEXT
                || key.kind() == Key.Kind.FILE
                || key.words().stream().anyMatch(word -> word.length() > LONG_WORD);
        HBox line = new HBox(6);
        line.setAlignment(Pos.CENTER_LEFT);
        if (!above) {
            line.getChildren().add(label);
        }
        Optional<ValueSlider> slider = Optional.ofNullable(key.usual()).map(span -> new ValueSlider(model, span));
        boolean wide = slider.isEmpty() && key.kind() != Key.Kind.SWITCH;
        HBox.setHgrow(control, wide ? Priority.ALWAYS : Priority.NEVER);
        Zoom.follow(this, zoom -> {
            label.setPrefWidth(zoom * LABEL_WIDTH);
            label.setMinWidth(zoom * LABEL_WIDTH);
            control.setPrefWidth(zoom * (wide ? 80 : FIELD_WIDTH));
            control.setMinWidth(zoom * (wide ? 80 : FIELD_WIDTH));
        });
        line.getChildren().add(control);
        if (key.kind() == Key.Kind.FILE) {
            line.getChildren().add(new FileButton(model, dialogs));
        }
        slider.ifPresent(s -> {
            s.disableProperty().bind(control.disableProperty());
            s.setTooltip(caption);
        });
        Node rest = slider.map(Node.class::cast).orElseGet(HBox::new);
        HBox.setHgrow(rest, wide ? Priority.NEVER : Priority.ALWAYS);
        line.getChildren().addAll(rest, back());
        return above ? new VBox(3, label, line) : line;
    }

    /** Takes the value out, so that the default holds again; keeps its room where there is nothing to take out. */
    private Button back() {
        SVGPath arrow = new SVGPath();
        arrow.setContent(BACK);
        arrow.getStyleClass().add("back-sign");
        Button back = new Button(null, arrow);
        back.setId("back-" + model.key().path());
        back.getStyleClass().add("back");
        back.setTooltip(new Tooltip("Back to the default"));
        back.setAccessibleText("Back to the default: " + KeyLabels.spoken(model.key()));
        back.setOnAction(e -> {
            model.reset();
            control.requestFocus();
        });
        boolean required = model.key().required();
        back.visibleProperty().bind(model.stateProperty().map(state -> state.given() && !required));
        return back;
    }

    private void describe() {
        KeyState state = model.state();
        String words = state.applies() ? explained() : "Not used now: " + state.whyNot() + ".";
        meaning.setText(words);
        tell();
        control.setAccessibleText(KeyLabels.spoken(model.key()));
        control.setAccessibleHelp((state.isWrong() ? "Wrong: " + state.wrong() + ". " : "") + words);
    }

    private String explained() {
        Key key = model.key();
        StringBuilder words = new StringBuilder(key.sentence()).append(KeyLabels.remark(key));
        if (key.range() != null) {
            words.append(' ').append(capital(model.allowed())).append('.');
        }
        if (!key.required() && !model.state().otherwise().isEmpty()) {
            words.append(" If left out: ").append(otherwise(key)).append('.');
        }
        if (!model.state().inTheFile().isEmpty()) {
            words.append(" In the file: ")
                    .append(unbroken(model.state().inTheFile()))
                    .append('.');
        }
        if (key.kind() == Key.Kind.WORD) {
            words.append(known(key));
        }
        return words.toString();
    }

    /** The default, with where it comes from if that is another key. */
    private String otherwise(Key key) {
        String figure = model.state().otherwise();
        if (key.defaultIsValue()) {
            return key.range() == null ? figure : unbroken(figure);
        }
        boolean taken = !figure.equals(key.defaultText());
        return taken ? unbroken(figure) + ", " + key.defaultText() : figure;
    }

    /** Number and unit stay on one line. */
    private static String unbroken(String figure) {
        return figure.replace(' ', '\u00a0');
    }

    /** What is known of the word that holds, with its source. */
    private String known(Key key) {
        Optional<String> word = ChosenWord.word(model.document().state(), key);
        Optional<CatalogueEntry> known = word.flatMap(w -> CatalogueEntry.of(key, w));
        return known.map(k -> " " + capital(word.get()) + ": " + k.figures() + "."
                        + (k.source().isEmpty() ? "" : " Source: " + k.source() + "."))
                .orElse("");
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String haystack(Key key) {
        return String.join(
                        " ",
                        key.path(),
                        KeyLabels.label(key),
                        KeyLabels.heading(key.section()),
                        key.sentence(),
                        String.join(" ", key.words()))
                .toLowerCase(Locale.ROOT);
    }

    KeyModel model() {
        return model;
    }

    /** The control that gets the keyboard. */
    Control control() {
        return control;
    }

    /** Whether its words hold all of these. */
    boolean answers(List<String> wanted) {
        return wanted.stream().allMatch(haystack::contains);
    }

    /** Without explanation and slider, for little room; not seen while it has no meaning. */
    void setBrief() {
        setExplained(false);
        Pane line = (Pane) getChildren().get(0);
        line.getChildren().removeIf(node -> node instanceof ValueSlider);
        HBox.setHgrow(control, Priority.ALWAYS);
        control.setMaxWidth(Double.MAX_VALUE);
        managedProperty().bind(visibleProperty());
        visibleProperty().bind(model.stateProperty().map(KeyState::applies).orElse(true));
    }

    /** Whether explanations are shown. */
    void setExplained(boolean explained) {
        meaning.setVisible(explained);
        tell();
    }

    /** On hover: the key as it is written in the file, and what it means unless that stands there already. */
    private void tell() {
        String path = model.key().path();
        caption.setText(meaning.isVisible() ? path : path + "\n" + meaning.getText());
    }
}
