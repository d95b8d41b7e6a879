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
import simmerpoint.study.day.CookingInterval;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;
import simmerpoint.sun.SunDay;
import simmerpoint.uncertainty.LikelyRange;

/** What a cook asks of a day: from when to when it cooks, how strongly at noon, what hinders it early and late. */
record DayCookSection(DayResult result, FigureFormat figures) {
    Section section() {
        SectionBuilder out = Section.headed("When it cooks");
        if (result.curve().isEmpty()) {
            return out.say(tooLow()).build();
        }
        Optional<DayHour> best = result.curve().stream()
                .filter(h -> h.light().isPresent())
                .max(Comparator.comparingDouble(DayHour::cookingPowerWatts));
        if (best.isEmpty()) {
            return out.say("Nothing can be cooked: " + result.curve().get(0).hindrance() + ".")
                    .build();
        }
        DayHour noon = result.noon().filter(h -> h.light().isPresent()).orElse(best.get());
        return out.say(first(noon))
                .say(water(noon))
                .say(early())
                .caution(hindered())
                .build();
    }

    private String tooLow() {
        String date = TimeWords.date(result.plan().date());
        if (result.day().kind() == SunDay.Kind.NEVER_RISES) {
            return "On " + date + " the sun does not rise at this place: it is polar night, and nothing cooks.";
        }
        return "On " + date + " the sun never gets "
                + figures.degrees(result.plan().leastElevationRadians()) + " high at this place; so low, hedges, "
                + "roofs and hills take its light, and nothing cooks.";
    }

    private String first(DayHour noon) {
        String date = TimeWords.date(result.plan().date());
        HourLight light = noon.light().orElseThrow();
        String at = " at " + when(noon);
        String watts = LikelyWords.power(light.power()) + at + ". Heat level: " + HourWords.level(light.level()) + ".";
        List<CookingInterval> likely = result.intervals(LikelyRange::likely);
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
        List<CookingInterval> poor = result.intervals(LikelyRange::low);
        String low = poor.isEmpty()
                ? " One such cooker in ten never gets to a simmer"
                : " One such cooker in ten cooks less than " + intervals(poor) + " (" + hours(hours.low()) + ")";
        return low + "; one in ten cooks " + hours(hours.high()) + " or more.";
    }

    private String intervals(List<CookingInterval> all) {
        return all.stream().map(this::interval).collect(Collectors.joining(" and "));
    }

    private static String hours(double hours) {
        return FigureFormat.fixed(hours, 1) + FigureFormat.NBSP + "hours";
    }

    private String when(DayHour hour) {
        boolean isNoon = result.noon().filter(hour::equals).isPresent();
        return (isNoon ? "solar noon, " : "") + TimeWords.clock(hour.time());
    }

    private String interval(CookingInterval interval) {
        List<DayHour> curve = result.curve();
        boolean early = interval.from().equals(curve.get(0).time());
        boolean late = interval.to().equals(curve.get(curve.size() - 1).time());
        String low =
                " (the sun " + figures.degrees(result.plan().leastElevationRadians()) + " high, lower is not asked)";
        return "from " + TimeWords.clock(interval.from()) + (early && !late ? low : "") + " to "
                + TimeWords.clock(interval.to())
                + (late ? low.replace("the sun", early ? "at both ends the sun" : "the sun") : "");
    }

    private String water(DayHour noon) {
        PanContents water = result.scenario().cooking().orElseThrow().contents();
        HeatWords words = new HeatWords(figures.system());
        String boil = TimeWords.boil(noon.light().orElseThrow().boil(), words);
        String what = words.water(water.waterKilograms()) + " from " + words.temperature(water.startCelsius());
        return boil.startsWith("never")
                ? "Even at noon its " + what + " would boil " + boil + "."
                : "At noon its " + what + " would boil in " + boil + ".";
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
