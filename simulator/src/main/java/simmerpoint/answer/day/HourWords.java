package simmerpoint.answer.day;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayInterval;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;
import simmerpoint.study.day.LightLimit;

/** What one hour of a day brings, in words. */
final class HourWords {
    private HourWords() {}

    /** What is said of an hour's light; empty for one without. */
    static String cell(DayHour hour, Function<HourLight, String> words) {
        return hour.light().map(words).orElse("");
    }

    /** "boil", or "boil (four in five such cookers: simmer to fast boil)". */
    static String level(HeatLevelRange level) {
        String likely = LevelWords.of(level.likely());
        if (level.lowest() == level.highest()) {
            return likely;
        }
        return likely + " (" + LikelyWords.FOUR_IN_FIVE + LevelWords.of(level.lowest()) + " to "
                + LevelWords.of(level.highest()) + ")";
    }

    /** The sun's elevation, whole degrees. */
    static String elevation(DayHour hour) {
        return FigureFormat.fixed(Math.toDegrees(hour.elevationRadians()), 0) + "°";
    }

    /** What keeps the pan from more at an hour, in a clause; empty if nothing does. */
    static String limits(HourLight light, FigureFormat figures) {
        return enumerated(light.limits().stream()
                .map(limit -> limit(limit, figures.percent(limit.share())))
                .toList());
    }

    private static String limit(LightLimit limit, String share) {
        return switch (limit.kind()) {
            case WEAK_BEAM -> "the beam is weak, " + share + " below 700\u00a0W/m²";
            case MISSES -> share + " of the reflected light misses the pan, whose underside the dish sees at a slant";
            case CLIMBS_WALL -> share + " of the light on the pan falls on its wall instead of the underside";
        };
    }

    private static String enumerated(List<String> parts) {
        if (parts.size() < 2) {
            return String.join("", parts);
        }
        return String.join("; ", parts.subList(0, parts.size() - 1)) + "; and " + parts.get(parts.size() - 1);
    }

    /** The hours for which {@code is} holds, as spans of the table's times: "06:00 to 08:00 and 20:00"; empty if none. */
    static String when(List<DayHour> hours, Predicate<DayHour> is) {
        List<String> spans = new ArrayList<>();
        int k = 0;
        while (k < hours.size()) {
            int first = k;
            while (k < hours.size() && is.test(hours.get(k))) {
                k++;
            }
            if (k > first) {
                spans.add(FigureFormat.span(
                        TimeWords.clock(hours.get(first).time()),
                        TimeWords.clock(hours.get(k - 1).time())));
            }
            k++;
        }
        return String.join(" and ", spans);
    }

    /** Stretches of the day with a sun: "before 08:10 and after 18:55", "all day"; empty if none. */
    static String when(DayResult result, List<DayInterval> stretches) {
        return stretches.stream()
                .map(each -> {
                    boolean first = each.from().equals(result.curve().get(0).time());
                    boolean last = each.to()
                            .equals(result.curve()
                                    .get(result.curve().size() - 1)
                                    .time());
                    String from = TimeWords.clock(each.from());
                    String to = TimeWords.clock(each.to());
                    return first && last
                            ? "all day"
                            : first ? "before " + to : last ? "after " + from : "from " + from + " to " + to;
                })
                .collect(Collectors.joining(" and "));
    }
}
