package simmerpoint.viewer.editing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;
import simmerpoint.scenario.Problem;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.viewer.document.ScenarioDocument;

/**
 * One question of a builder with the keys that answer it; its head tells when something in it is wrong. What is in it is
 * made when it is first opened.
 */
final class QuestionPane extends TitledPane {
    private static final double GAP = 10;

    private final QuestionGroup asked;
    private final ScenarioDocument document;
    private final Function<Key, KeyRow> maker;
    private final Node above;
    private final List<KeyRow> rows = new ArrayList<>();
    private final Map<String, Label> headings = new LinkedHashMap<>();
    private final Map<String, StringProperty> sectionsWrong = new LinkedHashMap<>();
    private List<String> wanted = List.of();
    private boolean explained = true;

    /**
     * Folded, with nothing in it yet.
     *
     * @param asked the question
     * @param document what is changed
     * @param maker makes the row of a key
     * @param above stands over all rows; may be null
     */
    QuestionPane(QuestionGroup asked, ScenarioDocument document, Function<Key, KeyRow> maker, Node above) {
        this.asked = asked;
        this.document = document;
        this.maker = maker;
        this.above = above;
        setId("asked-" + asked.name().toLowerCase(Locale.ROOT));
        getStyleClass().add("asked");
        setAnimated(false);
        setExpanded(false);
        setMinWidth(0);
        expandedProperty().addListener((value, before, now) -> {
            rows();
            show();
        });
        tell();
    }

    /** Its rows, made now if they were not yet. */
    List<KeyRow> rows() {
        if (rows.isEmpty()) {
            fill();
            tell();
        }
        return rows;
    }

    private void fill() {
        VBox content = new VBox(GAP);
        content.getStyleClass().add("asked-content");
        if (above != null) {
            content.getChildren().add(above);
        }
        Map<String, List<Key>> keys = new LinkedHashMap<>();
        asked.keys()
                .forEach(key -> keys.computeIfAbsent(KeyLabels.headed(key.section()), s -> new ArrayList<>())
                        .add(key));
        boolean headed = keys.size() > 1 && asked != QuestionGroup.FOOD;
        keys.forEach((section, under) -> {
            open(section, headed && !section.equals("dish"), content);
            under.forEach(key -> rows.add(maker.apply(key)));
            content.getChildren().addAll(rows.subList(rows.size() - under.size(), rows.size()));
        });
        setContent(content);
    }

    private void open(String section, boolean withHeading, VBox content) {
        if (withHeading) {
            Label heading = new Label(KeyLabels.heading(section));
            heading.getStyleClass().add("section-heading");
            heading.managedProperty().bind(heading.visibleProperty());
            headings.put(section, heading);
            content.getChildren().add(heading);
        }
        StringProperty wrong = new SimpleStringProperty("");
        sectionsWrong.put(section, wrong);
        content.getChildren().add(new ErrorMark(wrong));
    }

    /** Tells what is wrong: how many in the head, and at a section what is said of it as a whole. */
    void tell() {
        List<Problem> mine =
                document.state().problems().stream().filter(this::isMine).toList();
        setText(asked.words() + (mine.isEmpty() ? "" : "  " + mine.size() + " wrong"));
        setGraphic(mine.isEmpty() ? null : ErrorMark.sign());
        sectionsWrong.forEach((section, wrong) -> wrong.set(mine.stream()
                .filter(problem -> Keys.find(problem.key()).isEmpty()
                        && KeyLabels.headed(problem.key()).equals(section))
                .map(Problem::text)
                .findFirst()
                .orElse("")));
    }

    private boolean isMine(Problem problem) {
        return Keys.find(problem.key())
                .or(() -> Keys.all().stream()
                        .filter(key -> key.path().startsWith(problem.key() + "."))
                        .findFirst())
                .filter(key -> QuestionGroup.of(key) == asked)
                .isPresent();
    }

    /**
     * Shows the rows that have a meaning, or those that answer the words looked for and those where something wrong stands.
     *
     * @param words looked for; none shows all that have a meaning
     * @param explain whether explanations are shown
     * @return whether any is shown
     */
    boolean show(List<String> words, boolean explain) {
        wanted = words;
        explained = explain;
        if (!words.isEmpty()) {
            rows();
        }
        return show();
    }

    private boolean show() {
        if (rows.isEmpty()) {
            return asked.keys().stream()
                    .anyMatch(key ->
                            KeyApplicability.whyNot(key, document.state()).isEmpty());
        }
        Map<String, Boolean> sections = new LinkedHashMap<>();
        for (KeyRow row : rows) {
            boolean shown = wanted.isEmpty()
                    ? KeyApplicability.whyNot(row.model().key(), document.state())
                            .isEmpty()
                    : row.answers(wanted)
                            || document.state()
                                    .wrongAt(row.model().key().path())
                                    .isPresent();
            row.setVisible(shown);
            row.setManaged(shown);
            row.setExplained(explained || !wanted.isEmpty());
            sections.merge(KeyLabels.headed(row.model().key().section()), shown, Boolean::logicalOr);
        }
        headings.forEach((section, heading) -> heading.setVisible(sections.getOrDefault(section, false)));
        return sections.containsValue(true);
    }
}
