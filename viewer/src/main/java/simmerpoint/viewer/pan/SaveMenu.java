package simmerpoint.viewer.pan;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;
import simmerpoint.report.ResultFiles;
import simmerpoint.viewer.dialog.FileExport;
import simmerpoint.viewer.dialog.FileKind;

/** What can be saved of what is seen here; entries without anything to save cannot be pressed. */
public class SaveMenu extends MenuButton {
    private final FileExport takeAway;

    /** An empty menu that says "Save". */
    public SaveMenu(String id, String meaning, FileExport takeAway) {
        this("Save", id, meaning, takeAway);
    }

    /** An empty menu. */
    public SaveMenu(String title, String id, String meaning, FileExport takeAway) {
        super(title);
        this.takeAway = takeAway;
        setId(id);
        setAccessibleText(meaning);
        setTooltip(new Tooltip(meaning));
        setOnShowing(e -> getItems()
                .forEach(item -> item.setDisable(item.getUserData() instanceof Supplier<?> there
                        && there.get().equals(Optional.empty()))));
    }

    /**
     * Adds an entry for a picture, a table or figures.
     *
     * @param words what it says, without dots
     * @param kind of the file
     * @param name proposed for it
     * @param files made away from the FX thread; empty while there is nothing to save
     */
    public void add(String words, FileKind kind, String name, Supplier<Optional<Callable<ResultFiles>>> files) {
        addBytes(words, kind, name, () -> files.get().map(made -> () -> kind.bytes(made.call())));
    }

    /** Adds an entry for anything else. */
    public void addBytes(String words, FileKind kind, String name, Supplier<Optional<Callable<byte[]>>> maker) {
        MenuItem item = new MenuItem(words + "\u2026");
        item.setId(getId() + "-" + name + "-" + kind.extension());
        item.setUserData(maker);
        item.setOnAction(e -> maker.get().ifPresent(bytes -> takeAway.write(words, kind, name, bytes)));
        getItems().add(item);
    }
}
