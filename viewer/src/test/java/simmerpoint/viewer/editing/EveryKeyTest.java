package simmerpoint.viewer.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.AccessibleAttribute;
import javafx.scene.control.Control;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.document.ScenarioDocument;

/** Walks all keys of the scenario: none may be without its control. */
class EveryKeyTest {
    private static EditorPane editor(UnitSystem system) {
        return FxThread.get(() ->
                new EditorPane(new ScenarioDocument(), new SimpleObjectProperty<>(system), Editors.answering(null)));
    }

    @Test
    void everyKeyHasAControlOfItsKindUnderOneQuestion() {
        EditorPane editor = editor(UnitSystem.METRIC);
        for (Key key : Keys.all()) {
            Control control = editor.row(key.path())
                    .orElseThrow(() -> new AssertionError("no control for " + key.path()))
                    .control();
            Class<? extends Control> wanted = switch (key.kind()) {
                case WORD -> WordBox.class;
                case SWITCH -> SwitchBox.class;
                default -> ValueField.class;
            };
            assertInstanceOf(wanted, control, key.path());
            assertTrue(control.isFocusTraversable(), key.path());
        }
        long rows = editor.groups().stream()
                .mapToLong(group -> ((QuestionPane) group).rows().size())
                .sum();
        assertEquals(Keys.all().size(), rows);
    }

    @Test
    void everyKeyOfASectionThatIsNamedStandsUnderItsQuestion() {
        Keys.all().forEach(key -> assertNotEquals(QuestionGroup.REST, QuestionGroup.of(key), key.path()));
    }

    /** A screen reader hears what the eye reads: name, explanation, range, default. */
    @Test
    void everyControlSaysWhatItIs() {
        for (UnitSystem system : UnitSystem.values()) {
            EditorPane editor = editor(system);
            for (Key key : Keys.all()) {
                Control control = editor.row(key.path()).orElseThrow().control();
                String help =
                        ((String) control.queryAccessibleAttribute(AccessibleAttribute.HELP)).replace('\u00a0', ' ');
                boolean apart = help.startsWith("Not used now: ");
                assertFalse(control.getAccessibleText().isBlank(), key.path());
                assertTrue(apart || help.contains(key.sentence()), key.path() + ": " + help);
                boolean angle = key.range() != null && system == UnitSystem.METRIC;
                assertTrue(
                        apart
                                || !angle
                                || help.toLowerCase(Locale.ROOT)
                                        .contains(key.allowed().toLowerCase(Locale.ROOT)),
                        help);
            }
        }
    }

    @Test
    void theWordsOfChoiceAreThoseOfTheKeyWithFiguresAndSourceOfMaterials() {
        Key material = Keys.find("mirror.material").orElseThrow();
        for (String word : material.words()) {
            CatalogueEntry known = CatalogueEntry.of(material, word).orElseThrow(() -> new AssertionError(word));
            assertEquals(word.equals("own figures"), known.source().isEmpty(), word);
        }
        for (String path : List.of("pan.finish", "pan.lid-finish", "pan.material")) {
            Key key = Keys.find(path).orElseThrow();
            key.words()
                    .forEach(word -> assertFalse(
                            CatalogueEntry.of(key, word).orElseThrow().source().isEmpty(), word));
        }
        Key cut = Keys.find("dish.surface.cut").orElseThrow();
        cut.words().forEach(word -> assertTrue(CatalogueEntry.of(cut, word).isPresent(), word));
    }

    @Test
    void everySpanLiesInTheRangeOfItsKey() {
        for (Key key : Keys.all()) {
            Optional.ofNullable(key.usual()).ifPresent(span -> {
                assertTrue(
                        span.low() >= key.range().low()
                                && span.high() <= key.range().high(),
                        key.path());
                assertTrue(span.low() < span.high(), key.path());
            });
        }
    }
}
