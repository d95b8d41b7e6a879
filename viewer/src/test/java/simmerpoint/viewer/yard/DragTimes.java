package simmerpoint.viewer.yard;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import simmerpoint.viewer.FxThread;

/**
 * Times a scripted drag of the pan, frame by frame: the pan is pulled back by 1 mm, and the clock runs until the side view and
 * the panels are drawn with the light caught anew at the new place. Also, alone, the work on the FX thread. The command is in
 * DEVELOPERS.md.
 */
public final class DragTimes {
    private static final int WARM = 60;
    private static final int FRAMES = 100;

    private DragTimes() {}

    /** Prints median, 95 % and longest. */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        try (Yards window = Yards.open(1000, 560)) {
            double[] whole = new double[FRAMES];
            double[] fx = new double[FRAMES];
            FxThread.run(() -> new DeskEdits(window.desk).begin());
            for (int k = -WARM; k < FRAMES; k++) {
                String place = String.format(Locale.ROOT, "%.1f cm", Math.abs(k) * 0.1);
                long start = System.nanoTime();
                double busy = FxThread.get(() -> {
                    long begin = System.nanoTime();
                    window.desk.change(Map.of("stand.pull-back", place));
                    return (System.nanoTime() - begin) * 1e-6;
                });
                while (!FxThread.get(() -> window.yard.known().current()
                        && window.yard
                                .known()
                                .scenario()
                                .equals(window.desk.readProperty().get().scenario()))) {
                    Thread.onSpinWait();
                }
                if (k >= 0) {
                    whole[k] = (System.nanoTime() - start) * 1e-6;
                    fx[k] = busy;
                }
            }
            tell(out, "key changed, caught anew, drawn", whole);
            tell(out, "of it on the FX thread before the light", fx);
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
