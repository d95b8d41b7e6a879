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
 * Units and colours as they were chosen in the window the last time, kept as lines of a small text file. Only what is chosen
 * there is kept, not what a command line says for once.
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

    /** Kept in that file. */
    static StoredDisplaySettings in(Path store) {
        return new StoredDisplaySettings(Optional.of(store));
    }

    /** Kept nowhere. */
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

    /** What to begin with: what is said now, else what is remembered, else metric and light. */
    DisplaySettings look(Optional<UnitSystem> saidUnits, Optional<Theme> saidTheme) {
        DisplaySettings look = new DisplaySettings(
                saidUnits.or(() -> units).orElse(UnitSystem.METRIC),
                saidTheme.or(() -> theme).orElse(Theme.LIGHT));
        look.unitsProperty().addListener((value, before, now) -> {
            units = Optional.of(now);
            keep();
        });
        look.themeProperty().addListener((value, before, now) -> {
            theme = Optional.of(now);
            keep();
        });
        return look;
    }

    private void keep() {
        List<String> lines = new ArrayList<>();
        units.ifPresent(system -> lines.add(UNITS + typed(system)));
        theme.ifPresent(colours -> lines.add(THEME + typed(colours)));
        store.ifPresent(path -> SettingsFile.keep(path, lines));
    }
}
