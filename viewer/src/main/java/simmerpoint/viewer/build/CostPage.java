package simmerpoint.viewer.build;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.MoneyWords;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.viewer.editing.KeyList;
import simmerpoint.viewer.parts.AnswerView;
import simmerpoint.viewer.workspace.Workspace;
import simmerpoint.workshop.BuildCost;

/** What a design costs: prices to fill in, and beside them what comes of them. */
final class CostPage {
    private static final List<String> PRICES = List.of(
            "build.prices.currency",
            "build.prices.rib-sheet",
            "build.prices.panel-sheet",
            "build.prices.film",
            "build.prices.stand",
            "build.prices.rest");

    private CostPage() {}

    /** The fields for prices. */
    static Node prices(Workspace work) {
        KeyList list = new KeyList(work.document(), work.units(), work.dialogs(), PRICES);
        list.setId("cost-prices");
        return list;
    }

    /** What comes of them. */
    static Node of(Optional<BuildCost> cost, Workspace work) {
        return new AnswerView(List.of(section(cost, work)), false);
    }

    private static Section section(Optional<BuildCost> cost, Workspace work) {
        SectionBuilder out = Section.headed("Cost");
        if (cost.isEmpty()) {
            return out.say(
                            "Fill in what a sheet and a roll cost where you buy them; the total and the cost of each watt follow.")
                    .build();
        }
        BuildCost all = cost.get();
        MoneyWords money = new MoneyWords(all.currency());
        out.figure("ribs", money.amount(all.ribs()))
                .figure("panels", money.amount(all.panels()))
                .figure("film", money.amount(all.film()))
                .figure("tripod and mount", money.amount(all.stand()))
                .figure("all else", money.amount(all.rest()))
                .figure("all together", money.amount(all.total()));
        OptionalDouble each = all.perWatt(watts(work));
        each.ifPresent(amount -> out.figure("for each watt", money.perWatt(amount)));
        return out.build();
    }

    private static double watts(Workspace work) {
        return work.settled().map(CostPage::likely).orElse(0.0);
    }

    private static double likely(TraceResult result) {
        return result.likely()
                .map(likely -> likely.power().likely())
                .orElse(result.useful().value());
    }

    /** Both side by side. */
    static Node beside(Node prices, Node study) {
        HBox.setHgrow(study, Priority.ALWAYS);
        VBox left = new VBox(prices);
        left.setMinWidth(300);
        left.setMaxWidth(420);
        HBox both = new HBox(16, left, study);
        both.setId("build-cost-page");
        both.getStyleClass().add("cost-page");
        return both;
    }
}
