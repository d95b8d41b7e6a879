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
    private static final double ROUNDING = 1e-9;
    private static final int FINEST = 3;

    Section section() {
        int decimals = decimals();
        SectionBuilder out = Section.headed(MoveWords.heading(move.move()))
                .say("Measured from where the pan stands: plus is " + MoveWords.positive(move.move()) + ", minus is "
                        + MoveWords.negative(move.move()) + ".");
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

    /** Places in round steps from where the pan stands. */
    private List<PanPosition> shown() {
        double step = lengths.tableStep(move.toMetres() - move.fromMetres());
        int first = (int) Math.ceil(move.fromMetres() / step - ROUNDING);
        int last = (int) Math.floor(move.toMetres() / step + ROUNDING);
        return IntStream.rangeClosed(first, last)
                .mapToObj(k -> move.at(Math.max(move.fromMetres(), Math.min(move.toMetres(), k * step))))
                .toList();
    }

    /** So many that no border is shown on the wrong side of a position in the table, nor at the same place. */
    private int decimals() {
        int decimals = 0;
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
                                ? lengths.number(at, decimals) >= lengths.number(border, decimals)
                                : lengths.number(at, decimals) < lengths.number(border, decimals)));
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
        out.figure("to " + lengths.alone(move.toMetres(), decimals), "end of the search");
    }

    private String spread(LevelBorder border) {
        boolean low = Double.isFinite(border.lowMetres());
        boolean high = Double.isFinite(border.highMetres());
        if (low && high) {
            return "; four in five such cookers: " + lengths.alone(border.lowMetres()) + " to "
                    + lengths.alone(border.highMetres());
        }
        String end = low
                ? "one such cooker in ten before " + lengths.alone(border.lowMetres()) + ", "
                : high ? "one such cooker in ten after " + lengths.alone(border.highMetres()) + ", " : "";
        return "; " + end + "some never";
    }
}
