package simmerpoint.answer.day;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;
import simmerpoint.units.UnitSystem;

/** The answer to "does it cook on that day, and how must it stand?". */
public final class DayAnswer {
    private DayAnswer() {}

    /** The answer for {@code result}, in the units of {@code system}. */
    public static Answer of(DayResult result, UnitSystem system) {
        return of(result, system, "the command aim tells.");
    }

    /** The same for a reader who has the answer about aiming beside it, not a command line. */
    public static Answer withoutHint(DayResult result, UnitSystem system) {
        return of(result, system, "the part on how to aim tells.");
    }

    private static Answer of(DayResult result, UnitSystem system, String aimHint) {
        FigureFormat figures = new FigureFormat(system);
        List<Section> sections = new ArrayList<>();
        sections.add(DayCookSection.of(result, figures));
        if (!result.curve().isEmpty()) {
            List<DayHour> hours = result.hours().isEmpty() ? result.curve() : result.hours();
            List<Item> byHour = new ArrayList<>(List.of(table(hours, new HeatWords(system)), explained()));
            if (hours.stream().flatMap(hour -> hour.light().stream()).anyMatch(DayAnswer::boilsGently)) {
                byHour.add(new Item.Sentence(
                        "Where the heat level is simmer beside a boiling time, the water comes to the boil "
                                + "then and goes on so gently that it only simmers."));
            }
            sections.add(new Section("Hour by hour", byHour));
            sections.add(StandSection.of(result, figures, aimHint));
            sections.add(Cautions.section(result.cautionFlux(), "pan"));
            sections.add(sure(result));
        }
        return new Answer(OneLine.of(result.scenario().title()), sections);
    }

    private static boolean boilsGently(HourLight light) {
        return HeatWords.endsGently(light.boil(), light.level().likely());
    }

    private static Item table(List<DayHour> hours, HeatWords words) {
        return new Item.Table(
                List.of("time", "sun", "beam\nW/m²", "taken up\nW", "range\nW", "water\nboils in", "heat\nlevel"),
                hours.stream().map(hour -> row(hour, words)).toList());
    }

    private static List<String> row(DayHour hour, HeatWords words) {
        List<String> row = new ArrayList<>(List.of(
                TimeWords.clock(hour.time()),
                HourWords.elevation(hour),
                FigureFormat.rounded(hour.beam().likelyWattsPerSquareMetre(), 2)));
        if (hour.light().isEmpty()) {
            row.addAll(List.of("none", "", "", ""));
            return row;
        }
        HourLight light = hour.light().get();
        row.add(FigureFormat.rounded(light.absorbed().value(), 3));
        row.add(FigureFormat.rounded(light.lowWatts(), 3) + "\u2013" + FigureFormat.rounded(light.highWatts(), 3));
        row.add(HourWords.boil(light, words));
        row.add(LevelWords.of(light.level().likely()));
        return row;
    }

    private static Item explained() {
        return new Item.Sentence(
                "Light is traced anew for each height of the sun. The range of the watts is how far models of a clear sky"
                        + " differ; boiling times hold that and what is not known of the pan's losses, for light that"
                        + " stays as it is at that time.");
    }

    private static Section sure(DayResult result) {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Sentence("The watts are sure to " + share(result.worstRelativeError())
                + " or better as far as sampling goes (one standard error). Clear sky, no hills or trees, dish aimed at every hour as the scenario says. Clouds"
                + " and haze from day to day change the watts far more than the digits shown."));
        items.add(new Item.Sentence("Beam: "
                + OneLine.of(result.scenario().site().orElseThrow().sky().describe())
                        .replaceAll("\\.$", "")
                + "."));
        items.add(new Item.Sentence(FigureFormat.count(result.rays()) + " rays, seed " + result.seed() + "; sun up "
                + result.day().sunrise().map(TimeWords::clock).orElse("since before midnight") + " to "
                + result.day().sunset().map(TimeWords::clock).orElse("after midnight") + ", clock of "
                + result.day().site().zone() + "."));
        return new Section(Cautions.HOW_SURE, items);
    }

    static String share(double relative) {
        return FigureFormat.rounded(100 * relative, 1) + FigureFormat.NBSP + "%";
    }
}
