package simmerpoint.answer.trace;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.study.trace.WarmingResult;
import simmerpoint.units.UnitSystem;

/** How fast the water warms, in rows. */
public final class WarmingSection {
    private static final String HEADING = "How fast the water warms";
    private static final double JUST_BELOW = 0.01;
    private static final double[] MARKS = {40, 50, 60, 70, 80, 90};

    private WarmingSection() {}

    /** The rows for a cook: minutes against temperature. */
    public static Section of(WarmingResult result, UnitSystem system) {
        HeatWords words = new HeatWords(system);
        List<Double> rows = Stream.concat(
                        DoubleStream.of(MARKS)
                                .filter(mark ->
                                        mark > result.points().get(0).water().likely())
                                .filter(mark -> mark < result.boilingCelsius())
                                .boxed(),
                        Stream.of(result.boilingCelsius() - JUST_BELOW))
                .filter(mark -> result.soonestSeconds(mark).isPresent())
                .toList();
        if (rows.isEmpty()) {
            return Section.headed(HEADING)
                    .say("It never gets to " + words.temperature(MARKS[0]) + ".")
                    .build();
        }
        return Section.headed(HEADING)
                .add(Columns.<Double>none()
                        .with("water at", words::temperature)
                        .with("as given,\nafter", mark -> time(result.likelySeconds(mark)))
                        .with("one in ten\nsooner than", mark -> time(result.soonestSeconds(mark)))
                        .with("one in ten\nlater than", mark -> time(result.latestSeconds(mark)))
                        .table(rows))
                .say("This goes by the figures as given; only what the pan loses varies here.")
                .build();
    }

    private static String time(OptionalDouble seconds) {
        return seconds.isPresent() ? HeatWords.time(seconds.getAsDouble()) : "never";
    }
}
