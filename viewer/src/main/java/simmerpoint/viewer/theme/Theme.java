package simmerpoint.viewer.theme;

import java.net.URL;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javafx.scene.Parent;

/** The two ways the window looks. */
public enum Theme {
    /** Dark words on light ground. */
    LIGHT,
    /** Light words on dark ground. */
    DARK;

    private static final String SHARED = "shared";

    /** Dresses a part and everything in it; takes off another theme. */
    public void dress(Parent root) {
        root.getStylesheets().removeAll(all());
        root.getStylesheets().addAll(sheet(name().toLowerCase(Locale.ROOT)), sheet(SHARED));
    }

    private static List<String> all() {
        return Stream.of("light", "dark", SHARED).map(Theme::sheet).toList();
    }

    private static String sheet(String name) {
        URL url = Theme.class.getResource(name + ".css");
        if (url == null) {
            throw new IllegalStateException(name + ".css is missing from the program");
        }
        return url.toExternalForm();
    }
}
