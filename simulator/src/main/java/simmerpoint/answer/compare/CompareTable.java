package simmerpoint.answer.compare;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.quantities.VariantNames;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.aim.SunTrack;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.compare.Comparison;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.units.UnitSystem;

/** The compared cookers row by row, the best first, as a table for a window of 80 columns. */
record CompareTable(
        Comparison comparison, VariantNames names, CompareWords words, CompareCosts costs, UnitSystem system) {
    /** More rows are left to the files. */
    static final int MOST_ROWS = 64;

    private static final int FEW_ROWS = 8;

    private static final int USUAL_WIDTH = 80;
    private static final int INDENT = 2;
    private static final String FOUR_IN_FIVE = "four in\nfive\nW";
    private static final String NOTHING = "\u2013";

    /** Adds the table, and where the names are too long for it a list of them. */
    void addTo(SectionBuilder out) {
        int all = comparison.rows().size();
        List<ComparedRow> rows = comparison.rows().subList(0, Math.min(MOST_ROWS, all));
        int room = room(columns().table(rows));
        if (rows.stream().allMatch(row -> names.cell(row.variant()).length() <= room)) {
            out.add(columns()
                    .named(names.head(), row -> names.cell(row.variant()))
                    .table(rows));
        } else {
            rows.forEach(row -> out.say(number(row) + ": " + names.name(row.variant())));
            out.add(columns().named("no.", this::number).table(rows));
        }
        out.sayIf(
                rows.size() < all,
                "The best " + rows.size() + " of " + all + " are shown; --csv and --json write all of them.");
    }

    /** The best few, in the columns that decide. */
    void addShort(SectionBuilder out) {
        int all = comparison.rows().size();
        List<ComparedRow> rows = comparison.rows().subList(0, Math.min(FEW_ROWS, all));
        out.add(fewColumns()
                        .named(names.head(), row -> names.cell(row.variant()))
                        .table(rows))
                .sayIf(rows.size() < all, "The best " + rows.size() + " of " + all + ".");
    }

    private Columns<ComparedRow> fewColumns() {
        return Columns.<ComparedRow>none()
                .with(words.wattsHead(), this::watts)
                .withIf(isAnyLikely(), FOUR_IN_FIVE, this::range)
                .with("below\nbest\nW", this::wholeDifference)
                .withIf(words.anyPan(), "water\nboils in", this::boil)
                .with("panels\nto cut", words::panels)
                .withIf(costs.isAny(), costs.head(), costs::amount)
                .withIf(!comparison.quick(), "aim\nagain\nmin", this::again);
    }

    private String wholeDifference(ComparedRow row) {
        return row.place() == comparison.best().place()
                ? "best"
                : row.isSeenToDiffer() ? FigureFormat.fixed(-row.difference().value(), 0) : "none seen";
    }

    private String number(ComparedRow row) {
        return String.valueOf(comparison.rows().indexOf(row) + 1);
    }

    /** Columns left for names when the others stand as close as a table allows. */
    private static int room(Item.Table others) {
        return USUAL_WIDTH
                - INDENT
                - IntStream.range(0, others.heads().size())
                        .map(k -> others.widest(k) + 1)
                        .sum();
    }

    private Columns<ComparedRow> columns() {
        return Columns.<ComparedRow>none()
                .with(words.wattsHead(), this::watts)
                .withIf(isAnyLikely(), FOUR_IN_FIVE, this::range)
                .with("below\nthe best\nW", this::difference)
                .with("hot\nspot\nkW/m²", row -> flux(row.peakFlux()))
                .withIf(words.anyPan(), "water\nboils in", this::boil)
                .with("panels\nto cut", words::panels)
                .withIf(costs.isAny(), costs.head(), costs::amount)
                .withIf(!comparison.quick(), "best\nplace\nW", this::atBest)
                .withIf(!comparison.quick(), "aim\nagain\nmin", this::again);
    }

    private String again(ComparedRow row) {
        return drift(
                row,
                row.againSeconds().map(s -> CompareWords.minutes(s.value())),
                CompareWords.minutes(60 * AimTolerance.RANGE / SunTrack.FASTEST));
    }

    /** A dish without light has no drift to tell of; one that loses too little tells how far was looked. */
    private static String drift(ComparedRow row, Optional<String> found, String farthest) {
        boolean dark = !(row.ledger().caught().value() > 0);
        return dark ? NOTHING : found.orElse(">" + farthest);
    }

    private String boil(ComparedRow row) {
        return row.boil()
                .map(boil -> TimeWords.boil(boil, new HeatWords(system)))
                .orElse(NOTHING);
    }

    private FigureFormat figures() {
        return new FigureFormat(system);
    }

    private String watts(ComparedRow row) {
        return figures().plainWatts(row.useful()).replace(FigureFormat.NBSP + "W", "");
    }

    private boolean isAnyLikely() {
        return comparison.rows().stream().anyMatch(row -> row.likely().isPresent());
    }

    private String range(ComparedRow row) {
        return row.likely().map(LikelyResult::power).map(CompareTable::range).orElse(NOTHING);
    }

    private static String range(LikelyRange watts) {
        return LikelyWords.rounded(watts.low(), watts) + "\u2013" + LikelyWords.rounded(watts.high(), watts);
    }

    private String atBest(ComparedRow row) {
        return row.atBest()
                .map(best -> figures().plainWatts(best.watts()).replace(FigureFormat.NBSP + "W", ""))
                .orElse(NOTHING);
    }

    private String difference(ComparedRow row) {
        if (row.place() == comparison.best().place()) {
            return "best";
        }
        return row.isSeenToDiffer() ? figures().wattsAlone(row.difference().times(-1)) : "none seen";
    }

    private String flux(Estimate flux) {
        return FigureFormat.rounded(flux.value() / 1000, flux.relativeError() > 0.03 ? 2 : 3);
    }
}
