package simmerpoint.viewer.theme;

import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.collections.ObservableList;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.paint.Color;

/** Light or dark theme of the window. */
public enum Theme {
    /** Dark words on light ground. */
    LIGHT,
    /** Light words on dark ground. */
    DARK;

    /** Applies the theme to a window and its pop-ups, replacing another theme. */
    public void applyTo(Scene scene) {
        replaceSheets(scene.getStylesheets());
    }

    /** Applies the theme to a node without a window. */
    public void applyTo(Parent part) {
        if (!part.getStyleClass().contains("root")) {
            part.getStyleClass().add("workbench");
        }
        replaceSheets(part.getStylesheets());
    }

    /** The other one. */
    public Theme other() {
        return this == LIGHT ? DARK : LIGHT;
    }

    /** The shades as looked-up colours. */
    private String colours() {
        return inline(Stream.of(Shade.values())
                .map(shade -> shade.looked() + ": " + web(shade.in(this)) + ";")
                .collect(Collectors.joining(" ", ".root, .workbench {", "}")));
    }

    private void replaceSheets(ObservableList<String> sheets) {
        String shared = shared();
        sheets.removeAll(List.of(LIGHT.colours(), DARK.colours(), shared));
        sheets.addAll(colours(), shared);
    }

    private static String web(Color c) {
        return String.format(
                Locale.ROOT,
                "#%02x%02x%02x",
                Math.round(255 * c.getRed()),
                Math.round(255 * c.getGreen()),
                Math.round(255 * c.getBlue()));
    }

    private static String inline(String css) {
        return "data:text/css;base64," + Base64.getEncoder().encodeToString(css.getBytes(StandardCharsets.UTF_8));
    }

    private static String shared() {
        URL url = Theme.class.getResource("window.css");
        if (url == null) {
            throw new IllegalStateException("window.css is missing from the program");
        }
        return url.toExternalForm();
    }
}
