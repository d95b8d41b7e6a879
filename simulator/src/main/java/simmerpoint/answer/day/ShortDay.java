package simmerpoint.answer.day;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;

/**
 * A day in a dozen lines: when it cooks, a few of its hours, whether one can reach the pan.
 *
 * @param result the day
 * @param figures in the reader's units
 */
record ShortDay(DayResult result, FigureFormat figures) {
    private static final int ROWS = 5;
    private static final String NEXT = NextCommand.line(NextCommand.PAN, NextCommand.AIM);

    Answer answer() {
        DayCookSection cook = new DayCookSection(result, figures);
        String title = result.scenario().title();
        Optional<DayHour> noon = cook.noon();
        if (noon.isEmpty()) {
            return ShortAnswer.of(title, Section.headed("Nothing cooks").say(cook.nothing()), NEXT);
        }
        StandSection stand = new StandSection(result, figures, "");
        SectionBuilder out = Section.headed(cook.verdict())
                .say(cook.atNoon(noon.get()))
                .add(table())
                .caution(stand.touching())
                .caution(stand.tooHigh());
        return ShortAnswer.of(title, out, result.cautionFlux(), Cautions.at("pan"), NEXT);
    }

    private Item table() {
        HeatWords heat = new HeatWords(figures.system());
        return Columns.<DayHour>none()
                .with("time", hour -> TimeWords.clock(hour.time()))
                .with("watts", hour -> HourWords.cell(hour, l -> LikelyWords.likely(l.power())))
                .with(
                        "level",
                        hour -> HourWords.cell(
                                hour, l -> LevelWords.of(l.level().likely())))
                .with("water boils in", hour -> HourWords.cell(hour, light -> TimeWords.boil(light.boil(), heat)))
                .with(
                        "aim again",
                        hour -> hour.walk()
                                .map(w -> SkyWords.minutes(w.minutes()))
                                .orElse(""))
                .with("pan above ground", hour -> figures.length(hour.stand().panHeightMetres(), 2))
                .table(shown());
    }

    /** A few hours, evenly spread over those with light in which the dish clears the ground, or over all with light. */
    private List<DayHour> shown() {
        List<DayHour> all =
                result.shown().stream().filter(hour -> hour.light().isPresent()).toList();
        List<DayHour> clear =
                all.stream().filter(hour -> !hour.stand().touchesGround()).toList();
        List<DayHour> lit = clear.isEmpty() ? all : clear;
        int stride = (lit.size() + ROWS - 1) / ROWS;
        return IntStream.range(0, lit.size())
                .filter(k -> (k - stride / 2) % Math.max(1, stride) == 0)
                .mapToObj(lit::get)
                .toList();
    }
}
