package simmerpoint.answer.day;

import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.YearResult;
import simmerpoint.units.UnitSystem;

/** The answer to "in which months, at which hours does it cook?". */
public final class YearAnswer {
    private static final double LEAST_HOURS = 0.05;

    private final YearResult result;
    private final FigureFormat figures;

    private YearAnswer(YearResult result, FigureFormat figures) {
        this.result = result;
        this.figures = figures;
    }

    /** The answer for {@code result}, in the units of {@code system}. */
    public static Answer of(YearResult result, UnitSystem system) {
        YearAnswer answer = new YearAnswer(result, new FigureFormat(system));
        return new Answer(
                OneLine.of(result.scenario().title()),
                List.of(
                        new Section("When it cooks", answer.cook()),
                        new Section("Month by hour", answer.grid()),
                        Cautions.section(result.cautionFlux(), "pan"),
                        new Section(Cautions.HOW_SURE, answer.sure())));
    }

    private static String month(DayResult day) {
        return day.plan().date().getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    private List<Item> cook() {
        DayResult best = result.days().stream()
                .max(Comparator.comparingDouble(DayResult::cookingHours))
                .orElseThrow();
        List<Item> items = new ArrayList<>();
        if (best.cookingHours() < LEAST_HOURS) {
            items.add(new Item.Sentence(
                    "In " + result.year() + " it gets to a simmer on none of the twelve days." + noon()));
            return items;
        }
        List<String> never = result.days().stream()
                .filter(d -> d.cookingHours() < LEAST_HOURS)
                .map(YearAnswer::month)
                .toList();
        double sum = 0;
        for (int m = 0; m < result.days().size(); m++) {
            sum += result.clearMonthHours(m);
        }
        items.add(new Item.Sentence("On clear days it cooks (simmers or better) longest in " + month(best) + ", "
                + FigureFormat.fixed(best.cookingHours(), 1) + FigureFormat.NBSP + "hours a day"
                + (never.isEmpty()
                        ? ", and for some hours in every month"
                        : ", and not at all in " + String.join(", ", never))
                + "; over a year of clear days that would be " + FigureFormat.count(Math.round(sum / 10) * 10)
                + FigureFormat.NBSP + "hours. Clouds take their share of that." + noon()));
        return items;
    }

    private String noon() {
        Optional<DayHour> high = most();
        return high.map(h -> " The most it takes up is "
                        + figures.plainWatts(h.light().orElseThrow().absorbed()) + ", in "
                        + h.time().getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " at "
                        + TimeWords.clock(h.time()) + ".")
                .orElse("");
    }

    private Optional<DayHour> most() {
        return result.days().stream()
                .flatMap(d -> d.curve().stream())
                .filter(h -> h.light().isPresent())
                .max(Comparator.comparingDouble(DayHour::absorbedWatts));
    }

    private List<Item> grid() {
        TreeSet<Integer> clock = new TreeSet<>();
        result.days().forEach(d -> d.hours().forEach(h -> clock.add(h.time().getHour())));
        List<String> heads = new ArrayList<>(List.of("hour"));
        result.days().forEach(d -> heads.add(month(d).substring(0, 3)));
        List<List<String>> rows = new ArrayList<>();
        for (int hour : clock) {
            List<String> row = new ArrayList<>(List.of(String.format(Locale.ROOT, "%02d", hour)));
            result.days().forEach(d -> row.add(cell(d, hour)));
            rows.add(row);
        }
        rows.add(sums(
                "h/day",
                result.days().stream()
                        .map(d -> FigureFormat.fixed(d.cookingHours(), 1))
                        .toList()));
        List<String> months = new ArrayList<>();
        for (int m = 0; m < result.days().size(); m++) {
            months.add(FigureFormat.fixed(result.clearMonthHours(m), 0));
        }
        rows.add(sums("h/mon.", months));
        return List.of(
                new Item.Table(heads, rows),
                new Item.Sentence(
                        "Watts taken up by the pan at that hour of the clock on the 21st, and the heat level: "
                                + LevelWords.letters()
                                + ". h/day: hours in which it simmers or better; h/mon.: the same for a "
                                + "month of clear days."));
    }

    private static List<String> sums(String name, List<String> cells) {
        List<String> row = new ArrayList<>(List.of(name));
        row.addAll(cells);
        return row;
    }

    private static String cell(DayResult day, int hour) {
        return at(day, hour)
                .flatMap(DayHour::light)
                .map(l -> FigureFormat.rounded(l.absorbed().value(), 2)
                        + LevelWords.letter(l.level().likely()))
                .orElse("");
    }

    /** The instant of a day at a full hour of the clock. */
    public static Optional<DayHour> at(DayResult day, int hour) {
        return day.hours().stream().filter(h -> h.time().getHour() == hour).findFirst();
    }

    private List<Item> sure() {
        DayResult first = result.days().get(0);
        return List.of(
                new Item.Sentence(
                        "The watts are sure to " + DayAnswer.share(result.worstRelativeError())
                                + " or better as far as sampling goes (one standard error); how far models of a clear sky differ, and"
                                + " what is not known of the pan's losses, is more: see a single day. Clear skies, no hills or trees."),
                new Item.Sentence(FigureFormat.count(result.rays()) + " rays, seed " + first.seed()
                        + "; 21st of each month of " + result.year() + ", clock of "
                        + first.day().site().zone() + "."));
    }
}
