package simmerpoint.viewer.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.document.SettingsFile;
import simmerpoint.viewer.theme.Theme;

/**
 * Display settings last chosen in the window, stored as lines of a small text file. Settings from the command line are not
 * stored.
 */
final class StoredDisplaySettings {
    private static final String UNITS = "units: ";
    private static final String THEME = "theme: ";

    private final Optional<Path> store;
    private Optional<UnitSystem> units = Optional.empty();
    private Optional<Theme> theme = Optional.empty();

    private StoredDisplaySettings(Optional<Path> store) {
        this.store = store;
        store.map(SettingsFile::lines).ifPresent(lines -> {
            units = after(UNITS, lines).flatMap(StoredDisplaySettings::units);
            theme = after(THEME, lines).flatMap(StoredDisplaySettings::theme);
        });
    }

    /** Stored in a file. */
    static StoredDisplaySettings in(Path store) {
        return new StoredDisplaySettings(Optional.of(store));
    }

    /** Not stored. */
    static StoredDisplaySettings forgotten() {
        return new StoredDisplaySettings(Optional.empty());
    }

    private static Optional<String> after(String name, List<String> lines) {
        return lines.stream()
                .filter(line -> line.startsWith(name))
                .map(line -> line.substring(name.length()).strip())
                .findFirst();
    }

    /** The system of units of that name, as it is typed: metric or inch. */
    static Optional<UnitSystem> units(String name) {
        return Stream.of(UnitSystem.values())
                .filter(system -> typed(system).equals(name))
                .findFirst();
    }

    /** The theme of that name, as it is typed: light or dark. */
    static Optional<Theme> theme(String name) {
        return Stream.of(Theme.values())
                .filter(colours -> typed(colours).equals(name))
                .findFirst();
    }

    private static String typed(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }

    /** Initial settings: those of the command line, else the stored ones, else metric and light. */
    DisplaySettings settings(Optional<UnitSystem> saidUnits, Optional<Theme> saidTheme) {
        DisplaySettings settings = new DisplaySettings(
                saidUnits.or(() -> units).orElse(UnitSystem.METRIC),
                saidTheme.or(() -> theme).orElse(Theme.LIGHT));
        settings.unitsProperty().addListener((value, before, now) -> {
            units = Optional.of(now);
            keep();
        });
        settings.themeProperty().addListener((value, before, now) -> {
            theme = Optional.of(now);
            keep();
        });
        return settings;
    }

    private void keep() {
        List<String> lines = new ArrayList<>();
        units.ifPresent(system -> lines.add(UNITS + typed(system)));
        theme.ifPresent(colours -> lines.add(THEME + typed(colours)));
        store.ifPresent(path -> SettingsFile.keep(path, lines));
    }
}
