package simmerpoint.safety.field;

import java.util.Arrays;
import simmerpoint.tracing.LightBatch;

/** Puts the rays of a batch in order around the axis of the dish (a sort by counting). Not thread-safe. */
final class AroundDish {
    private static final int STEPS = 1024;

    private final int[] order;
    private final int[] step;
    private final int[] begin = new int[STEPS + 2];
    private final double[] p = new double[3];

    AroundDish(int batch) {
        order = new int[batch];
        step = new int[batch];
    }

    /** Numbers of the rays, by where their mirror points lie. The array is filled again next time. */
    int[] order(LightBatch light, FrameMap toDish) {
        Arrays.fill(begin, 0);
        for (int i = 0; i < order.length; i++) {
            toDish.point(light.px[i], light.py[i], light.pz[i], p);
            step[i] = step(p[0], p[1]);
            begin[step[i] + 1]++;
        }
        for (int k = 0; k <= STEPS; k++) {
            begin[k + 1] += begin[k];
        }
        for (int i = 0; i < order.length; i++) {
            order[begin[step[i]]++] = i;
        }
        return order;
    }

    /** Which of {@value #STEPS} steps around; they are not equally wide. */
    private static int step(double x, double y) {
        double length = Math.abs(x) + Math.abs(y);
        double turn = length > 0 ? x / length : 0;
        double around = y >= 0 ? (1 - turn) / 4 : (3 + turn) / 4;
        return (int) Math.max(0, Math.min(STEPS - 1, STEPS * around));
    }
}
