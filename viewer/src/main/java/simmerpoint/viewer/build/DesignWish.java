package simmerpoint.viewer.build;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;
import javafx.util.StringConverter;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.heat.HeatLevel;

/** What is wanted of a dish that is searched for: a heat level, or so many watts. */
final class DesignWish {
    /**
     * A wish.
     *
     * @param level wanted, if it is a level
     * @param watts wanted, if it is not
     */
    record Wish(Optional<HeatLevel> level, double watts) {
        String words() {
            return level.map(each -> "make this pan " + verb(each))
                    .orElse("bring " + Math.round(watts) + "\u00a0W into the water");
        }

        private static String verb(HeatLevel level) {
            return level == HeatLevel.KEEP_WARM ? "keep food warm" : LevelWords.of(level);
        }
    }

    private static final List<Wish> ALL = List.of(
            new Wish(Optional.of(HeatLevel.BOIL), 0),
            new Wish(Optional.of(HeatLevel.SIMMER), 0),
            new Wish(Optional.of(HeatLevel.KEEP_WARM), 0),
            new Wish(Optional.of(HeatLevel.FAST_BOIL), 0),
            new Wish(Optional.empty(), 200),
            new Wish(Optional.empty(), 300),
            new Wish(Optional.empty(), 400),
            new Wish(Optional.empty(), 500),
            new Wish(Optional.empty(), 700),
            new Wish(Optional.empty(), 1000));

    private final ObjectProperty<Wish> wish = new SimpleObjectProperty<>(this, "wish", ALL.get(0));
    private final ChoiceBox<Wish> box = new ChoiceBox<>();

    DesignWish() {
        box.setId("design-wish");
        box.getItems().setAll(ALL);
        box.valueProperty().bindBidirectional(wish);
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(Wish each) {
                return each == null ? "" : each.words();
            }

            @Override
            public Wish fromString(String text) {
                throw new UnsupportedOperationException("wishes are not typed");
            }
        });
        box.setTooltip(new Tooltip("What the dish must do in the sun of this design"));
        box.setAccessibleText("What the dish must do");
        box.setMinWidth(Region.USE_PREF_SIZE);
    }

    ObjectProperty<Wish> wishProperty() {
        return wish;
    }

    /** Words and a box to choose in. */
    Node[] nodes() {
        Label before = new Label("The dish must");
        before.setMinWidth(Region.USE_PREF_SIZE);
        return new Node[] {before, box};
    }
}
