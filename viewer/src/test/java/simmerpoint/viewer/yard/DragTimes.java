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
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;
import javafx.geometry.Point2D;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.live.LiveState;

/**
 * Times a scripted drag of the pan, frame by frame: a hand takes hold of it and moves by a pixel, and the clock runs until side view and
 * panels are drawn with the light caught anew at the new place and the boiling time worked out. Then the same with nobody's hand on it, as
 * when a key of the file is typed: the view is then fitted anew. Also, apart from other programs' load, what each kind of thread takes of
 * a processor for a frame. The command is in DEVELOPERS.md.
 */
public final class DragTimes {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final int WARM = 200;
    private static final int FRAMES = 100;
    private static final int WAY = 40;
    private static final long PATIENCE_SECONDS = 30;

    /** Kinds of threads by how their names begin. */
    private static final Map<String, String> KINDS = kinds();

    private final Yards window;
    private volatile CountDownLatch due = new CountDownLatch(0);
    private Scenario old;
    private long end;
    private final double[] whole = new double[FRAMES];
    private final Map<String, double[]> busy = new LinkedHashMap<>();

    private DragTimes(Yards window) {
        this.window = window;
        KINDS.values().forEach(kind -> busy.put(kind, new double[FRAMES]));
        FxThread.run(() -> {
            window.stage().getScene().addPostLayoutPulseListener(this::look);
            window.live.stateProperty().addListener((value, before, now) -> look());
        });
    }

    /** The frame is over when everything is drawn and answered. */
    private void look() {
        if (due.getCount() > 0 && isDrawn()) {
            end = System.nanoTime();
            due.countDown();
        }
    }

    private static Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        kinds.put("JavaFX Application", "FX thread");
        kinds.put("QuantumRenderer", "painting");
        kinds.put("live-answers", "answer");
        kinds.put("replicate-worker", "answer, other threads");
        kinds.put("ForkJoinPool", "answer, other threads");
        kinds.put("panels", "panels");
        return kinds;
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
            FxThread.run(() -> robot.mouseRelease(MouseButton.PRIMARY));
            hand.tell(out, "Pulled by the mouse");
            FxThread.run(() -> robot.mouseMove(0, 0));
            FxThread.run(() -> new DocumentEdits(window.document).begin());
            DragTimes key = new DragTimes(window);
            key.run(k -> window.document.change(
                    Map.of("stand.pull-back", String.format(Locale.ROOT, "%.1f cm", 3 + 0.1 * k))));
            key.tell(out, "Key changed");
        }
        System.exit(0);
    }

    /** One step after the other: on from one end to the other, then from the first end again, so that no result is an old one. */
    private void run(IntConsumer step) {
        for (int k = -WARM; k < FRAMES; k++) {
            int place = 1 + Math.floorMod(k, WAY);
            Map<String, Long> before = processors();
            long start = System.nanoTime();
            FxThread.run(() -> {
                old = window.live.stateProperty().get().scenario();
                due = new CountDownLatch(1);
                step.accept(place);
            });
            await(due);
            FxThread.settle();
            if (k >= 0) {
                whole[k] = (end - start) * 1e-6;
                Map<String, Long> after = processors();
                int frame = k;
                busy.forEach((kind, millis) -> millis[frame] = (after.get(kind) - before.get(kind)) * 1e-6);
            }
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

    private boolean isDrawn() {
        LiveState answer = window.live.stateProperty().get();
        return answer.scenario() != old && answer.current() && window.isDrawn();
    }

    /** Time of processors by kind of thread, ns. */
    private static Map<String, Long> processors() {
        Map<String, Long> all = new LinkedHashMap<>();
        KINDS.values().forEach(kind -> all.put(kind, 0L));
        for (ThreadInfo thread : THREADS.getThreadInfo(THREADS.getAllThreadIds())) {
            if (thread != null) {
                KINDS.forEach((name, kind) -> {
                    if (thread.getThreadName().startsWith(name)) {
                        all.merge(kind, Math.max(0, THREADS.getThreadCpuTime(thread.getThreadId())), Long::sum);
                    }
                });
            }
        }
        return all;
    }

    private void tell(PrintStream out, String what) {
        out.println(what + ", ms:");
        tell(out, "until it is drawn", whole);
        busy.forEach((kind, millis) -> tell(out, "processor, " + kind, millis));
    }

    private static void tell(PrintStream out, String what, double[] millis) {
        double[] sorted = millis.clone();
        Arrays.sort(sorted);
        out.printf(
                Locale.ROOT,
                "  %-34s median %5.1f, 95 %% %5.1f, longest %5.1f%n",
                what,
                sorted[sorted.length / 2],
                sorted[(int) (0.95 * sorted.length)],
                sorted[sorted.length - 1]);
    }
}
