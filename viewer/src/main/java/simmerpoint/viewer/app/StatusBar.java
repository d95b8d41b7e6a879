package simmerpoint.viewer.app;

import java.nio.file.Path;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.document.RecentFiles;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.document.ShippedScenarios;
import simmerpoint.viewer.theme.Theme;

/** The bar at the bottom: the open scenario, open and save, undo and redo, units and colours. */
final class StatusBar extends HBox {
    private final ScenarioDocument document;
    private final FileActions files;
    private final RecentFiles recent;
    private final Label title = new Label();
    private final Label where = new Label();
    private final MenuButton more = new MenuButton("Open");

    StatusBar(ScenarioDocument document, FileActions files, RecentFiles recent, DisplaySettings settings, Node export) {
        this.document = document;
        this.files = files;
        this.recent = recent;
        getStyleClass().add("shelf");
        setId("shelf");
        getChildren().addAll(name(), gap(true));
        getChildren().addAll(fileButtons());
        getChildren().addAll(export, gap(false));
        getChildren().addAll(backAndForth());
        getChildren().add(gap(false));
        getChildren().addAll(units(settings.unitsProperty()));
        getChildren().addAll(gap(false), colours(settings.themeProperty()));
        getChildren().stream()
                .skip(1)
                .filter(node -> node instanceof Region)
                .forEach(node -> ((Region) node).setMinWidth(USE_PREF_SIZE));
        InvalidationListener tell = value -> tell();
        document.titleProperty().addListener(tell);
        document.dirtyProperty().addListener(tell);
        document.fileProperty().addListener(tell);
        recent.files().addListener((InvalidationListener) list -> listRecent());
        tell();
        listRecent();
    }

    private static Region gap(boolean grows) {
        Region gap = new Region();
        gap.setPrefWidth(8);
        HBox.setHgrow(gap, grows ? Priority.ALWAYS : Priority.NEVER);
        return gap;
    }

    private static Button button(String id, String words, String help, Runnable action) {
        Button button = new Button(words);
        button.setId(id);
        button.setTooltip(new Tooltip(help));
        button.setAccessibleText(help);
        button.setOnAction(e -> action.run());
        return button;
    }

    private Node name() {
        title.getStyleClass().add("title");
        title.setId("shelf-title");
        where.getStyleClass().addAll("quiet", "file-name");
        where.setId("shelf-file");
        VBox both = new VBox(title, where);
        both.setMinWidth(0);
        return both;
    }

    private Node[] fileButtons() {
        more.setId("open");
        more.setTooltip(new Tooltip("Open another scenario (Ctrl+O)"));
        return new Node[] {
            more,
            button("save", "Save", "Save the scenario (Ctrl+S)", files::save),
            button("save-as", "Save as\u2026", "Save the scenario as another file (Ctrl+Shift+S)", files::saveAs)
        };
    }

    private Node[] backAndForth() {
        Button undo = button("undo", "Undo", "Take the last change back (Ctrl+Z)", document::undo);
        Button redo = button("redo", "Redo", "Do it again (Ctrl+Shift+Z)", document::redo);
        undo.disableProperty().bind(document.undoableProperty().not());
        redo.disableProperty().bind(document.redoableProperty().not());
        return new Node[] {undo, redo};
    }

    private static Node[] units(ObjectProperty<UnitSystem> units) {
        ToggleGroup group = new ToggleGroup();
        return new Node[] {
            choice(group, units, UnitSystem.METRIC, "metric", "cm", "Metric units"),
            choice(group, units, UnitSystem.INCH, "inch", "inch", "Inches")
        };
    }

    private static ToggleButton choice(
            ToggleGroup group,
            ObjectProperty<UnitSystem> units,
            UnitSystem system,
            String id,
            String words,
            String help) {
        ToggleButton button = new ToggleButton(words);
        button.setId("units-" + id);
        button.setToggleGroup(group);
        button.setTooltip(new Tooltip(help));
        button.setAccessibleText(help);
        button.setSelected(units.get() == system);
        // A pressed button that is pressed again stays so: one of the two always holds.
        button.setOnAction(e -> {
            units.set(system);
            button.setSelected(true);
        });
        // Arrow keys choose without pressing.
        button.selectedProperty().addListener((value, before, now) -> {
            if (now) {
                units.set(system);
            }
        });
        units.addListener((value, before, now) -> button.setSelected(now == system));
        return button;
    }

    private static ToggleButton colours(ObjectProperty<Theme> theme) {
        ToggleButton dark = new ToggleButton("Dark");
        dark.setId("dark");
        dark.setTooltip(new Tooltip("Light words on dark ground"));
        dark.setSelected(theme.get() == Theme.DARK);
        dark.setOnAction(e -> theme.set(dark.isSelected() ? Theme.DARK : Theme.LIGHT));
        theme.addListener((value, before, now) -> dark.setSelected(now == Theme.DARK));
        return dark;
    }

    private void tell() {
        title.setText(document.titleProperty().get());
        Optional<Path> file = document.fileProperty().get();
        String name = file.map(f -> f.getFileName().toString()).orElse("not in a file yet");
        where.setText(name + (document.dirtyProperty().get() ? ", changed" : ""));
        where.setTooltip(file.map(f -> new Tooltip(f.toString())).orElse(null));
    }

    private void listRecent() {
        MenuItem file = new MenuItem("A file\u2026");
        file.setOnAction(e -> files.open());
        MenuItem fresh = new MenuItem("New");
        fresh.setId("open-new");
        fresh.setOnAction(e -> files.openNew());
        more.getItems().setAll(fresh, file, new SeparatorMenuItem());
        for (Path known : recent.files()) {
            MenuItem item = new MenuItem(known.toString());
            item.setMnemonicParsing(false);
            item.setOnAction(e -> files.open(known));
            more.getItems().add(item);
        }
        MenuItem example = new MenuItem("Example: Tea kitchen at the lake hut");
        example.setOnAction(e -> files.openExample());
        if (!recent.files().isEmpty()) {
            more.getItems().add(new SeparatorMenuItem());
        }
        more.getItems().add(example);
        for (String name : ShippedScenarios.names()) {
            MenuItem item = new MenuItem("Example: " + ShippedScenarios.title(name));
            item.setId("open-" + name);
            item.setOnAction(e -> files.openShipped(name));
            more.getItems().add(item);
        }
    }
}
