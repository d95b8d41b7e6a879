package simmerpoint.answer.day;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.PanContents;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayInterval;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;
import simmerpoint.sun.SunDay;
import simmerpoint.uncertainty.LikelyRange;

/** What a cook asks of a day: from when to when it cooks, how strongly at noon, what hinders it early and late. */
record DayCookSection(DayResult result, FigureFormat figures) {
    Section section() {
        SectionBuilder out = Section.headed("When it cooks");
        Optional<DayHour> noon = noon();
        if (noon.isEmpty()) {
            return out.say(nothing()).build();
        }
        return out.say(first(noon.get()))
                .say(water(noon.get()))
                .say(early())
                .caution(hindered())
                .build();
    }

    /** Solar noon, or the strongest hour if there is no light then; empty if no light comes at all. */
    Optional<DayHour> noon() {
        Optional<DayHour> best = result.curve().stream()
                .filter(h -> h.light().isPresent())
                .max(Comparator.comparingDouble(DayHour::cookingPowerWatts));
        return result.noon().filter(h -> h.light().isPresent()).or(() -> best);
    }

    /** Why nothing is cooked on a day without light. */
    String nothing() {
        return result.curve().isEmpty()
                ? tooLow()
                : "Nothing can be cooked: " + result.curve().get(0).hindrance() + ".";
    }

    /** When it cooks, in a heading. */
    String verdict() {
        String date = TimeWords.date(result.plan().date());
        List<DayInterval> likely = result.intervals(LikelyRange::likely);
        if (result.isGrounded()) {
            return "On " + date + " the dish touches the ground whenever it would cook";
        }
        return likely.isEmpty()
                ? "It does not get to a simmer on " + date
                : "On " + date + " it cooks from "
                        + likely.stream()
                                .map(i -> TimeWords.clock(i.from()) + " to " + TimeWords.clock(i.to()))
                                .collect(Collectors.joining(" and from "));
    }

    /** Watts and minutes at noon, with the doubt about the sky. */
    String atNoon(DayHour noon) {
        HourLight light = noon.light().orElseThrow();
        return "Clear sky, " + when(noon) + ": " + LikelyWords.power(light.power()) + " into the water; " + boils(light)
                + ".";
    }

    private String tooLow() {
        String date = TimeWords.date(result.plan().date());
        if (result.day().kind() == SunDay.Kind.NEVER_RISES) {
            return "On " + date + " the sun does not rise at this place: it is polar night, and nothing cooks.";
        }
        return "On " + date + " the sun never gets "
                + figures.degrees(result.plan().leastElevationRadians()) + " high at this place; so low, hedges, "
                + "roofs and hills hide it, and nothing cooks.";
    }

    private String first(DayHour noon) {
        String date = TimeWords.date(result.plan().date());
        HourLight light = noon.light().orElseThrow();
        String at = " at " + when(noon);
        String watts = LikelyWords.power(light.power()) + at + ". Heat level: " + HourWords.level(light.level()) + ".";
        List<DayInterval> likely = result.intervals(LikelyRange::likely);
        if (result.isGrounded()) {
            return "On " + date
                    + " the dish touches the ground whenever it would cook. Clear of the ground its cooking power would be "
                    + watts;
        }
        if (likely.isEmpty()) {
            return "On " + date + " it likely does not get to a simmer: the cooking power is only " + watts;
        }
        return "On " + date + " it cooks " + intervals(likely) + ", "
                + hours(result.cookingHours().likely())
                + " in all, if the sky is clear: the pan simmers or better." + ends() + " The cooking power is "
                + watts;
    }

    /** What the worst and the best tenth do. */
    private String ends() {
        LikelyRange hours = result.cookingHours();
        if (hours.width() == 0) {
            return "";
        }
        List<DayInterval> poor = result.intervals(LikelyRange::low);
        String low = poor.isEmpty()
                ? " One such cooker in ten never gets to a simmer"
                : " One such cooker in ten cooks less than " + intervals(poor) + " (" + hours(hours.low()) + ")";
        return low + "; one in ten cooks " + hours(hours.high()) + " or more.";
    }

    private String intervals(List<DayInterval> all) {
        return all.stream().map(this::interval).collect(Collectors.joining(" and "));
    }

    private static String hours(double hours) {
        return FigureFormat.fixed(hours, 1) + FigureFormat.NBSP + "hours";
    }

    private String when(DayHour hour) {
        boolean isNoon = result.noon().filter(hour::equals).isPresent();
        return (isNoon ? "solar noon, " : "") + TimeWords.clock(hour.time());
    }

    private String interval(DayInterval interval) {
        List<DayHour> curve = result.curve();
        boolean early = interval.from().equals(curve.get(0).time());
        boolean late = interval.to().equals(curve.get(curve.size() - 1).time());
        String low = " (the sun " + figures.degrees(result.plan().leastElevationRadians())
                + " high, no lower sun is counted)";
        return "from " + TimeWords.clock(interval.from()) + (early && !late ? low : "") + " to "
                + TimeWords.clock(interval.to())
                + (late ? low.replace("the sun", early ? "at both ends the sun" : "the sun") : "");
    }

    private String water(DayHour noon) {
        HourLight light = noon.light().orElseThrow();
        String when = TimeWords.boil(light.boil(), heat()).startsWith("never") ? "Even at noon its " : "At noon its ";
        return when + boils(light) + ", from " + heat().temperature(contents().startCelsius()) + ".";
    }

    /** "1.5 l of water boils in 29 to 37 min", "1.5 l of water never boils (62 to 70 °C)". */
    private String boils(HourLight light) {
        String boil = TimeWords.boil(light.boil(), heat());
        return heat().water(contents().waterKilograms())
                + (boil.startsWith("never") ? boil.replaceFirst("never", " never boils") : " boils in " + boil);
    }

    private HeatWords heat() {
        return new HeatWords(figures.system());
    }

    private PanContents contents() {
        return result.scenario().cooking().orElseThrow().contents();
    }

    /** What limits it at the lowest suns of the table, in the morning and in the evening. */
    private Optional<String> early() {
        List<DayHour> dim = result.hours().stream()
                .filter(h -> h.light().isPresent())
                .filter(h -> !h.light().orElseThrow().limits().isEmpty())
                .filter(h -> h.light().orElseThrow().level().likely().compareTo(HeatLevel.BOIL) < 0)
                .toList();
        if (dim.isEmpty()) {
            return Optional.empty();
        }
        DayHour first = dim.get(0);
        String where = "What limits it at low sun: at " + TimeWords.clock(first.time()) + ", the sun "
                + HourWords.elevation(first) + " high, "
                + HourWords.limits(first.light().orElseThrow(), figures) + ".";
        DayHour last = dim.get(dim.size() - 1);
        return Optional.of(
                dim.size() == 1 ? where : where + " Much the same holds at " + TimeWords.clock(last.time()) + ".");
    }

    private Optional<String> hindered() {
        String when = HourWords.when(result.hours(), h -> h.light().isEmpty());
        return result.hours().stream()
                .filter(h -> h.light().isEmpty())
                .findFirst()
                .map(h -> "No light at " + when + ": " + h.hindrance() + ".");
    }
}
