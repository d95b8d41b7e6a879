package simmerpoint.answer.trace;

import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.DishWords;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.Ledger;
import simmerpoint.target.ZoneLight;
import simmerpoint.units.UnitSystem;

/**
 * The ledger as bars: every line a share of the sunlight on the dish's outline.
 *
 * @param result whose light
 * @param figures how they are written
 * @param words of pan or disc
 * @param errors whether every line shows its standard error
 */
public record LedgerSection(TraceResult result, FigureFormat figures, TargetWords words, boolean errors) {
    /** The ledger of a result, in as many digits as a reader uses. */
    public static Section of(TraceResult result, UnitSystem system) {
        return new LedgerSection(
                        result,
                        new FigureFormat(system),
                        TargetWords.of(result.scenario().target()),
                        false)
                .section();
    }

    Section section() {
        SectionBuilder out = Section.headed("Where the sunlight goes");
        Ledger ledger = result.ledger();
        out.add(bar(0, "sunlight on the outline", ledger.outline()));
        out.add(bar(1, DishWords.bare(result.scenario()), ledger.gap()));
        if (ledger.covered().value() > 0) {
            out.add(bar(2, "on the mask", ledger.covered()));
        }
        if (words.isPan()) {
            out.add(bar(1, "shaded by the pan", ledger.shaded()));
        }
        out.add(bar(1, "mirrors and dust", ledger.mirrorLoss()));
        out.add(bar(1, "scattered", ledger.scattered()));
        out.add(bar(1, "missed the " + words.noun(), ledger.missed()));
        if (ledger.stopped().value() > 0) {
            out.add(bar(2, "stopped by grate or arm", ledger.stopped()));
        }
        out.add(bar(1, "caught by the " + words.noun(), ledger.caught()));
        if (words.isPan()) {
            out.add(bar(2, "underside", ledger.underside()));
            out.add(bar(2, "wall", ledger.wall()));
            out.add(bar(2, "lid", ledger.lid()));
            out.add(bar(0, "straight from the sun", ledger.directOnPan()));
            out.add(bar(0, "taken up by the pan", ledger.absorbed()));
            result.heat().filter(heat -> heat.cookingPower().value() > 0).ifPresent(heat -> water(out, heat));
        }
        zones(out);
        return out.build();
    }

    /** The share that each zone of the dish has in what is caught. */
    private void zones(SectionBuilder out) {
        for (ZoneLight zone : result.ledger().zones()) {
            out.add(bar(0, "sunlight on zone " + zone.name(), zone.incident()));
            out.add(bar(1, "sent by its mirrors", zone.reflected()));
            out.add(bar(2, "caught by the " + words.noun(), zone.caught()));
        }
    }

    /** What becomes of the heat at the temperature of the cooking power. */
    private void water(SectionBuilder out, HeatResult heat) {
        double absorbed = heat.absorbed().total();
        double lost = heat.cookingLossWatts();
        double water = heat.cookingPower().value();
        String at = new HeatWords(figures.system()).temperature(heat.cookingCelsius());
        out.add(bar(1, "lost at " + at, Estimate.exact(lost)));
        out.add(bar(1, "warms the pan itself", Estimate.exact(absorbed - lost - water)));
        out.add(bar(1, "into the water", heat.cookingPower()));
    }

    private Item bar(int depth, String label, Estimate watts) {
        double share = watts.value() / result.ledger().outline().value();
        return new Item.Bar(
                depth, label, errors ? figures.watts(watts) : figures.plainWatts(watts), share, figures.percent(share));
    }
}
