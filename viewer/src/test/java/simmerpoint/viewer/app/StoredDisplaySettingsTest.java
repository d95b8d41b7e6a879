package simmerpoint.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.theme.Theme;

class StoredDisplaySettingsTest {
    @TempDir
    Path folder;

    private static DisplaySettings plain(StoredDisplaySettings remembered) {
        return remembered.settings(Optional.empty(), Optional.empty());
    }

    private static void assertLook(UnitSystem units, Theme theme, DisplaySettings settings) {
        assertEquals(units, settings.unitsProperty().get());
        assertEquals(theme, settings.themeProperty().get());
    }

    @Test
    void whatIsChosenHoldsTheNextTime() {
        Path store = folder.resolve("deep/er/look");
        DisplaySettings first = plain(StoredDisplaySettings.in(store));
        assertLook(UnitSystem.METRIC, Theme.LIGHT, first);
        assertFalse(Files.exists(store), "nothing was chosen");
        first.unitsProperty().set(UnitSystem.INCH);
        assertLook(UnitSystem.INCH, Theme.LIGHT, plain(StoredDisplaySettings.in(store)));
        first.themeProperty().set(Theme.DARK);
        first.unitsProperty().set(UnitSystem.METRIC);
        assertLook(UnitSystem.METRIC, Theme.DARK, plain(StoredDisplaySettings.in(store)));
    }

    @Test
    void theCommandLineWinsForOnceAndIsNotRemembered() {
        Path store = folder.resolve("look");
        plain(StoredDisplaySettings.in(store)).themeProperty().set(Theme.DARK);
        DisplaySettings told =
                StoredDisplaySettings.in(store).settings(Optional.of(UnitSystem.INCH), Optional.of(Theme.LIGHT));
        assertLook(UnitSystem.INCH, Theme.LIGHT, told);
        assertLook(UnitSystem.METRIC, Theme.DARK, plain(StoredDisplaySettings.in(store)));
        // What is then chosen in the window is remembered, and only that.
        told.unitsProperty().set(UnitSystem.METRIC);
        assertLook(UnitSystem.METRIC, Theme.DARK, plain(StoredDisplaySettings.in(store)));
        told.unitsProperty().set(UnitSystem.INCH);
        assertLook(UnitSystem.INCH, Theme.DARK, plain(StoredDisplaySettings.in(store)));
    }

    @Test
    void aBrokenFileIsQuietlyPassedOver() throws Exception {
        Path store = folder.resolve("look");
        Files.write(store, new byte[] {(byte) 0xFF, 0, 1, (byte) 0xFE});
        assertLook(UnitSystem.METRIC, Theme.LIGHT, plain(StoredDisplaySettings.in(store)));
        Files.writeString(store, "units: furlongs\ntheme: dark\n");
        assertLook(UnitSystem.METRIC, Theme.DARK, plain(StoredDisplaySettings.in(store)));
        assertLook(UnitSystem.METRIC, Theme.LIGHT, plain(StoredDisplaySettings.in(folder)));
    }

    @Test
    void whereNothingCanBeKeptItIsForgotten() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "");
        DisplaySettings settings = plain(StoredDisplaySettings.in(file.resolve("look")));
        settings.themeProperty().set(Theme.DARK);
        assertEquals(Theme.DARK, settings.themeProperty().get());
        DisplaySettings forgotten = plain(StoredDisplaySettings.forgotten());
        forgotten.unitsProperty().set(UnitSystem.INCH);
        assertLook(UnitSystem.METRIC, Theme.LIGHT, plain(StoredDisplaySettings.forgotten()));
    }
}
