package simmerpoint.answer.day;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.units.UnitSystem;

/** The answer to "does it cook on that day, and how must it stand?". */
public final class DayAnswer {
    private DayAnswer() {}

    /** The answer for {@code result}, in the units of {@code system}. */
    public static Answer of(DayResult result, UnitSystem system) {
        return of(result, system, "the command aim tells.");
    }

    /** The same in a dozen lines. */
    public static Answer brief(DayResult result, UnitSystem system) {
        return new ShortDay(result, new FigureFormat(system)).answer();
    }

    /** The same for a reader who has the answer about aiming beside it, not a command line. */
    public static Answer withoutHint(DayResult result, UnitSystem system) {
        return of(result, system, "the part on how to aim tells.");
    }

    private static Answer of(DayResult result, UnitSystem system, String aimHint) {
        FigureFormat figures = new FigureFormat(system);
        List<Section> sections = new ArrayList<>();
        sections.add(new DayCookSection(result, figures).section());
        if (!result.curve().isEmpty()) {
            sections.add(byHour(result, new HeatWords(system)));
            sections.add(new StandSection(result, figures, aimHint).section());
            sections.add(Cautions.section(result.cautionFlux(), "pan"));
            sections.add(sure(result));
        }
        return new Answer(OneLine.of(result.scenario().title()), sections);
    }

    private static Section byHour(DayResult result, HeatWords words) {
        List<DayHour> hours = result.shown();
        return Section.headed("Hour by hour")
                .add(table(words).table(hours))
                .say(
                        "Light is traced anew for each height of the sun. The watts are cooking power, net heat into the water "
                                + words.difference(LikelyRange.exact(StandardCookingPower.STANDARD_DIFFERENCE))
                                + " above the air; their range is how far models of a clear"
                                + " sky differ; boiling times hold that and what is not known of the pan's losses, for light that"
                                + " stays as it is at that time.")
                .sayIf(
                        hours.stream().flatMap(hour -> hour.light().stream()).anyMatch(DayAnswer::boilsGently),
                        "Where the heat level is simmer beside a boiling time, the water comes to the boil "
                                + "then and goes on so gently that it only simmers.")
                .build();
    }

    private static boolean boilsGently(HourLight light) {
        return HeatWords.endsGently(light.boil(), light.level().likely());
    }

    private static Columns<DayHour> table(HeatWords words) {
        return Columns.<DayHour>none()
                .with("time", hour -> TimeWords.clock(hour.time()))
                .with("sun", HourWords::elevation)
                .with("beam\nW/m²", hour -> FigureFormat.rounded(hour.beam().likelyWattsPerSquareMetre(), 2))
                .with(
                        "into the\nwater, W",
                        hour -> hour.light()
                                .map(light -> FigureFormat.rounded(
                                        light.cookingPower().value(), 3))
                                .orElse("none"))
                .with("range\nW", hour -> HourWords.cell(hour, DayAnswer::range))
                .with("water\nboils in", hour -> HourWords.cell(hour, light -> HourWords.boil(light, words)))
                .with(
                        "heat\nlevel",
                        hour -> HourWords.cell(
                                hour, light -> LevelWords.of(light.level().likely())));
    }

    private static String range(HourLight light) {
        return FigureFormat.rounded(light.lowPower(), 3) + "\u2013" + FigureFormat.rounded(light.highPower(), 3);
    }

    private static Section sure(DayResult result) {
        return Section.headed(Cautions.HOW_SURE)
                .say("The watts are sure to " + share(result.worstRelativeError())
                        + " or better as far as sampling goes (one standard error). Clear sky, no hills or trees, dish aimed"
                        + " at every hour as the scenario says. Clouds"
                        + " and haze from day to day change the watts far more than the digits shown.")
                .say("Beam: "
                        + OneLine.of(result.scenario()
                                        .site()
                                        .orElseThrow()
                                        .sky()
                                        .describe())
                                .replaceAll("\\.$", "")
                        + ".")
                .say(FigureFormat.count(result.rays()) + " rays, seed " + result.seed() + "; sun up "
                        + result.day().sunrise().map(TimeWords::clock).orElse("since before midnight") + " to "
                        + result.day().sunset().map(TimeWords::clock).orElse("after midnight") + ", clock of "
                        + result.day().site().zone() + ".")
                .build();
    }

    static String share(double relative) {
        return FigureFormat.rounded(100 * relative, 1) + FigureFormat.NBSP + "%";
    }
}
