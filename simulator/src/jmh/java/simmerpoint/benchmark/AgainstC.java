package simmerpoint.benchmark;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceStudy;

/**
 * Whole traces against a plain C program ({@code src/jmh/c/plain.c}), compiled and run here, one after the other in turn on the
 * same machine: time per ray, two threads against one, and time until the caught watts are known to 0.1 %. Each figure is the
 * median of ratios of neighbours in time, so that other work on the machine falls on both.
 *
 * <p>{@code mvn -q -P jmh test-compile exec:exec@against-c}, with {@code -Drounds=9} for a quicker look. Needs gcc.
 */
public final class AgainstC {
    private static final long C_RAYS = 1_000_000;
    private static final long RAYS = 1 << 20;
    private static final int WARM_UP = 6;
    private static final int SEEDS = 48;
    private static final int LEAST_BITS = 11;
    private static final int MOST_BITS = 18;
    private static final int MANY = 20;
    private static final double WANTED = 1e-3;

    private final Path program;
    private final int rounds;

    private AgainstC(Path program, int rounds) {
        this.program = program;
        this.rounds = rounds;
    }

    /** Prints all ratios; the argument is the C source. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path program = Files.createTempDirectory("plain").resolve("plain");
        run(List.of("gcc", "-O3", "-o", program.toString(), arguments[0], "-lm"));
        AgainstC race = new AgainstC(program, Integer.getInteger("rounds", 21));
        race.show(Dishes.DISC, "disc");
        race.show(Dishes.PAN_ALL_FLAWS, "pan");
    }

    private static String run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IOException(command + ": " + text);
        }
        return text;
    }

    /** Nanoseconds per ray of the C program, and the share of rays that hit. */
    private double[] plain(String dish, int seed) throws IOException, InterruptedException {
        String text = run(List.of(program.toString(), dish, "" + C_RAYS, "" + seed));
        return Arrays.stream(text.strip().split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private void show(Dishes dish, String name) throws IOException, InterruptedException {
        Scenario scenario = dish.scenario();
        TraceOptions one = TraceOptions.defaults().withRays(RAYS).withThreads(1);
        for (int k = 0; k < WARM_UP; k++) {
            timed(scenario, one, 1);
            timed(scenario, one, 2);
        }
        List<double[]> all = new ArrayList<>();
        for (int k = 0; k < rounds; k++) {
            all.add(new double[] {plain(name, k + 1)[0], timed(scenario, one, 1) / RAYS, timed(scenario, one, 2) / RAYS
            });
        }
        double share = plain(name, 99)[1];
        System.out.printf(
                Locale.ROOT,
                "%s: ns per ray: C %.0f, ours %.0f on one thread, %.0f on two (medians); ours ÷ C %.2f; two threads %.2f times one%n",
                name,
                median(all, r -> r[0]),
                median(all, r -> r[1]),
                median(all, r -> r[2]),
                median(all, r -> r[1] / r[0]),
                median(all, r -> r[1] / r[2]));
        untilPrecise(scenario, name, share, median(all, r -> r[0]));
    }

    /**
     * Watts alone, as studies ask for them: the number of rays at which their standard error is 0.1 %, and how long that takes, both
     * between powers of two by straight lines of the logarithms. Plain sampling needs (1 − p)/p/0.001² rays, p its share of hits
     * (variance of a share of N rays: p(1 − p)/N).
     */
    private void untilPrecise(Scenario scenario, String name, double share, double nanosOfC) {
        double plain = (1 - share) / share / (WANTED * WANTED);
        double[] error = new double[MOST_BITS + 1];
        for (int bits = LEAST_BITS; bits <= MOST_BITS; bits++) {
            error[bits] = error(scenario, bits);
        }
        int bits = LEAST_BITS + 1;
        while (bits < MOST_BITS && error[bits] > WANTED) {
            bits++;
        }
        double between = Math.log(error[bits - 1] / WANTED) / Math.log(error[bits - 1] / error[bits]);
        System.out.printf(
                Locale.ROOT,
                "%s: 0.1 %% of the caught watts: C %,.0f rays, %.1f ms; ours %,.0f rays",
                name,
                plain,
                plain * nanosOfC * 1e-6,
                Math.pow(2, bits - 1 + between));
        for (int threads = 1; threads <= 2; threads++) {
            double less = time(scenario, bits - 1, threads);
            double more = time(scenario, bits, threads);
            double nanos = less * Math.pow(more / less, between);
            System.out.printf(
                    Locale.ROOT,
                    ", %.2f ms on %d thread%s: 1/%.0f",
                    nanos * 1e-6,
                    threads,
                    threads == 1 ? "" : "s",
                    plain * nanosOfC / nanos);
        }
        System.out.println();
    }

    private static TraceOptions options(int bits, long seed, int threads) {
        return TraceOptions.defaults().withRays(1L << bits).withSeed(seed).withThreads(threads);
    }

    /** Relative standard error of the caught watts, the root of its mean square over many seeds. */
    private static double error(Scenario scenario, int bits) {
        double sum = 0;
        for (int seed = 1; seed <= SEEDS; seed++) {
            double error =
                    watts(scenario, options(bits, seed, 2)).ledger().caught().relativeError();
            sum += error * error;
        }
        return Math.sqrt(sum / SEEDS);
    }

    private static PairedWatts watts(Scenario scenario, TraceOptions options) {
        return PairedStudy.watts(List.of(scenario), options, Progress.NONE).get(0);
    }

    /** The median of many runs. */
    private double time(Scenario scenario, int bits, int threads) {
        List<double[]> all = new ArrayList<>();
        for (int k = 0; k < MANY * rounds; k++) {
            all.add(new double[] {timed(() -> watts(scenario, options(bits, 1, threads)))});
        }
        return median(all, r -> r[0]);
    }

    private static double median(List<double[]> rounds, ToDoubleFunction<double[]> figure) {
        double[] all = rounds.stream().mapToDouble(figure).sorted().toArray();
        return all[all.length / 2];
    }

    private static double timed(Scenario scenario, TraceOptions options, int threads) {
        return timed(() -> TraceStudy.run(scenario, options.withThreads(threads), Progress.NONE));
    }

    private static double timed(Supplier<?> work) {
        long start = System.nanoTime();
        work.get();
        return System.nanoTime() - start;
    }
}
