package simmerpoint.viewer.editing;

import javafx.animation.PauseTransition;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.util.Duration;
import simmerpoint.scenario.keys.Key;

/**
 * A field to type a value into. Input goes to the document when the typing pauses, at the return key and when the field
 * is left; all that is typed in one stay is undone in one step, and Escape takes it back.
 */
final class ValueField extends TextField {
    private static final Duration PAUSE = Duration.millis(450);

    private final KeyModel model;
    private final PauseTransition pause = new PauseTransition(PAUSE);
    private boolean showing;
    private boolean pending;
    private String atEntry = "";
    private String typedAtEntry = "";
    private String sent;

    ValueField(KeyModel model) {
        this.model = model;
        setId("key-" + model.key().path());
        getStyleClass().add("typed-field");
        promptTextProperty().bind(model.stateProperty().map(this::prompt));
        pause.setOnFinished(e -> send());
        textProperty().addListener((value, before, now) -> typed());
        model.onChange(KeyState::shown, this::follow);
        ErrorMark.follow(this, model);
        focusedProperty().addListener((value, before, now) -> stay(now));
        setOnAction(e -> finish());
        addEventFilter(KeyEvent.KEY_PRESSED, this::onKey);
        show(model.state().shown());
    }

    /** A figure that holds stands in the empty field; words for where it is taken from are too long for it. */
    private String prompt(KeyState state) {
        Key key = model.key();
        return key.defaultIsValue() || !state.otherwise().equals(key.defaultText()) ? state.otherwise() : "";
    }

    private void show(String text) {
        showing = true;
        setText(text);
        showing = false;
        pending = false;
        pause.stop();
    }

    private void typed() {
        if (!showing) {
            pending = true;
            pause.playFromStart();
        }
    }

    /** Something stands at the key now; what was typed here itself is not changed under the typing hand. */
    private void follow() {
        String now = model.state().shown();
        boolean own = isFocused() && sent != null && sent.equals(typedAtDesk());
        if (!own && !pending) {
            show(now);
        }
    }

    private String typedAtDesk() {
        return model.document().state().typed(model.key().path()).orElse("");
    }

    private void stay(boolean focused) {
        if (focused) {
            enter();
            sent = null;
            model.document().beginGesture();
        } else {
            send();
            model.document().endGesture();
            sent = null;
            show(model.state().shown());
        }
    }

    /** Commits pending input. */
    void send() {
        pause.stop();
        if (pending) {
            pending = false;
            sent = getText().isBlank() ? "" : model.withUnit(getText());
            model.enter(getText());
        }
    }

    private void finish() {
        send();
        sent = null;
        model.document().endGesture();
        model.document().beginGesture();
        enter();
        show(atEntry);
        selectAll();
    }

    private void enter() {
        atEntry = model.state().shown();
        typedAtEntry = typedAtDesk();
    }

    private void onKey(KeyEvent event) {
        if (event.getCode() == KeyCode.ESCAPE && !getText().equals(atEntry)) {
            show(atEntry);
            sent = null;
            model.restore(typedAtEntry);
            selectAll();
            event.consume();
        }
    }

    /** Commits what is being typed in a window, if anything is; the window may be null. */
    static void sendFocused(Scene scene) {
        if (scene != null && scene.getFocusOwner() instanceof ValueField field) {
            field.send();
        }
    }
}
