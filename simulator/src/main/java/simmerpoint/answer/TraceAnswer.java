package simmerpoint.answer;

import java.util.List;
import simmerpoint.study.TraceResult;
import simmerpoint.units.UnitSystem;

/** The answer to "what does this dish give my pan?": first what a cook asks, then the optics. */
public final class TraceAnswer {
    private TraceAnswer() {}

    /** The answer for {@code result}, in the units of {@code system}. */
    public static Answer of(TraceResult result, UnitSystem system) {
        Figures figures = new Figures(system);
        TargetWords words = TargetWords.of(result.scenario().target());
        return new Answer(
                Words.oneLine(result.scenario().title()),
                List.of(
                        CookSection.of(result, figures, words),
                        new Section("Take care", cautions(result, words)),
                        LedgerSection.of(result, figures, words),
                        SpotSection.of(result, figures, words),
                        CertaintySection.of(result, figures, words)));
    }

    private static List<Item> cautions(TraceResult result, TargetWords words) {
        return CautionWords.sentences(hottest(result), words.noun()).stream()
                .map(text -> (Item) new Item.Caution(text))
                .toList();
    }

    /** The hottest place on underside and wall, W/m². */
    static double hottest(TraceResult result) {
        return Math.max(result.spot().peakFlux().value(), hottestOnWall(result));
    }

    private static double hottestOnWall(TraceResult result) {
        return result.maps().wall().map(map -> map.largest()).orElse(0.0);
    }
}
