package simmerpoint.answer.day;

import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;
import simmerpoint.study.day.YearResult;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.units.UnitSystem;

/** The answer to "in which months, at which hours does it cook?". */
public final class YearAnswer {
    private static final double LEAST_HOURS = 0.05;

    private final YearResult result;

    private YearAnswer(YearResult result) {
        this.result = result;
    }

    /** The answer for {@code result}, in the units of {@code system}. */
    public static Answer of(YearResult result, UnitSystem system) {
        YearAnswer answer = new YearAnswer(result);
        return new Answer(
                OneLine.of(result.scenario().title()),
                List.of(
                        Section.headed("When it cooks").say(answer.cook()).build(),
                        answer.grid(),
                        Cautions.section(result.cautionFlux(), "pan"),
                        answer.sure()));
    }

    /** The same in a dozen lines: the months side by side. */
    public static Answer brief(YearResult result, UnitSystem system) {
        YearAnswer answer = new YearAnswer(result);
        return ShortAnswer.of(
                result.scenario().title(),
                Section.headed("When it cooks").say(answer.cook()).add(answer.months()),
                result.cautionFlux(),
                Cautions.at("pan"),
                NextCommand.line(NextCommand.PAN, NextCommand.AIM));
    }

    private Item months() {
        return columns()
                .table(List.of(
                        hoursADay(),
                        new Line("watts", m -> mostWatts(result.days().get(m)))));
    }

    private Line hoursADay() {
        return new Line(
                "h/day",
                m -> FigureFormat.fixed(result.days().get(m).cookingHours().likely(), 1));
    }

    /** A column for every month. */
    private Columns<Line> columns() {
        Columns<Line> columns = Columns.<Line>none().with("hour", Line::name);
        for (int m = 0; m < result.days().size(); m++) {
            int month = m;
            columns = columns.with(
                    month(result.days().get(m)).substring(0, 3),
                    line -> line.cell().apply(month));
        }
        return columns;
    }

    private static String mostWatts(DayResult day) {
        return day.curve().stream()
                .flatMap(hour -> hour.light().stream())
                .map(HourLight::power)
                .max(Comparator.comparingDouble(LikelyRange::likely))
                .map(power -> LikelyWords.rounded(power.likely(), power))
                .orElse("none");
    }

    private static String month(DayResult day) {
        return day.plan().date().getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    private String cook() {
        DayResult best = result.days().stream()
                .max(Comparator.comparingDouble(day -> day.cookingHours().likely()))
                .orElseThrow();
        boolean touches = result.days().stream().anyMatch(d -> !d.touching().isEmpty());
        String ground = touches ? " Hours in which the dish touches the ground are not counted." : "";
        if (best.cookingHours().likely() < LEAST_HOURS) {
            return "In " + result.year() + " it gets to a simmer on none of the twelve days." + ground + noon();
        }
        List<String> never = result.days().stream()
                .filter(d -> d.cookingHours().likely() < LEAST_HOURS)
                .map(YearAnswer::month)
                .toList();
        double sum = IntStream.range(0, result.days().size())
                .mapToDouble(result::clearMonthHours)
                .reduce(0, Double::sum);
        return "On clear days it cooks (simmers or better) longest in " + month(best) + ", "
                + FigureFormat.fixed(best.cookingHours().likely(), 1) + FigureFormat.NBSP
                + "hours a day (one such cooker in ten less than "
                + FigureFormat.fixed(best.cookingHours().low(), 1) + ")"
                + (never.isEmpty()
                        ? ", and for some hours in every month"
                        : ", and not at all in " + String.join(", ", never))
                + "; over a year of clear days that would be " + FigureFormat.count(Math.round(sum / 10) * 10)
                + FigureFormat.NBSP + "hours. Clouds take their share of that." + ground + noon();
    }

    private String noon() {
        Optional<DayHour> high = most();
        return high.map(h -> " The most cooking power is "
                        + LikelyWords.power(h.light().orElseThrow().power()) + ", in "
                        + h.time().getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " at "
                        + TimeWords.clock(h.time()) + ".")
                .orElse("");
    }

    private Optional<DayHour> most() {
        return result.days().stream()
                .flatMap(d -> d.curve().stream())
                .filter(h -> h.light().isPresent())
                .max(Comparator.comparingDouble(DayHour::cookingPowerWatts));
    }

    /** A row of the grid: an hour of the clock or a sum, and what it holds for a month (0 = January). */
    private record Line(String name, IntFunction<String> cell) {}

    private Section grid() {
        List<DayResult> days = result.days();
        List<Line> lines = new ArrayList<>();
        days.stream()
                .flatMap(day -> day.hours().stream())
                .map(hour -> hour.time().getHour())
                .distinct()
                .sorted()
                .forEach(hour ->
                        lines.add(new Line(String.format(Locale.ROOT, "%02d", hour), m -> cell(days.get(m), hour))));
        lines.add(hoursADay());
        lines.add(new Line(
                "poor", m -> FigureFormat.fixed(days.get(m).cookingHours().low(), 1)));
        lines.add(new Line("h/mon.", m -> FigureFormat.fixed(result.clearMonthHours(m), 0)));
        return Section.headed("Month by hour")
                .add(columns().table(lines))
                .say("Cooking power, W, at that hour of the clock on the 21st, and the heat level: "
                        + LevelWords.letters()
                        + ". h/day: hours in which it likely simmers or better; poor: one such cooker in ten has less; h/mon.: hours of a "
                        + "month of clear days.")
                .build();
    }

    private static String cell(DayResult day, int hour) {
        return at(day, hour)
                .flatMap(DayHour::light)
                .map(l -> FigureFormat.rounded(Math.rint(l.power().likely()) + 0.0, 2)
                        + LevelWords.letter(l.level().likely()))
                .orElse("");
    }

    /** The instant of a day at a full hour of the clock. */
    public static Optional<DayHour> at(DayResult day, int hour) {
        return day.hours().stream().filter(h -> h.time().getHour() == hour).findFirst();
    }

    private Section sure() {
        DayResult first = result.days().get(0);
        return Section.headed(Cautions.HOW_SURE)
                .say(
                        "The watts are sure to " + DayAnswer.share(result.worstRelativeError())
                                + " or better as far as sampling goes (one standard error). All figures are the likely ones; how far"
                                + " such cookers differ from hour to hour is told for a single day. Clear skies, no hills or trees.")
                .say(FigureFormat.count(result.rays()) + " rays, seed " + first.seed() + "; 21st of each month of "
                        + result.year() + ", clock of " + first.day().site().zone() + ".")
                .build();
    }
}
