package simmerpoint.answer.trace;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Item;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatSentences;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

/** The three or four figures a builder asks for first: watts, minutes, centimetres. */
public final class KeyFigures {
    private KeyFigures() {}

    /** The figures for {@code result}, in the units of {@code system}, the watts first. */
    public static List<Item.Figure> of(TraceResult result, UnitSystem system) {
        FigureFormat figures = new FigureFormat(system);
        List<Item.Figure> all = new ArrayList<>();
        if (result.heat().isEmpty()) {
            all.add(new Item.Figure(
                    "caught by the disc", figures.plainWatts(result.ledger().caught())));
            if (result.ledger().caught().value() > 0) {
                all.add(new Item.Figure(
                        "hottest spot", figures.plainFlux(result.spot().peakFlux())));
            }
            return all;
        }
        HeatSentences heat = new HeatSentences(result.heat().get(), system);
        all.add(new Item.Figure(
                "taken up by the pan", figures.plainWatts(result.ledger().absorbed())));
        all.add(heat.boilFigure());
        all.add(new Item.Figure("heat level", LevelWords.of(heat.level())));
        all.add(new Item.Figure("pan above the ground", figures.length(height(result.scenario()), 2)));
        return all;
    }

    private static double height(Scenario scenario) {
        return scenario.panHeightMetres();
    }
}
