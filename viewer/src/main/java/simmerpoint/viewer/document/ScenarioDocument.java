package simmerpoint.viewer.document;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import simmerpoint.report.AtomicFile;
import simmerpoint.report.OutputException;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.values.ScenarioValues;

/**
 * The open scenario. Changes are values as they would be typed in the file; views listen to its properties. All calls and
 * notifications are on one thread.
 */
public final class ScenarioDocument {
    private final ReadOnlyObjectWrapper<DocumentState> state = new ReadOnlyObjectWrapper<>(this, "state");
    private final ReadOnlyObjectWrapper<CheckedScenario> read = new ReadOnlyObjectWrapper<>(this, "read");
    private final ReadOnlyObjectWrapper<Optional<Path>> file = new ReadOnlyObjectWrapper<>(this, "file");
    private final ReadOnlyObjectWrapper<String> title = new ReadOnlyObjectWrapper<>(this, "title", "");
    private final ReadOnlyBooleanWrapper dirty = new ReadOnlyBooleanWrapper(this, "dirty");
    private final ReadOnlyBooleanWrapper undoable = new ReadOnlyBooleanWrapper(this, "undoable");
    private final ReadOnlyBooleanWrapper redoable = new ReadOnlyBooleanWrapper(this, "redoable");
    private UndoHistory chronicle;
    private ScenarioValues saved;
    private String savedText;

    /** What became of a wish to save. */
    public enum Saving {
        /** The file holds the scenario. */
        DONE,
        /** There is no file yet; ask for one and call {@link ScenarioDocument#saveAs(Path)}. */
        NEEDS_NAME,
        /** Another program has changed the file since; ask, then call {@link ScenarioDocument#saveOver()} or {@link ScenarioDocument#saveAs(Path)}. */
        CHANGED_OUTSIDE
    }

    /** With the example built into the program. */
    public ScenarioDocument() {
        this(OpenedFile.example());
    }

    /** With a scenario that was read. */
    public ScenarioDocument(OpenedFile opened) {
        lay(opened);
    }

    /** The scenario with all that was typed; never null. */
    public ReadOnlyObjectProperty<DocumentState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** The scenario in force, always a good one; changes only when another comes into force. */
    public ReadOnlyObjectProperty<CheckedScenario> readProperty() {
        return read.getReadOnlyProperty();
    }

    /** The file it came from or was saved to, absolute. */
    public ReadOnlyObjectProperty<Optional<Path>> fileProperty() {
        return file.getReadOnlyProperty();
    }

    /** What to call it in the head of the window: its title or the name of its file. */
    public ReadOnlyObjectProperty<String> titleProperty() {
        return title.getReadOnlyProperty();
    }

    /** Whether something would be lost if it were closed now. */
    public ReadOnlyBooleanProperty dirtyProperty() {
        return dirty.getReadOnlyProperty();
    }

    /** Whether there is something to undo. */
    public ReadOnlyBooleanProperty undoableProperty() {
        return undoable.getReadOnlyProperty();
    }

    /** Whether there is something to do again. */
    public ReadOnlyBooleanProperty redoableProperty() {
        return redoable.getReadOnlyProperty();
    }

    /** Its present state. */
    public DocumentState state() {
        return state.get();
    }

    /** Where other files that it names are looked for. */
    public Path folder() {
        return state().values().folder();
    }

    /** Opens another scenario; the current one is discarded, see {@link #unsaved()}. */
    public void lay(OpenedFile opened) {
        chronicle = new UndoHistory(DocumentState.good(opened.read()));
        file.set(opened.file());
        setSaved(opened.read().sourceText());
        tell();
    }

    /** Opens a file; if it cannot be used, everything stays as it was. */
    public void open(Path path) throws ScenarioException {
        lay(OpenedFile.read(path));
    }

    /** Opens the example built into the program. */
    public void openExample() {
        lay(OpenedFile.example());
    }

    /** Gives keys values, each as it would be typed in the file. */
    public void change(Map<String, String> typed) {
        apply(Edit.type(typed));
    }

    /** Gives a key its default back; one that alone keeps its section in the file gets it written out. */
    public void reset(String path) {
        Key key = Keys.find(path).orElseThrow(() -> new IllegalArgumentException("no key " + path));
        boolean chooses = Keys.chooserOf(key.section()).filter(path::equals).isPresent();
        boolean keepsPlane = key.section().equals("plane");
        apply((chooses || keepsPlane) && key.defaultIsValue() ? Edit.type(path, key.defaultText()) : Edit.drop(path));
    }

    /** Changes the scenario; what cannot be used is kept as typed, and the last good scenario stays in force. */
    public void apply(Edit edit) {
        DocumentState now = chronicle.now();
        DocumentState next = EditAttempt.at(now, edit);
        if (!next.isSameAs(now)) {
            chronicle.add(next);
            tell();
        }
    }

    /** What is changed from here to {@link #endGesture()} is undone in one step: a drag, a number typed key by key. */
    public void beginGesture() {
        chronicle.beginGesture();
    }

    /** See {@link #beginGesture()}. */
    public void endGesture() {
        chronicle.endGesture();
        tell();
    }

    /** Takes the last change back. */
    public void undo() {
        chronicle.undo();
        tell();
    }

    /** Does again what was undone last. */
    public void redo() {
        chronicle.redo();
        tell();
    }

    /** Saves to the file it came from. Values that cannot be used are not in the file; it holds the scenario in force. */
    public Saving save() throws OutputException {
        if (file.get().isEmpty()) {
            return Saving.NEEDS_NAME;
        }
        if (OpenedFile.holdsOther(file.get().get(), savedText)) {
            return Saving.CHANGED_OUTSIDE;
        }
        return saveOver();
    }

    /** Saves to the file it came from, whatever that holds by now. */
    public Saving saveOver() throws OutputException {
        write(file.get().orElseThrow());
        return Saving.DONE;
    }

    /** Saves to another file, replacing what is there; names of other files are made to count from its folder. */
    public void saveAs(Path path) throws OutputException {
        Path whole = path.toAbsolutePath().normalize();
        UnaryOperator<DocumentState> move = state -> state.movedTo(path.toString(), OpenedFile.folderOf(whole));
        String text = move.apply(chronicle.now()).values().sourceText();
        AtomicFile.write(whole, text.getBytes(StandardCharsets.UTF_8));
        chronicle.rewrite(move);
        file.set(Optional.of(whole));
        setSaved(text);
        tell();
    }

    private void write(Path path) throws OutputException {
        String text = chronicle.now().values().sourceText();
        AtomicFile.write(path, text.getBytes(StandardCharsets.UTF_8));
        setSaved(text);
        tell();
    }

    private void setSaved(String text) {
        saved = chronicle.now().values();
        savedText = text;
    }

    /** What would be lost if this scenario were closed now, in one sentence; empty if nothing. */
    public Optional<String> unsaved() {
        return UnsavedChanges.sentence(title.get(), state(), isChanged(state()));
    }

    private boolean isChanged(DocumentState now) {
        return !now.values().isSameAs(saved);
    }

    private void tell() {
        DocumentState now = chronicle.now();
        String heading = now.read().scenario().title();
        title.set(
                heading.isEmpty()
                        ? file.get()
                                .map(f -> f.getFileName().toString())
                                .orElse(now.values().name())
                        : heading);
        undoable.set(chronicle.canUndo());
        redoable.set(chronicle.canRedo());
        dirty.set(isChanged(now) || !now.pending().isNone());
        state.set(now);
        read.set(now.read());
    }
}
