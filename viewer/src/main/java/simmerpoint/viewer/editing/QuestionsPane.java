package simmerpoint.viewer.editing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.ShellWords;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.keys.CutKeys;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.document.ScenarioDocument;

/** A few questions in a builder's words, each with a small picture, sensible answers to press, and a field for one's own. */
final class QuestionsPane extends ScrollPane {
    private final ScenarioDocument document;
    private final ObservableValue<UnitSystem> units;
    private final Dialogs dialogs;
    private final ChoiceEdits choosing;
    private final DaylightChoice daylight;
    private final List<Runnable> followers = new ArrayList<>();

    QuestionsPane(ScenarioDocument document, ObservableValue<UnitSystem> units, Dialogs dialogs) {
        this.document = document;
        this.units = units;
        this.dialogs = dialogs;
        choosing = new ChoiceEdits(document, dialogs);
        daylight = new DaylightChoice(document, dialogs);
        setId("questions");
        getStyleClass().add("questions");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        VBox all = new VBox();
        for (BuilderQuestion question : BuilderQuestion.values()) {
            all.getChildren().add(block(question));
        }
        setContent(all);
        document.stateProperty().addListener((value, before, now) -> follow());
        units.addListener((value, before, now) -> follow());
        follow();
    }

    private void follow() {
        followers.forEach(Runnable::run);
    }

    private Scenario scenario() {
        return document.readProperty().get().scenario();
    }

    private String cut() {
        return scenario().dish().cut().kind().word();
    }

    private Node block(BuilderQuestion question) {
        SVGPath drawn = new SVGPath();
        drawn.setContent(question.picture());
        drawn.getStyleClass().add("question-picture");
        StackPane picture = new StackPane(drawn);
        picture.setMinSize(44, 44);
        picture.setMaxSize(44, 44);
        Label words = new Label(question.words());
        words.getStyleClass().add("question-words");
        words.setWrapText(true);
        VBox right = new VBox(6, words);
        HBox.setHgrow(right, Priority.ALWAYS);
        starts(question, right);
        switch (question) {
            case DEPTH -> right.getChildren().add(depth());
            case WHERE -> right.getChildren().add(where());
            case WHEN -> right.getChildren().add(when());
            case MIRROR -> right.getChildren().add(source());
            case ZONES -> right.getChildren().add(zones());
            default -> {
                // Its keys are enough.
            }
        }
        if (!question.keys().isEmpty()) {
            right.getChildren().add(keys(question.keys()));
        }
        HBox block = new HBox(10, picture, right);
        block.setId("question-" + question.name().toLowerCase(Locale.ROOT));
        block.getStyleClass().add("question");
        followers.add(() -> show(block, question.fits(scenario())));
        return block;
    }

    private KeyList keys(List<String> paths) {
        return new KeyList(document, units, dialogs, paths).brief();
    }

    private void starts(BuilderQuestion question, VBox right) {
        int count = question.starts(scenario(), units.getValue()).size();
        FlowPane row = new FlowPane(6, 4);
        for (int k = 0; k < count; k++) {
            row.getChildren().add(start(question, k));
        }
        if (count > 0) {
            right.getChildren().add(row);
        }
    }

    private ToggleButton start(BuilderQuestion question, int number) {
        ToggleButton button = new ToggleButton();
        button.getStyleClass().add("start");
        button.setMinWidth(Region.USE_PREF_SIZE);
        Tooltip tip = new Tooltip();
        button.setTooltip(tip);
        followers.add(() -> {
            Start start = question.starts(scenario(), units.getValue()).get(number);
            button.setId("start-" + question.name().toLowerCase(Locale.ROOT) + "-" + start.id());
            show(button, CutKeys.inapplicable(cut()).stream().noneMatch(start.typed()::containsKey));
            button.setText(start.words());
            button.setSelected(start.holds(document.state()));
            tip.setText("Use this; undo takes it back");
            button.setAccessibleText(question.words() + " " + start.words());
        });
        button.setOnAction(e -> {
            take(question.starts(scenario(), units.getValue()).get(number));
            follow();
        });
        return button;
    }

    private void take(Start start) {
        String cut = start.typed().get(BuilderQuestion.CUT_KEY);
        if (cut != null) {
            choosing.choose(Keys.find(BuilderQuestion.CUT_KEY).orElseThrow(), cut);
        } else {
            document.apply(start.edit());
        }
    }

    private Node depth() {
        Label label = new Label();
        label.setId("question-depth-words");
        label.getStyleClass().add("quiet");
        label.setWrapText(true);
        followers.add(() -> {
            Optional<ShellWords> shell = ShellWords.of(scenario(), new FigureFormat(units.getValue()));
            if (shell.isPresent()) {
                label.setText(shell.get().focus());
                return;
            }
            double deep = scenario().dish().profile().height(scenario().dish().radiusMetres());
            label.setText("At the middle it is " + new FigureFormat(units.getValue()).length(deep)
                    + " deep. The deeper, the nearer the pan.");
        });
        return label;
    }

    /** Who says so, behind a mark. */
    private Node source() {
        Label figures = new Label();
        figures.setId("mirror-figures");
        figures.getStyleClass().add("quiet");
        figures.setWrapText(true);
        HBox.setHgrow(figures, Priority.ALWAYS);
        Button mark = new Button("source");
        mark.setId("mirror-source");
        mark.getStyleClass().add("source-mark");
        mark.setMinWidth(Region.USE_PREF_SIZE);
        Tooltip tip = new Tooltip();
        tip.setWrapText(true);
        tip.setMaxWidth(340);
        mark.setTooltip(tip);
        mark.setOnAction(e -> {
            var at = mark.localToScreen(0, mark.getHeight());
            tip.show(mark, at.getX(), at.getY());
        });
        followers.add(() -> {
            var key = Keys.find("mirror.material").orElseThrow();
            var entry = ChosenWord.word(document.state(), key).flatMap(word -> CatalogueEntry.of(key, word));
            figures.setText(entry.map(CatalogueEntry::figures).orElse(""));
            tip.setText(entry.map(CatalogueEntry::source).orElse(""));
            mark.setVisible(!tip.getText().isEmpty());
            mark.setAccessibleText("Source: " + tip.getText());
        });
        return new HBox(8, figures, mark);
    }

    /** For each zone that there is, what is asked of it. */
    private Node zones() {
        VBox all = new VBox(6);
        for (String zone : ZoneKeys.NAMES) {
            VBox one = new VBox(6);
            one.setId("question-zone-" + zone);
            all.getChildren().add(one);
            followers.add(() -> {
                boolean there = document.state().hasSection(ZoneKeys.section(zone));
                if (there && one.getChildren().isEmpty()) {
                    Label heading = new Label(KeyLabels.heading(ZoneKeys.section(zone)));
                    heading.getStyleClass().add("section-heading");
                    one.getChildren().addAll(heading, keys(ZoneStarts.asked(zone)));
                }
                show(one, there);
            });
        }
        return all;
    }

    private Node where() {
        KeyList place = keys(List.of("place.latitude", "place.longitude", "place.zone"));
        Button take = new Button("Say where");
        take.setId("question-where-take");
        take.setTooltip(new Tooltip("Use the sun of a place and day instead of one that is typed"));
        take.setOnAction(e -> daylight.takeDay());
        followers.add(() -> {
            show(place, daylight.isDay());
            show(take, !daylight.isDay());
        });
        return new VBox(6, take, place);
    }

    private Node when() {
        KeyList day = keys(List.of("when.date", "when.time"));
        KeyList sun = keys(List.of("sun.elevation", "sun.beam"));
        followers.add(() -> {
            show(day, daylight.isDay());
            show(sun, !daylight.isDay());
        });
        return new VBox(6, day, sun);
    }

    private static void show(Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }
}
