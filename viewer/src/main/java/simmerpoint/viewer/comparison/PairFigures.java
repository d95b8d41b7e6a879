package simmerpoint.viewer.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import simmerpoint.answer.compare.CompareAnswer;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.pan.Pan;
import simmerpoint.quantities.OneLine;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.variants.DifferingKey;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.study.compare.CompareStudy;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.compare.Comparison;
import simmerpoint.study.paired.GluingLuck;
import simmerpoint.study.paired.PairedTrace;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.TypedQuantity;
import simmerpoint.units.UnitSystem;

/** Two designs traced with the same samples, in figures and in the words of the comparison. */
final class PairFigures {
    /** What the two are called in sentences. */
    static final String KEPT = "the kept design";

    static final String NOW = "the current one";

    private static final int MOST_IN_A_NAME = 2;
    private static final String UNKNOWN = "\u2026";
    private static final String UNSEEN = "no difference seen";

    private final Variant keptVariant;
    private final Variant nowVariant;
    private final PairedTrace kept;
    private final PairedTrace now;
    private final Optional<GluingLuck> luck;

    PairFigures(
            KeptDesign kept, KeptDesign now, PairedTrace keptTraced, PairedTrace nowTraced, Optional<GluingLuck> luck) {
        this.luck = luck;
        keptVariant = kept.variant(KEPT);
        nowVariant = now.variant(NOW);
        this.kept = keptTraced;
        this.now = nowTraced;
    }

    /**
     * One figure of both.
     *
     * @param name of the figure
     * @param kept of the kept design
     * @param now of the current one
     * @param difference between them, in words; empty where figures say it all
     */
    record Row(String name, String kept, String now, String difference) {
        /** The same of a key, with what was typed in the other system of units changed to this one. */
        Row in(UnitSystem units) {
            return Keys.find(name)
                    .filter(key -> key.kind() == Key.Kind.QUANTITY)
                    .map(key -> new Row(name, in(units, key, kept), in(units, key, now), difference))
                    .orElse(this);
        }

        /** The same while it is not known, so that a table keeps its lines. */
        Row unknown() {
            return new Row(name, UNKNOWN, UNKNOWN, "");
        }

        private static String in(UnitSystem units, Key key, String typed) {
            return TypedQuantity.of(typed, key.dimension())
                    .map(quantity -> quantity.in(units).text().replace(" ", FigureFormat.NBSP))
                    .orElse(typed);
        }
    }

    /**
     * Both compared as the command line does it, with how far each may be off the sun; without that if one of them could not
     * stand aimed dead on.
     */
    Comparison comparison(TraceOptions asked) {
        List<Variant> both = List.of(keptVariant, nowVariant);
        return CompareStudy.firstImpossible(both).isPresent()
                ? comparison()
                : CompareStudy.run(both, asked.withPrecision(0), Progress.NONE);
    }

    /** As that, of what is traced already, the better first. */
    Comparison comparison() {
        return CompareStudy.ofTraces(List.of(keptVariant, nowVariant), List.of(kept, now), luck);
    }

    /** Which is best and by how much. */
    String sentence(UnitSystem units) {
        return CompareAnswer.first(comparison(), units);
    }

    /** The figures of both below each other. */
    List<Row> rows(UnitSystem units) {
        FigureFormat figures = new FigureFormat(units);
        List<Row> rows = new ArrayList<>();
        boolean pan = now.trace().scenario().target() instanceof Pan;
        Estimate sampled = now.watts().usefulBeyond(kept.watts());
        Estimate watts = luck.map(built -> built.widened(
                        sampled,
                        dishes -> dishes.get(1).useful().value()
                                - dishes.get(0).useful().value()))
                .orElse(sampled);
        rows.add(new Row(
                pan ? "into the water" : "on the disc",
                figures.watts(kept.watts().useful()),
                figures.watts(now.watts().useful()),
                difference(seen(comparison()), watts.value(), figures.watts(size(watts)), "more", "less")));
        Estimate keptPeak = kept.trace().spot().peakFlux();
        Estimate nowPeak = now.trace().spot().peakFlux();
        Estimate peak = new Estimate(
                nowPeak.value() - keptPeak.value(), Math.hypot(nowPeak.standardError(), keptPeak.standardError()));
        boolean peakSeen = Math.abs(peak.value()) > ComparedRow.SEEN_ERRORS * peak.standardError();
        rows.add(new Row(
                "hottest spot",
                figures.flux(keptPeak),
                figures.flux(nowPeak),
                difference(peakSeen, peak.value(), figures.flux(size(peak)), "stronger", "weaker")));
        Optional<BoilingOutcome> keptBoil = kept.trace().heat().map(HeatResult::boil);
        Optional<BoilingOutcome> nowBoil = now.trace().heat().map(HeatResult::boil);
        if (keptBoil.isPresent() || nowBoil.isPresent()) {
            rows.add(new Row("boils in", water(keptBoil, units), water(nowBoil, units), ""));
        }
        return rows;
    }

    private static boolean seen(Comparison comparison) {
        return comparison.top().size() < 2;
    }

    private static Estimate size(Estimate e) {
        return new Estimate(Math.abs(e.value()), e.standardError());
    }

    private static String difference(boolean seen, double value, String size, String more, String less) {
        return seen ? size + " " + (value > 0 ? more : less) : UNSEEN;
    }

    private static String water(Optional<BoilingOutcome> answer, UnitSystem units) {
        return answer.map(a -> water(a, units)).orElse(DifferingKey.NOTHING);
    }

    private static String water(BoilingOutcome answer, UnitSystem units) {
        if (answer instanceof BoilingOutcome.Boils boils) {
            return HeatWords.minutes(boils.seconds());
        }
        if (answer instanceof BoilingOutcome.MayBoil may) {
            return HeatWords.time(may.soonestSeconds()) + " or never";
        }
        return "never: " + new HeatWords(units).temperature(((BoilingOutcome.Never) answer).settlesCelsius());
    }

    /** At most two of the keys in which they differ, for a name: "slope-error 5 mrad, pull-back 0 cm". */
    static String changed(List<Row> differing, boolean ofKept) {
        if (differing.isEmpty() || differing.size() > MOST_IN_A_NAME) {
            return "";
        }
        return differing.stream()
                .map(row ->
                        row.name().substring(row.name().lastIndexOf('.') + 1) + " " + (ofKept ? row.kept() : row.now()))
                .collect(Collectors.joining(", "));
    }

    /** The keys in which they differ, each as typed or by default. */
    static List<Row> differing(KeptDesign kept, KeptDesign now) {
        return DifferingKey.of(List.of(kept.variant(KEPT), now.variant(NOW))).stream()
                .map(key -> new Row(
                        key.key().path(),
                        OneLine.of(key.values().get(0)),
                        OneLine.of(key.values().get(1)),
                        ""))
                .toList();
    }
}
