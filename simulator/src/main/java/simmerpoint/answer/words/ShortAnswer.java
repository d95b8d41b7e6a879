package simmerpoint.answer.words;

import java.util.List;
import java.util.Locale;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.quantities.OneLine;

/** The form of every short answer: the verdict as its heading, a few figures, one caution, and what to ask next. */
public final class ShortAnswer {
    private ShortAnswer() {}

    /**
     * The answer for the scenario of that title.
     *
     * @param said the verdict and what stands under it
     * @param next last line
     */
    public static Answer of(String title, SectionBuilder said, String next) {
        return new Answer(OneLine.of(title), List.of(said.say(next).build()));
    }

    /** The same where light is told of: before the last line the short caution for the hottest of it, W/m², and where that is. */
    public static Answer of(String title, SectionBuilder said, double hottestFlux, String where, String next) {
        return of(title, said.add(new Item.Caution(Cautions.oneLine(hottestFlux, where), true)), next);
    }

    /** With a capital at its beginning. */
    public static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
