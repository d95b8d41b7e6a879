package simmerpoint.viewer.comparison;

import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import simmerpoint.units.UnitSystem;

/** The kept designs to choose from: which of them is held against the current design. */
final class KeptList extends FlowPane {
    private final ComparisonModel model;
    private final ObservableValue<UnitSystem> units;

    KeptList(ComparisonModel model, ObservableValue<UnitSystem> units) {
        super(6, 4);
        this.model = model;
        this.units = units;
        setId("kept-list");
        model.kept().addListener((ListChangeListener<KeptDesign>) change -> show());
        model.stateProperty().addListener((value, before, now) -> show());
        units.addListener((value, before, now) -> show());
        show();
    }

    /** Number and what sets it apart from the current design. */
    static String name(ComparisonModel model, KeptDesign design, UnitSystem units) {
        int number = model.kept().indexOf(design) + 1;
        String apart = model.stateProperty()
                .get()
                .now()
                .map(now -> PairFigures.changed(
                        PairFigures.differing(design, now).stream()
                                .map(row -> row.in(units))
                                .toList(),
                        true))
                .orElse("");
        return "Kept " + number + (apart.isEmpty() ? "" : ": " + apart);
    }

    private void show() {
        List<KeptDesign> all = List.copyOf(model.kept());
        while (getChildren().size() > all.size()) {
            getChildren().remove(getChildren().size() - 1);
        }
        while (getChildren().size() < all.size()) {
            getChildren().add(button(getChildren().size()));
        }
        for (int k = 0; k < all.size(); k++) {
            ToggleButton button = (ToggleButton) getChildren().get(k);
            button.setText(name(model, all.get(k), units.getValue()));
            button.setSelected(model.stateProperty()
                    .get()
                    .kept()
                    .filter(all.get(k)::equals)
                    .isPresent());
        }
    }

    private ToggleButton button(int number) {
        ToggleButton button = new ToggleButton();
        button.setId("kept-" + (number + 1));
        button.setTooltip(new Tooltip("Compare this kept design with the current one"));
        button.setOnAction(e -> {
            model.choose(model.kept().get(number));
            show();
        });
        return button;
    }
}
