package simmerpoint.quantities;

import simmerpoint.study.trace.WarmingResult;

/** How the water warms, a row for each time. */
public final class WarmingQuantities {
    private static final Fields<WarmingResult.Point> POINT = Fields.<WarmingResult.Point>none()
            .number("time_s", "since the start", WarmingResult.Point::seconds)
            .range("water_*_C", "temperature of the water", WarmingResult.Point::water);

    private static final Fields<WarmingResult> FIELDS = Fields.<WarmingResult>none()
            .number("boiling_C", "local boiling point", WarmingResult::boilingCelsius)
            .rows("points", "temperatures over time", WarmingResult::points, POINT);

    /** All of it. */
    public static final Document<WarmingResult> DOCUMENT = new Document<>(
            "trace",
            result -> result.scenario().title(),
            WarmingResult::seed,
            FIELDS,
            new Table<>(POINT, result -> result.points().stream()));

    private WarmingQuantities() {}
}
