package simmerpoint.answer.pan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.pan.LevelBorder;
import simmerpoint.study.pan.LevelStretch;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.units.UnitSystem;

/** One move: where the heat level changes, and what the pan gets at some positions. */
final class MoveSection {
    private static final int ROWS = 10;
    private static final int FINEST = 3;

    private final PanMove move;
    private final FigureFormat figures;
    private final MoveWords lengths;
    private final int decimals;
    private final List<Item> items = new ArrayList<>();

    private MoveSection(PanMove move, UnitSystem system) {
        this.move = move;
        figures = new FigureFormat(system);
        lengths = new MoveWords(system);
        decimals = decimals();
    }

    static Section of(PanMove move, UnitSystem system) {
        return new MoveSection(move, system).build();
    }

    private Section build() {
        items.add(new Item.Sentence("Lengths are counted from where the pan stands: above 0 "
                + MoveWords.positive(move.move()) + ", below 0 " + MoveWords.negative(move.move()) + "."));
        levels();
        List<List<String>> rows = shown().stream().map(this::row).toList();
        items.add(new Item.Table(List.of("at", "heat in", "level", "hottest", "wall gets"), rows));
        return new Section(MoveWords.heading(move.move()), items);
    }

    /** The positions in the table. */
    private List<PanPosition> shown() {
        List<PanPosition> positions = move.positions();
        int stride = Math.max(1, (positions.size() - 1) / ROWS);
        return IntStream.range(0, positions.size())
                .filter(k -> k % stride == 0)
                .mapToObj(positions::get)
                .toList();
    }

    /**
     * So many that no border is shown on the wrong side of a position in the table, nor at the same place; none where the
     * table goes by whole units.
     */
    private int decimals() {
        boolean whole = shown().stream()
                .allMatch(p -> lengths.number(p.offsetMetres(), FINEST)
                                .stripTrailingZeros()
                                .scale()
                        <= 0);
        int decimals = whole ? 0 : 1;
        while (decimals < FINEST && !inOrder(decimals)) {
            decimals++;
        }
        return decimals;
    }

    private boolean inOrder(int decimals) {
        return move.borders().stream()
                .mapToDouble(LevelBorder::offsetMetres)
                .allMatch(border -> shown().stream()
                        .mapToDouble(PanPosition::offsetMetres)
                        .allMatch(at -> at >= border
                                || lengths.number(at, decimals).compareTo(lengths.number(border, decimals)) < 0));
    }

    private String place(double offset) {
        return lengths.alone(offset, decimals);
    }

    private void levels() {
        List<LevelStretch> stretches = move.stretches();
        add("from " + place(move.fromMetres()), LevelWords.of(stretches.get(0).level()));
        for (int k = 1; k < stretches.size(); k++) {
            LevelBorder border = move.borders().get(k - 1);
            add("from " + place(border.offsetMetres()), LevelWords.of(border.after()) + spread(border));
        }
        add("to " + place(move.toMetres()), "not looked at farther");
    }

    private String spread(LevelBorder border) {
        boolean low = Double.isFinite(border.lowMetres());
        boolean high = Double.isFinite(border.highMetres());
        if (low && high) {
            return "; four in five pans: " + lengths.alone(border.lowMetres()) + " to "
                    + lengths.alone(border.highMetres());
        }
        String end = low
                ? "from " + lengths.alone(border.lowMetres())
                : high ? "up to " + lengths.alone(border.highMetres()) : "";
        return "; four in five pans: " + end + (end.isEmpty() ? "" : ", ") + "or not at all";
    }

    private List<String> row(PanPosition p) {
        double hottest = p.hottestFlux();
        return List.of(
                place(p.offsetMetres()),
                figures.plainWatts(p.absorbed()),
                LevelWords.of(p.level()),
                figures.plainFlux(new Estimate(hottest, 0.1 * hottest)),
                figures.percent(p.wallShare()));
    }

    private void add(String label, String value) {
        items.add(new Item.Figure(label, value));
    }
}
