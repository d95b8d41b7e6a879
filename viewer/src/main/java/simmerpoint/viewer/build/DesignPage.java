package simmerpoint.viewer.build;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import simmerpoint.answer.design.DesignAnswer;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.chart.DesignChart;
import simmerpoint.study.design.DesignChoice;
import simmerpoint.study.design.DesignResult;
import simmerpoint.study.design.DishCandidate;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.parts.AnswerView;
import simmerpoint.viewer.parts.DrawingView;
import simmerpoint.viewer.theme.Theme;

/** What a search for a design has found: dishes to take, a picture of all of them, and the answer in words. */
final class DesignPage {
    private DesignPage() {}

    static Node of(DesignResult result, UnitSystem units, Theme theme, Consumer<DishCandidate> take) {
        FlowPane cards = new FlowPane(10, 10);
        cards.setId("design-cards");
        card("Fewest panels", "fewest", result.fewestPanels(), units, take, cards);
        card("Smallest dish", "smallest", result.smallestDish(), units, take, cards);
        card("Easiest to aim", "easiest", result.easiestAim(), units, take, cards);
        card("Cheapest", "cheapest", result.cheapest(), units, take, cards);
        List<Node> parts = new java.util.ArrayList<>();
        parts.add(cards);
        if (!result.front().isEmpty()) {
            parts.add(DrawingView.of(
                    "design-chart", "Diameter by number of panels", new DesignChart(result, units), theme));
        }
        parts.add(new AnswerView(DesignAnswer.of(result, units).sections(), true));
        VBox page = new VBox(12);
        page.getChildren().setAll(parts);
        return page;
    }

    private static void card(
            String title,
            String id,
            Optional<DesignChoice> choice,
            UnitSystem units,
            Consumer<DishCandidate> take,
            FlowPane cards) {
        choice.ifPresent(found -> {
            Label name = new Label(title);
            name.getStyleClass().add("section-heading");
            Label words = new Label(words(found, units));
            words.setWrapText(true);
            words.setMinHeight(Region.USE_PREF_SIZE);
            Button button = new Button("Take this one");
            button.setId("design-take-" + id);
            button.setTooltip(new Tooltip("Change the design to this dish; undo takes that back"));
            button.setOnAction(e -> take.accept(found.candidate()));
            VBox card = new VBox(4, name, words, button);
            card.getStyleClass().add("design-card");
            cards.getChildren().add(card);
        });
    }

    private static String words(DesignChoice found, UnitSystem units) {
        FigureFormat figures = new FigureFormat(units);
        DishCandidate dish = found.candidate();
        return figures.length(dish.diameterCentimetres() / 100.0) + " across, focal length "
                + figures.length(dish.focalCentimetres() / 100.0) + ",\n"
                + dish.layout().panels() + " panels ("
                + DesignAnswer.cut(dish.layout()) + "),\n" + figures.plainWatts(found.watts());
    }
}
