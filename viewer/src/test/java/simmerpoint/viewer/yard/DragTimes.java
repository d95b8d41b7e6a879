package simmerpoint.viewer.yard;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import simmerpoint.viewer.FxThread;

/**
 * Times a scripted drag of the pan, frame by frame: the pan is pulled back by 1 mm, and the clock runs until the side view and
 * the panels are drawn with the light caught anew at the new place. Also, apart from other programs' load, the time of a processor that the FX
 * thread takes for it. The command is in
 * DEVELOPERS.md.
 */
public final class DragTimes {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final int WARM = 60;
    private static final int FRAMES = 100;

    private DragTimes() {}

    /** Prints median, 95 % and longest. */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        try (Yards window = Yards.open(1000, 560)) {
            double[] whole = new double[FRAMES];
            double[] fx = new double[FRAMES];
            FxThread.run(() -> new DocumentEdits(window.document).begin());
            for (int k = -WARM; k < FRAMES; k++) {
                String place = String.format(Locale.ROOT, "%.1f cm", Math.abs(k) * 0.1);
                long start = System.nanoTime();
                long begin = FxThread.get(THREADS::getCurrentThreadCpuTime);
                FxThread.run(() -> window.document.change(Map.of("stand.pull-back", place)));
                while (!FxThread.get(window.yard::drawn)) {
                    Thread.onSpinWait();
                }
                double millis = (System.nanoTime() - start) * 1e-6;
                FxThread.settle();
                long busy = FxThread.get(THREADS::getCurrentThreadCpuTime) - begin;
                if (k >= 0) {
                    whole[k] = millis;
                    fx[k] = busy * 1e-6;
                }
            }
            tell(out, "key changed, caught anew, drawn", whole);
            tell(out, "of a processor's time on the FX thread, painting included", fx);
        }
        System.exit(0);
    }

    private static void tell(PrintStream out, String what, double[] millis) {
        Arrays.sort(millis);
        out.printf(
                Locale.ROOT,
                "%s: median %.1f ms, 95 %% %.1f ms, longest %.1f ms%n",
                what,
                millis[millis.length / 2],
                millis[(int) (0.95 * millis.length)],
                millis[millis.length - 1]);
    }
}
