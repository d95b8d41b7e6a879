package simmerpoint.answer.pan;

import java.util.List;
import java.util.stream.IntStream;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.pan.LevelBorder;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanPosition;

/** One move: where the heat level changes, and what the pan gets at some positions. */
record MoveSection(PanMove move, FigureFormat figures, MoveWords lengths) {
    private static final int ROWS = 10;
    private static final int FINEST = 3;

    Section section() {
        int decimals = decimals();
        SectionBuilder out = Section.headed(MoveWords.heading(move.move()))
                .say("Lengths are counted from where the pan stands: above 0 " + MoveWords.positive(move.move())
                        + ", below 0 " + MoveWords.negative(move.move()) + ".");
        levels(out, decimals);
        return out.add(Columns.<PanPosition>none()
                        .with("at", p -> lengths.alone(p.offsetMetres(), decimals))
                        .with("into the\nwater", p -> figures.plainWatts(p.cookingPower()))
                        .with("light\ntaken up", p -> figures.plainWatts(p.absorbed()))
                        .with("level", p -> LevelWords.of(p.level()))
                        .with("hottest", p -> figures.plainFlux(new Estimate(p.hottestFlux(), 0.1 * p.hottestFlux())))
                        .with("wall\ngets", p -> figures.percent(p.wallShare()))
                        .table(shown()))
                .build();
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

    private void levels(SectionBuilder out, int decimals) {
        out.figure(
                "from " + lengths.alone(move.fromMetres(), decimals),
                LevelWords.of(move.stretches().get(0).level()));
        for (LevelBorder border : move.borders()) {
            out.figure(
                    "from " + lengths.alone(border.offsetMetres(), decimals),
                    LevelWords.of(border.after()) + spread(border));
        }
        out.figure("to " + lengths.alone(move.toMetres(), decimals), "not looked at farther");
    }

    private String spread(LevelBorder border) {
        boolean low = Double.isFinite(border.lowMetres());
        boolean high = Double.isFinite(border.highMetres());
        if (low && high) {
            return "; four in five such: " + lengths.alone(border.lowMetres()) + " to "
                    + lengths.alone(border.highMetres());
        }
        String end = low
                ? "from " + lengths.alone(border.lowMetres())
                : high ? "up to " + lengths.alone(border.highMetres()) : "";
        return "; four in five such: " + end + (end.isEmpty() ? "" : ", ") + "or not at all";
    }
}
