package simmerpoint.answer.pan;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.pan.PanResult;
import simmerpoint.units.UnitSystem;

/** The answer to "where do I put the pan for a boil, for a simmer?". */
public final class PanAnswer {
    private PanAnswer() {}

    /** The answer for {@code result}, in the units of {@code system}. */
    public static Answer of(PanResult result, UnitSystem system) {
        FigureFormat figures = new FigureFormat(system);
        MoveWords lengths = new MoveWords(system);
        List<Section> sections = new ArrayList<>();
        sections.add(new PanHereSection(result, figures, lengths).section());
        sections.add(new PanPlaceSection(result, figures, lengths).section());
        sections.add(Section.headed(Cautions.HEADING)
                .addAll(Cautions.items(result.cautionFlux(), "pan"))
                .add(moving())
                .build());
        result.moves().forEach(move -> sections.add(new MoveSection(move, figures, lengths).section()));
        sections.add(certainty(result));
        return new Answer(OneLine.of(result.base().scenario().title()), sections);
    }

    /** The same in a dozen lines. */
    public static Answer brief(PanResult result, UnitSystem system) {
        return new ShortPan(result, new FigureFormat(system), new MoveWords(system)).answer();
    }

    /** What to mind when the pan is moved. */
    public static Item moving() {
        return new Item.Caution(
                "Moving the pan moves the light too: cover the mirror first, then move, then uncover it from the side.");
    }

    private static Section certainty(PanResult result) {
        return Section.headed(Cautions.HOW_SURE)
                .say("Watts come from " + FigureFormat.count(result.run().rays())
                        + " rays where the pan stands and a quarter of them for each move, caught at "
                        + result.moves().get(0).positions().size()
                        + " positions; the hottest places come from some of these, joined by smooth curves, "
                        + "good to a tenth or better. Seed " + result.base().seed() + ".")
                .say(result.base().likely().map(LikelyWords::method))
                .say(
                        "Ranges of positions where the level changes hold the same doubts. Those after a cloud and without sun"
                                + " are where four in five pans like this one fall, by their losses alone.")
                .build();
    }
}
