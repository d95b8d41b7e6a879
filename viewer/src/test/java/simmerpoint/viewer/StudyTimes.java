package simmerpoint.viewer;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import simmerpoint.command.Main;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.viewer.yard.DragTimes;

/**
 * Times whole studies as commands, each in a Java machine of its own: the first run from the start of the machine, and the least of a
 * few more when its code is compiled. Each stands beside its aim, and as a multiple of plain tracing of 2^20 rays in the same run: other
 * programs slow both. The command is in DEVELOPERS.md; it is started at the root of the project.
 */
public final class StudyTimes {
    private static final String EXAMPLE = "scenarios/tea-kitchen.yaml";
    private static final String SLOPES =
            "mirror.slope-error=2mrad,2.5mrad,3mrad,3.5mrad,4mrad,4.5mrad,5mrad,5.5mrad,6mrad,"
                    + "6.5mrad,7mrad,7.5mrad,8mrad,8.5mrad,9mrad,9.5mrad,10mrad,11mrad,12mrad,13mrad";
    private static final String LIKELY = "likely";
    private static final long REFERENCE_RAYS = 1L << 20;
    private static final int REFERENCE_RUNS = 12;

    /** A study, how many parts of it the aim is for, the aim in seconds, and how often it is run again. */
    private record Aim(String name, int parts, double seconds, int again, String... args) {}

    private static final List<Aim> AIMS = List.of(
            new Aim("trace", 1, Double.NaN, 5, "trace", EXAMPLE),
            new Aim("likely range", 1, 0.2, 9, LIKELY, EXAMPLE),
            new Aim("compare --quick, each of 20", 20, 0.015, 25, "compare", EXAMPLE, "--vary", SLOPES, "--quick"),
            new Aim("compare, each of 20", 20, Double.NaN, 2, "compare", EXAMPLE, "--vary", SLOPES),
            new Aim("aim", 1, 1.5, 4, "aim", EXAMPLE),
            new Aim("day --year", 1, 2, 3, "day", "scenarios/lake-hut-evening.yaml", "--year"),
            new Aim("report", 1, 3, 2, "report", EXAMPLE, "--html", "-"),
            new Aim(
                    "design",
                    1,
                    8,
                    1,
                    "design",
                    EXAMPLE,
                    "--level",
                    "boil",
                    "--cut",
                    "both",
                    "--panels",
                    "..96",
                    "--diameter",
                    "60cm..1.4m"));

    private StudyTimes() {}

    /** Without arguments all of them; else one, as the machine that is timed. */
    public static void main(String[] args) throws Exception {
        if (args.length > 0) {
            timed(Integer.parseInt(args[0]), Arrays.copyOfRange(args, 1, args.length));
            return;
        }
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        double[] reference = reference();
        out.printf(
                Locale.ROOT,
                "Plain tracing of 2^20 rays: %.3f s, %.3f s of processors; the ratios are to this.%n",
                reference[0],
                reference[1]);
        out.printf(
                "%-28s %8s   %-26s   %-26s%n", "seconds", "aim", "first: wall, processors", "warm: wall, processors");
        for (Aim aim : AIMS) {
            double[] t = inItsOwn(aim.again(), aim.args());
            out.printf(
                    Locale.ROOT,
                    "%-28s %8s   %6.3f (%5.1f) %6.3f (%5.1f)   %6.3f (%5.1f) %6.3f (%5.1f)%n",
                    aim.name(),
                    Double.isNaN(aim.seconds()) ? "" : String.format(Locale.ROOT, "%.3f", aim.seconds()),
                    t[0] / aim.parts(),
                    t[0] / aim.parts() / reference[0],
                    t[1] / aim.parts(),
                    t[1] / aim.parts() / reference[1],
                    t[2] / aim.parts(),
                    t[2] / aim.parts() / reference[0],
                    t[3] / aim.parts(),
                    t[3] / aim.parts() / reference[1]);
        }
        out.println("A frame of a drag, aim 17 ms in the median:");
        DragTimes.main(args);
    }

    private static double[] reference() {
        TraceOptions rays = TraceOptions.defaults().withRays(REFERENCE_RAYS);
        double[] least = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        for (int k = 0; k < REFERENCE_RUNS; k++) {
            least = least(least, () -> TraceStudy.run(ScenarioReader.builtIn().scenario(), rays, Progress.NONE));
        }
        return least;
    }

    /** Wall time and that of processors: of the first run, start included, and the least of those after it. */
    private static double[] inItsOwn(int again, String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), StudyTimes.class.getName()));
        command.add(Integer.toString(again));
        command.addAll(List.of(args));
        Path said = Files.createTempFile("times", ".txt");
        try {
            new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(said.toFile())
                    .start()
                    .waitFor();
            List<String> lines = Files.readAllLines(said);
            return Arrays.stream(lines.get(lines.size() - 1).split(" "))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
        } finally {
            Files.delete(said);
        }
    }

    private static void timed(int again, String... args) throws IOException, ScenarioException {
        Runnable work = work(args);
        ProcessHandle.Info here = ProcessHandle.current().info();
        work.run();
        double wall = seconds(Duration.between(here.startInstant().orElseThrow(), Instant.now()));
        double busy = processors();
        double[] least = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        for (int k = 0; k < again; k++) {
            least = least(least, work);
        }
        System.err.printf(Locale.ROOT, "%n%f %f %f %f%n", wall, busy, least[0], least[1]);
    }

    private static Runnable work(String... args) throws IOException, ScenarioException {
        if (!args[0].equals(LIKELY)) {
            return () -> Main.main(args);
        }
        CheckedScenario read = ScenarioReader.read(Path.of(args[1]));
        return () -> LikelyStudy.run(read, LikelyStudy.FOR_RANGE, TraceOptions.defaults(), Progress.NONE);
    }

    private static double[] least(double[] so, Runnable work) {
        double busy = processors();
        long start = System.nanoTime();
        work.run();
        double wall = (System.nanoTime() - start) * 1e-9;
        return new double[] {Math.min(so[0], wall), Math.min(so[1], processors() - busy)};
    }

    private static double processors() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                        .getProcessCpuTime()
                * 1e-9;
    }

    private static double seconds(Duration time) {
        return time.toNanos() * 1e-9;
    }
}
