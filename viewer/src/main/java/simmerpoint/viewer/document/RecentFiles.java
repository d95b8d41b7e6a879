package simmerpoint.viewer.document;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * The files opened or saved last, newest first, kept as lines of a small text file. If that cannot be read or written they
 * are remembered only until the program ends.
 */
public final class RecentFiles {
    private static final int MOST = 10;

    private final Optional<Path> store;
    private final ObservableList<Path> files = FXCollections.observableArrayList();
    private final ObservableList<Path> shown = FXCollections.unmodifiableObservableList(files);

    private RecentFiles(Optional<Path> store) {
        this.store = store;
        store.ifPresent(this::load);
    }

    /** Kept in that file. */
    public static RecentFiles in(Path store) {
        return new RecentFiles(Optional.of(store));
    }

    /** Kept nowhere. */
    public static RecentFiles forgotten() {
        return new RecentFiles(Optional.empty());
    }

    /** The files, newest first; whether they are still there is not looked at. */
    public ObservableList<Path> files() {
        return shown;
    }

    /** A file was opened or saved. */
    public void add(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        files.remove(whole);
        files.add(0, whole);
        if (files.size() > MOST) {
            files.remove(MOST, files.size());
        }
        keep();
    }

    /** A file could not be opened any more. */
    public void remove(Path file) {
        files.remove(file.toAbsolutePath().normalize());
        keep();
    }

    private static boolean isOneLine(String name) {
        return name.lines().count() == 1;
    }

    private void load(Path path) {
        try {
            files.setAll(SettingsFile.lines(path).stream()
                    .limit(MOST)
                    .map(Path::of)
                    .filter(Path::isAbsolute)
                    .distinct()
                    .toList());
        } catch (InvalidPathException e) {
            files.clear();
        }
    }

    private void keep() {
        store.ifPresent(path -> SettingsFile.keep(
                path,
                files.stream()
                        .map(Path::toString)
                        .filter(RecentFiles::isOneLine)
                        .toList()));
    }
}
