package simmerpoint.viewer.dialog;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;
import simmerpoint.report.ResultFiles;

/**
 * What can be taken away as files, each with its format; entries without anything to take away cannot be pressed. "Save" is the word for
 * the scenario alone.
 */
public class TakeAwayMenu extends MenuButton {
    private final FileExport takeAway;

    /** An empty menu. */
    public TakeAwayMenu(String id, String meaning, FileExport takeAway) {
        super("Take away");
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
        MenuItem item = new MenuItem(words + " (" + kind.extension().toUpperCase(Locale.ROOT) + ")\u2026");
        item.setId(getId() + "-" + name + "-" + kind.extension());
        item.setUserData(maker);
        item.setOnAction(e -> maker.get().ifPresent(bytes -> takeAway.write(words, kind, name, bytes)));
        getItems().add(item);
    }
}
