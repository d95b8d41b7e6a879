package simmerpoint.answer.trace;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.DishWords;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.Ledger;

/** The ledger as bars: every line a share of the sunlight on the dish's outline. */
final class LedgerSection {
    private final FigureFormat figures;
    private final double whole;
    private final List<Item> items = new ArrayList<>();

    private LedgerSection(FigureFormat figures, double whole) {
        this.figures = figures;
        this.whole = whole;
    }

    static Section of(TraceResult result, FigureFormat figures, TargetWords words) {
        Ledger ledger = result.ledger();
        String bare = DishWords.bare(result.scenario().dish());
        return new LedgerSection(figures, ledger.outline().value()).build(ledger, words, bare);
    }

    private Section build(Ledger ledger, TargetWords words, String bare) {
        String noun = words.noun();
        line(0, "sunlight on the outline", ledger.outline());
        line(1, bare, ledger.gap());
        if (words.isPan()) {
            line(1, "shaded by the pan", ledger.shaded());
        }
        line(1, "mirrors and dust", ledger.mirrorLoss());
        line(1, "scattered", ledger.scattered());
        line(1, "missed the " + noun, ledger.missed());
        line(1, "caught by the " + noun, ledger.caught());
        if (words.isPan()) {
            line(2, "underside", ledger.underside());
            line(2, "wall", ledger.wall());
            line(2, "lid", ledger.lid());
            line(0, "straight from the sun", ledger.directOnPan());
            line(0, "taken up by the pan", ledger.absorbed());
        }
        return new Section("Where the sunlight goes", items);
    }

    private void line(int depth, String label, Estimate watts) {
        double share = watts.value() / whole;
        items.add(new Item.Bar(depth, label, figures.watts(watts), share, figures.percent(share)));
    }
}
