package simmerpoint.answer.trace;

import java.util.List;
import simmerpoint.answer.Item;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatSentences;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.PowerWords;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

/** The three or four figures a builder asks for first: watts, minutes, centimetres. */
public final class KeyFigures {
    private KeyFigures() {}

    /** The figures for {@code result}, in the units of {@code system}, the watts first. */
    public static List<Item.Figure> of(TraceResult result, UnitSystem system) {
        FigureFormat figures = new FigureFormat(system);
        String power = result.likely()
                .map(likely ->
                        "about " + LikelyWords.likely(likely.power()) + " (" + LikelyWords.span(likely.power()) + ")")
                .orElseGet(() -> figures.plainWatts(result.useful()));
        Item.Figure watts = new Item.Figure(new PowerWords(result.heat(), system).name(), power);
        if (result.heat().isEmpty()) {
            String peak = figures.plainFlux(result.spot().peakFlux());
            return result.useful().value() > 0 ? List.of(watts, new Item.Figure("hottest spot", peak)) : List.of(watts);
        }
        HeatSentences heat = new HeatSentences(result.heat().get(), result.likely(), system);
        return List.of(
                watts,
                heat.boilFigure(),
                new Item.Figure("heat level", LevelWords.of(heat.level())),
                new Item.Figure(
                        "pan above the ground", figures.length(result.scenario().panHeightMetres(), 2)));
    }
}
