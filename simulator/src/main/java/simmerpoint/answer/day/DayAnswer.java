package simmerpoint.answer.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.quantities.OneLine;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;
import simmerpoint.study.likely.LikelyMoment;
import simmerpoint.sun.Sunlight;
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

    /** When it cooks, as a named figure. */
    public static Item.Figure hours(DayResult result, UnitSystem system) {
        DayCookSection cook = new DayCookSection(result, new FigureFormat(system));
        return new Item.Figure("under a clear sky", cook.noon().isPresent() ? cook.verdict() : cook.nothing());
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
            sections.add(byHour(result, system));
            sections.add(new StandSection(result, figures, aimHint).section());
            sections.add(Cautions.section(result.cautionFlux(), "pan"));
            sections.add(sure(result));
        }
        return new Answer(OneLine.of(result.scenario().title()), sections);
    }

    private static Section byHour(DayResult result, UnitSystem system) {
        HeatWords words = new HeatWords(system);
        List<DayHour> hours = result.shown();
        return Section.headed("Hour by hour")
                .add(table(words).table(hours))
                .say(
                        "Light is traced anew for each height of the sun. The watts are cooking power, net heat into the water "
                                + words.difference(LikelyRange.exact(StandardCookingPower.STANDARD_DIFFERENCE))
                                + " above the air: the likely figure, and between which four in five such cookers lie, each with"
                                + " mirrors, gluing, aim, pan, wind and sky as they may turn out. Boiling times hold the same, for"
                                + " light that stays as it is at that time.")
                .say(orNever(hours))
                .say(otherSun(result, new FigureFormat(system)))
                .sayIf(
                        hours.stream().flatMap(hour -> hour.light().stream()).anyMatch(DayAnswer::boilsGently),
                        "Where the heat level is simmer beside a boiling time, the water comes to the boil "
                                + "then and goes on so gently that it only simmers.")
                .build();
    }

    /** What decides whether the water boils, at the hour when that is most in doubt. */
    private static Optional<String> orNever(List<DayHour> hours) {
        return hours.stream()
                .flatMap(hour -> hour.light().stream())
                .filter(light -> light.boil() instanceof BoilingOutcome.MayBoil)
                .min(Comparator.comparingDouble(
                        light -> Math.abs(0.5 - ((BoilingOutcome.MayBoil) light.boil()).share())))
                .map(light -> "Where it says \u201cor never\u201d, most depends on "
                        + LikelyWords.decides(light.likely().map(LikelyMoment::result)) + ".");
    }

    /** What a trace of the scenario stands for, where no row has its sun. */
    private static Optional<String> otherSun(DayResult result, FigureFormat figures) {
        SiteConditions outdoors = result.scenario().site().orElseThrow();
        boolean timed = outdoors.timed();
        if (timed && result.shown().stream().anyMatch(hour -> hour.time().isEqual(outdoors.when()))) {
            return Optional.empty();
        }
        Sunlight own = result.scenario().sun();
        return Optional.of("A trace of this scenario is for "
                + (timed
                        ? TimeWords.clock(outdoors.when()) + " on "
                                + TimeWords.date(outdoors.when().toLocalDate())
                        : "a sun " + figures.degrees(own.elevationRadians())
                                + " high in a beam of " + beam(own.beamWattsPerSquareMetre())
                                + FigureFormat.NBSP + "W/m\u00b2")
                + ", which is none of these rows.");
    }

    private static boolean boilsGently(HourLight light) {
        return HeatWords.endsGently(light.boil(), light.level().likely());
    }

    private static Columns<DayHour> table(HeatWords words) {
        return Columns.<DayHour>none()
                .with("time", hour -> TimeWords.clock(hour.time()))
                .with("sun", HourWords::elevation)
                .with("beam\nW/m²", hour -> beam(hour.beam().likelyWattsPerSquareMetre()))
                .with(
                        "into the\nwater, W",
                        hour -> hour.light()
                                .map(light -> LikelyWords.rounded(light.power().likely(), light.power()))
                                .orElse("none"))
                .with("four in\nfive, W", hour -> HourWords.cell(hour, DayAnswer::range))
                .with("water\nboils in", hour -> HourWords.cell(hour, light -> TimeWords.boil(light.boil(), words)))
                .with(
                        "heat\nlevel",
                        hour -> HourWords.cell(
                                hour, light -> LevelWords.of(light.level().likely())));
    }

    /** To the nearest 10 W/m² where it is strong, else two digits. */
    private static String beam(double wattsPerSquareMetre) {
        return FigureFormat.rounded(wattsPerSquareMetre, wattsPerSquareMetre < 995 ? 2 : 3);
    }

    private static String range(HourLight light) {
        LikelyRange watts = light.power();
        return FigureFormat.span(LikelyWords.rounded(watts.low(), watts), LikelyWords.rounded(watts.high(), watts));
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
