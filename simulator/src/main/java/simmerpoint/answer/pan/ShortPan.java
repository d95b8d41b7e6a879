package simmerpoint.answer.pan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatSentences;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.PowerWords;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.heat.HeatLevel;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.pan.LevelStretch;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanResult;

/**
 * Where the pan boils and simmers, in a dozen lines: one table of borders and one recommendation.
 *
 * @param result what was found
 * @param figures in the reader's units
 * @param lengths of the moves
 */
record ShortPan(PanResult result, FigureFormat figures, MoveWords lengths) {
    private static final String NOWHERE = "\u2013";

    Answer answer() {
        PanPlaceSection place = new PanPlaceSection(result, figures, lengths);
        SectionBuilder out = Section.headed(verdict())
                .add(table())
                .say("Counted from where it stands: + is away from the dish, dish away from the sun, pan up.")
                .say(asGiven())
                .say(place.recommendation())
                .say(place.moreHeat());
        return ShortAnswer.of(
                result.base().scenario().title(),
                out,
                result.cautionFlux(),
                Cautions.at("pan"),
                NextCommand.line(NextCommand.AIM, NextCommand.BUDGET, NextCommand.CUT));
    }

    private String verdict() {
        HeatSentences heat = heat();
        PowerWords words = new PowerWords(Optional.of(result.heat()), figures.system());
        Estimate given = result.here().cookingPower();
        String power = result.base()
                .likely()
                .map(likely -> "about " + LikelyWords.likely(likely.power()) + " " + words.meaning(given))
                .filter(about -> given.value() > 0)
                .orElseGet(() -> words.gets(given));
        return "Where it stands " + power + ": " + heat.amount() + " " + heat.outcome();
    }

    private HeatSentences heat() {
        return new HeatSentences(result.heat(), result.base().likely(), figures.system());
    }

    /** What the borders go by, where that is not what the first sentence says. */
    private Optional<String> asGiven() {
        return result.here().level() == heat().level()
                ? Optional.empty()
                : Optional.of("These places go by the figures as given ("
                        + figures.plainWatts(result.here().cookingPower()) + "), with which "
                        + HeatWords.does(result.here().level()) + " where the pan stands.");
    }

    private Item table() {
        Columns<PanMove> columns =
                Columns.<PanMove>none().with("move of the pan", move -> MoveWords.brief(move.move()));
        for (HeatLevel level : shown()) {
            columns = columns.with(
                    LevelWords.of(level) + ", " + figures.system().shortUnit(), move -> spans(move, level));
        }
        return columns.table(result.moves());
    }

    /** The levels that it comes to, from a simmer up; none of them, then from keep warm. */
    private List<HeatLevel> shown() {
        List<HeatLevel> reached = Stream.of(HeatLevel.BOIL, HeatLevel.FAST_BOIL, HeatLevel.SIMMER)
                .filter(level -> result.moves().stream()
                        .anyMatch(move -> stretches(move, level).findAny().isPresent()))
                .toList();
        return reached.isEmpty() ? List.of(HeatLevel.KEEP_WARM) : reached;
    }

    private static Stream<LevelStretch> stretches(PanMove move, HeatLevel level) {
        return move.stretches().stream().filter(stretch -> stretch.level() == level);
    }

    /** "−32 to −24, 15 to 24 cm". */
    private String spans(PanMove move, HeatLevel level) {
        String spans = stretches(move, level)
                .map(stretch -> lengths.step(stretch.fromMetres()) + " to " + lengths.step(stretch.toMetres()))
                .collect(Collectors.joining(", "));
        return spans.isEmpty() ? NOWHERE : spans;
    }
}
