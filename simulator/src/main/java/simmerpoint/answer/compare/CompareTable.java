package simmerpoint.answer.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import simmerpoint.answer.Item;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.quantities.VariantNames;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.compare.Comparison;
import simmerpoint.units.UnitSystem;

/** The compared cookers row by row, the best first, as a table for a window of 80 columns. */
final class CompareTable {
    /** More rows are left to the files. */
    static final int MOST_ROWS = 64;

    private static final int USUAL_WIDTH = 80;
    private static final int INDENT = 2;
    private static final String NOTHING = "\u2013";

    private final Comparison comparison;
    private final VariantNames names;
    private final FigureFormat figures;
    private final HeatWords heat;
    private final CompareWords words;

    CompareTable(Comparison comparison, VariantNames names, CompareWords words, UnitSystem system) {
        this.comparison = comparison;
        this.names = names;
        this.words = words;
        figures = new FigureFormat(system);
        heat = new HeatWords(system);
    }

    /** The table, and where the names are too long for it a list of them. */
    List<Item> items() {
        List<ComparedRow> rows = comparison
                .rows()
                .subList(0, Math.min(MOST_ROWS, comparison.rows().size()));
        List<String> heads = heads();
        List<List<String>> cells = rows.stream().map(this::cells).toList();
        List<String> shown = rows.stream().map(row -> names.cell(row.variant())).toList();
        boolean fit = shown.stream().allMatch(name -> name.length() <= room(heads, cells));
        List<Item> items = new ArrayList<>();
        if (!fit) {
            IntStream.range(0, rows.size())
                    .forEach(k -> items.add(new Item.Sentence(
                            (k + 1) + ": " + names.name(rows.get(k).variant()))));
        }
        List<String> allHeads = new ArrayList<>(List.of(fit ? names.head() : "no."));
        allHeads.addAll(heads);
        List<List<String>> all = new ArrayList<>();
        for (int k = 0; k < rows.size(); k++) {
            List<String> row = new ArrayList<>(List.of(fit ? shown.get(k) : String.valueOf(k + 1)));
            row.addAll(cells.get(k));
            all.add(row);
        }
        items.add(new Item.Table(allHeads, all));
        if (rows.size() < comparison.rows().size()) {
            items.add(new Item.Sentence("The best " + rows.size() + " of "
                    + comparison.rows().size() + " are shown; --csv and --json write all of them."));
        }
        return items;
    }

    /** Columns left for names when the others stand as close as a table allows. */
    private static int room(List<String> heads, List<List<String>> rows) {
        int room = USUAL_WIDTH - INDENT;
        for (int k = 0; k < heads.size(); k++) {
            int widest = 0;
            for (String line : heads.get(k).split("\n")) {
                widest = Math.max(widest, line.length());
            }
            for (List<String> row : rows) {
                widest = Math.max(widest, row.get(k).length());
            }
            room -= widest + 1;
        }
        return room;
    }

    private List<String> heads() {
        List<String> heads = new ArrayList<>(List.of(words.wattsHead(), "below\nthe best\nW", "hot\nspot\nkW/m²"));
        if (words.anyPan()) {
            heads.add("water\nboils in");
        }
        heads.addAll(List.of("panels\nto cut", "aim\nwithin\n°", "drift\ntakes\nmin"));
        return heads;
    }

    private List<String> cells(ComparedRow row) {
        List<String> cells = new ArrayList<>(List.of(watts(row), difference(row), flux(row.peakFlux())));
        if (words.anyPan()) {
            cells.add(row.boil().map(boil -> TimeWords.boil(boil, heat)).orElse(NOTHING));
        }
        cells.add(words.panels(row));
        boolean dark = !(row.ledger().caught().value() > 0);
        Optional<Estimate> seconds = row.driftSeconds();
        double range = Math.toDegrees(AimTolerance.RANGE);
        cells.add(dark ? NOTHING : row.drift().map(CompareWords::degrees).orElse(">" + FigureFormat.fixed(range, 0)));
        double longest = AimTolerance.RANGE / ComparedRow.SUN_RATE;
        cells.add(
                dark
                        ? NOTHING
                        : seconds.map(s -> CompareWords.minutes(s.value()))
                                .orElse(">" + CompareWords.minutes(longest)));
        return cells;
    }

    private String watts(ComparedRow row) {
        return figures.plainWatts(row.absorbed()).replace(FigureFormat.NBSP + "W", "");
    }

    private String difference(ComparedRow row) {
        if (row.place() == comparison.best().place()) {
            return "best";
        }
        return row.isSeenToDiffer() ? figures.wattsAlone(row.difference().times(-1)) : "none seen";
    }

    private String flux(Estimate flux) {
        return FigureFormat.rounded(flux.value() / 1000, flux.relativeError() > 0.03 ? 2 : 3);
    }
}
