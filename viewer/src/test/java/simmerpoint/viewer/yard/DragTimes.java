package simmerpoint.viewer.yard;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.IntConsumer;
import javafx.geometry.Point2D;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.live.PanelState;

/**
 * Times a scripted drag of the pan, frame by frame: a hand takes hold of it and moves by a pixel, at any moment between two beats of the
 * screen. The clock runs until light caught anew at the new place and the boiling time are known, and on until side view and panels are
 * drawn with them, which waits for the next beat. Then the same with nobody's hand on it, as when a value is typed: the view is then fitted
 * anew. Also, apart from other programs' load, what each kind of thread takes of a processor for a frame. The command is in
 * DEVELOPERS.md.
 */
public final class DragTimes {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final int WARM = 200;
    private static final int FRAMES = 100;
    private static final int WAY = 40;
    private static final long PATIENCE_SECONDS = 30;
    private static final long BEAT_NANOS = TimeUnit.SECONDS.toNanos(1) / 60;

    /** Kinds of threads by how their names begin. */
    private static final Map<String, String> KINDS = Map.of(
            "JavaFX Application", "FX thread",
            "QuantumRenderer", "painting",
            "live-answers", "answer",
            "replicate-worker", "answer, other threads",
            "ForkJoinPool", "answer, other threads",
            "panels", "panels");

    private final Yards window;
    private final Random moments = new Random(1);
    private final Map<String, double[]> millis = new LinkedHashMap<>();
    private volatile CountDownLatch due = new CountDownLatch(0);
    private Scenario old;
    private long known;
    private long drawn;

    private DragTimes(Yards window) {
        this.window = window;
        FxThread.run(() -> {
            window.live.stateProperty().addListener((value, before, now) -> look());
            window.panels.stateProperty().addListener((value, before, now) -> look());
            window.stage().getScene().addPostLayoutPulseListener(this::look);
        });
    }

    /** Prints median, 95 % and longest. */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        try (Yards window = Yards.open(1000, 560, TraceOptions.defaults())) {
            Point2D from = window.onScreen(Handle.PULL_BACK);
            Robot robot = FxThread.get(Robot::new);
            FxThread.run(() -> robot.mouseMove(from));
            FxThread.settle();
            FxThread.run(() -> robot.mousePress(MouseButton.PRIMARY));
            DragTimes hand = new DragTimes(window);
            hand.run(k -> robot.mouseMove(from.getX() + k, from.getY()));
            hand.tell(out, "Pulled by the mouse");
            FxThread.run(() -> robot.mouseRelease(MouseButton.PRIMARY));
            FxThread.run(() -> robot.mouseMove(0, 0));
            FxThread.run(() -> new DocumentEdits(window.document).begin());
            DragTimes key = new DragTimes(window);
            key.run(k -> window.document.change(
                    Map.of("stand.pull-back", String.format(Locale.ROOT, "%.1f cm", 3 + 0.1 * k))));
            key.tell(out, "Value changed, nobody's hand on it");
        }
        System.exit(0);
    }

    /** One step after the other: on to the end of the way, then from its beginning again, so that no result is an old one. */
    private void run(IntConsumer step) {
        for (int k = -WARM; k < FRAMES; k++) {
            int place = 1 + Math.floorMod(k, WAY);
            LockSupport.parkNanos((long) (moments.nextDouble() * BEAT_NANOS));
            Map<String, Long> before = processors();
            long start = System.nanoTime();
            FxThread.run(() -> {
                old = window.live.stateProperty().get().scenario();
                known = 0;
                due = new CountDownLatch(1);
                step.accept(place);
            });
            await(due);
            FxThread.settle();
            if (k >= 0) {
                int frame = k;
                Map<String, Long> times = new LinkedHashMap<>();
                times.put("until it is known", known - start);
                times.put("until it is drawn", drawn - start);
                processors().forEach((kind, now) -> times.put("processor, " + kind, now - before.get(kind)));
                times.forEach(
                        (what, nanos) -> millis.computeIfAbsent(what, w -> new double[FRAMES])[frame] = nanos * 1e-6);
            }
        }
    }

    /** Whether everything is known by now, or even drawn. */
    private void look() {
        LiveState answer = window.live.stateProperty().get();
        PanelState panels = window.panels.stateProperty().get();
        boolean all = due.getCount() > 0
                && !answer.scenario().equals(old)
                && answer.current()
                && panels.scenario().equals(answer.scenario());
        if (all && known == 0) {
            known = System.nanoTime();
        }
        if (all && window.isDrawn()) {
            drawn = System.nanoTime();
            due.countDown();
        }
    }

    private static void await(CountDownLatch done) {
        try {
            if (!done.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new IllegalStateException("nothing is drawn");
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Time of processors by kind of thread, ns. */
    private static Map<String, Long> processors() {
        Map<String, Long> all = new TreeMap<>();
        for (ThreadInfo thread : THREADS.getThreadInfo(THREADS.getAllThreadIds())) {
            KINDS.forEach((name, kind) -> {
                boolean counts = thread != null && thread.getThreadName().startsWith(name);
                long nanos = counts ? THREADS.getThreadCpuTime(thread.getThreadId()) : 0;
                all.merge(kind, Math.max(0, nanos), Long::sum);
            });
        }
        return all;
    }

    private void tell(PrintStream out, String what) {
        out.println(what + ", ms:");
        millis.forEach((name, all) -> {
            double[] sorted = all.clone();
            Arrays.sort(sorted);
            out.printf(
                    Locale.ROOT,
                    "  %-34s median %5.1f, 95 %% %5.1f, longest %5.1f%n",
                    name,
                    sorted[sorted.length / 2],
                    sorted[(int) (0.95 * sorted.length)],
                    sorted[sorted.length - 1]);
        });
    }
}
