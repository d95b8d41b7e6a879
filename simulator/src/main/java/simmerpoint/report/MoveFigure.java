package simmerpoint.report;

import java.util.List;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.drawing.Stack;
import simmerpoint.drawing.chart.LevelLegend;
import simmerpoint.drawing.chart.MoveChart;
import simmerpoint.study.pan.LevelStretch;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanResult;
import simmerpoint.units.UnitSystem;

/** The chart of a move with its words for the page. */
final class MoveFigure {
    private MoveFigure() {}

    static HtmlFigure of(PanMove move, PanResult result, UnitSystem system) {
        boolean recommended =
                result.simmer().filter(p -> p.move() == move.move()).isPresent();
        return HtmlFigure.drawing(
                new Stack(MoveChart.of(result, move.move(), system), LevelLegend.of()),
                description(move),
                "Solid, left scale: watts into the water. Dashed, right scale: hottest spot. ▼ where the pan stands."
                        + (recommended ? " Flag: recommended for a simmer." : "")
                        + " Bars at the foot: four in five pans like this one change their level there.");
    }

    private static String description(PanMove move) {
        List<LevelStretch> stretches = move.stretches();
        return MoveWords.heading(move.move())
                + ". Watts into the water and hottest spot over the offset from where the pan stands, from "
                + LevelWords.of(stretches.get(0).level()) + " at the one end to "
                + LevelWords.of(stretches.get(stretches.size() - 1).level())
                + " at the other; the list and the table below hold the same figures.";
    }
}
