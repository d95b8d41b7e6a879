package simmerpoint.command;

import picocli.CommandLine.Option;
import simmerpoint.study.trace.TraceOptions;

/** The options of every command that traces. */
final class RayOptions {
    /** Bound on rays where a precision is asked for without one. */
    private static final long PATIENCE = 1L << 28;

    @Option(
            names = "--rays",
            paramLabel = "N",
            converter = Converters.Rays.class,
            description =
                    "Rays of a full trace: 200000, 200k, 1M, 1e6 (default: 131072; compare --quick: 32768; day --year: 16384), rounded up to 16 "
                            + "times a power of two. A study of many traces casts a share of them in each. With "
                            + "--precision the most rays (default then: 268435456).")
    private Long rays;

    @Option(
            names = "--precision",
            paramLabel = "PERCENT",
            converter = Converters.Precision.class,
            description = "Trace until the caught watts are this sure, for instance 0.2%%.")
    private Double precision;

    @Option(
            names = "--seed",
            paramLabel = "N",
            converter = Converters.Seed.class,
            description = "Whole number that seeds chance (default: 1). Another seed is also another dish glued with "
                    + "the same care: its panels lean differently (mirror.panel-tilt).")
    private long seed = TraceOptions.DEFAULT_SEED;

    @Option(
            names = "--threads",
            paramLabel = "N",
            converter = Converters.Threads.class,
            description = "Threads to use, 1 to 1024 (default: one per processor). Never changes the answer.")
    private Integer threads;

    @Option(
            names = "--peak-disc",
            paramLabel = "LENGTH",
            converter = Converters.Disc.class,
            description =
                    "Radius over which the hottest spot is averaged (default: 10 mm); kept between a fiftieth of the "
                            + "target's radius and all of it.")
    private double peakDisc = TraceOptions.DEFAULT_PEAK_DISC_RADIUS;

    TraceOptions options() {
        return options(TraceOptions.DEFAULT_RAYS);
    }

    /** The options where {@code usual} rays are traced unless something else is asked for. */
    TraceOptions options(long usual) {
        TraceOptions options =
                TraceOptions.defaults().withRays(usual).withSeed(seed).withPeakDiscRadius(peakDisc);
        if (precision != null) {
            options = options.withPrecision(precision).withRays(PATIENCE);
        }
        if (rays != null) {
            options = options.withRays(rays);
        }
        return threads == null ? options : options.withThreads(threads);
    }
}
