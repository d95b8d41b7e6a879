package simmerpoint.answer.trace;

import java.util.Comparator;
import java.util.List;
import simmerpoint.answer.words.DishWords;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.Ledger;

/**
 * The largest loss of a traced scenario.
 *
 * @param watts lost there, W
 * @param outline sunlight on the dish's outline, W
 * @param words what becomes of it, after "that"
 */
record LargestLoss(Estimate watts, Estimate outline, String words) {
    /** A largest loss below this share of the light is not worth a name. */
    private static final double NEXT_TO_NOTHING = 0.005;

    static LargestLoss of(TraceResult result) {
        Ledger ledger = result.ledger();
        String noun = TargetWords.of(result.scenario().target()).noun();
        Estimate all = ledger.outline();
        return List.of(
                        new LargestLoss(
                                less(ledger.gap(), ledger.covered()),
                                all,
                                DishWords.bareLoss(result.scenario().dish())),
                        new LargestLoss(ledger.covered(), all, "falls on the mask over part of the mirror"),
                        new LargestLoss(
                                ledger.shaded(), all, "is kept off the mirrors by the " + noun + "\u2019s own shadow"),
                        new LargestLoss(ledger.mirrorLoss(), all, "is absorbed by the mirrors and the dust on them"),
                        new LargestLoss(ledger.scattered(), all, "is scattered by the mirrors to all sides"),
                        new LargestLoss(ledger.stopped(), all, "is stopped by the grate or arm under the " + noun),
                        new LargestLoss(
                                less(ledger.missed(), ledger.stopped()), all, "is reflected but goes past the " + noun))
                .stream()
                .max(Comparator.comparingDouble(loss -> loss.watts().value()))
                .orElseThrow();
    }

    /** A loss but for a part that has a name of its own; its error is that of the whole. */
    private static Estimate less(Estimate whole, Estimate part) {
        return new Estimate(whole.value() - part.value(), whole.standardError());
    }

    /** A whole sentence, with the light it is part of. */
    String sentence(FigureFormat figures) {
        if (nextToNothing()) {
            return hardlyAny(figures);
        }
        return "Of the " + figures.plainWatts(outline) + " of sunlight on the dish's outline, the largest loss is "
                + tail(figures);
    }

    /** The same without the light it is part of. */
    String brief(FigureFormat figures) {
        return nextToNothing() ? hardlyAny(figures) : "Largest loss: " + tail(figures);
    }

    /** "159 W (17 %) is absorbed by the mirrors and the dust on them". */
    String figure(FigureFormat figures) {
        return nextToNothing()
                ? "hardly any light is lost"
                : figures.plainWatts(watts) + " (" + figures.percent(watts.value() / outline.value()) + ") " + words;
    }

    private boolean nextToNothing() {
        return watts.value() < NEXT_TO_NOTHING * outline.value();
    }

    private String hardlyAny(FigureFormat figures) {
        return "Hardly any of the " + figures.plainWatts(outline) + " of sunlight on the dish's outline is lost.";
    }

    private String tail(FigureFormat figures) {
        return figures.plainWatts(watts) + " (" + figures.percent(watts.value() / outline.value()) + ") that " + words
                + ".";
    }
}
