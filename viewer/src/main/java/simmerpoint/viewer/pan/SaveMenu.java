package simmerpoint.viewer.pan;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;
import simmerpoint.viewer.asking.FileKind;
import simmerpoint.viewer.asking.TakeAway;

/** What can be saved of what is seen here; entries without anything to save cannot be pressed. */
public final class SaveMenu extends MenuButton {
    private final TakeAway takeAway;

    /** An empty menu. */
    public SaveMenu(String id, String meaning, TakeAway takeAway) {
        super("Save");
        this.takeAway = takeAway;
        setId(id);
        setAccessibleText(meaning);
        setTooltip(new Tooltip(meaning));
        setOnShowing(e -> getItems()
                .forEach(item -> item.setDisable(item.getUserData() instanceof Supplier<?> there
                        && there.get().equals(Optional.empty()))));
    }

    /**
     * Adds an entry.
     *
     * @param words what it says, without dots
     * @param kind of the file
     * @param name proposed for it
     * @param maker what makes its bytes, away from the FX thread; empty while there is nothing to save
     */
    public void add(String words, FileKind kind, String name, Supplier<Optional<Callable<byte[]>>> maker) {
        MenuItem item = new MenuItem(words + "\u2026");
        item.setId(getId() + "-" + name + "-" + kind.extension());
        item.setUserData(maker);
        item.setOnAction(e -> maker.get().ifPresent(bytes -> takeAway.write(words, kind, name, bytes)));
        getItems().add(item);
    }
}
