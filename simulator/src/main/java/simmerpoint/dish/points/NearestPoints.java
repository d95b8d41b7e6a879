package simmerpoint.dish.points;

import java.util.Arrays;

/** Finds the points nearest to a place in plan: they lie in square buckets, which are searched ring by ring. */
final class NearestPoints {
    private static final int PER_BUCKET = 3;

    private final double[] x;
    private final double[] y;
    private final double left;
    private final double bottom;
    private final double size;
    private final int across;
    private final int up;
    private final int[] first;
    private final int[] order;

    NearestPoints(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        left = Arrays.stream(x).min().orElse(0);
        bottom = Arrays.stream(y).min().orElse(0);
        double width = Arrays.stream(x).max().orElse(0) - left;
        double height = Arrays.stream(y).max().orElse(0) - bottom;
        size = Math.max(Math.sqrt(width * height * PER_BUCKET / x.length), 1e-9);
        across = 1 + (int) (width / size);
        up = 1 + (int) (height / size);
        first = new int[across * up + 1];
        order = new int[x.length];
        sort();
    }

    private void sort() {
        int[] bucket = new int[x.length];
        for (int i = 0; i < x.length; i++) {
            bucket[i] = row(y[i]) * across + column(x[i]);
            first[bucket[i] + 1]++;
        }
        for (int k = 1; k < first.length; k++) {
            first[k] += first[k - 1];
        }
        int[] next = first.clone();
        for (int i = 0; i < x.length; i++) {
            order[next[bucket[i]]++] = i;
        }
    }

    private int column(double at) {
        return Math.max(0, Math.min(across - 1, (int) ((at - left) / size)));
    }

    private int row(double at) {
        return Math.max(0, Math.min(up - 1, (int) ((at - bottom) / size)));
    }

    /** A search. Not thread-safe. */
    final class Search {
        /** Numbers of the points found, nearest first. */
        final int[] found;
        /** Squares of their distances, m². */
        final double[] square;

        private int count;

        /** For so many points at a time, or all there are. */
        Search(int wanted) {
            found = new int[Math.min(wanted, x.length)];
            square = new double[found.length];
        }

        /** Finds the points nearest to a place. */
        void near(double atX, double atY) {
            count = 0;
            int c = column(atX);
            int r = row(atY);
            for (int ring = 0; ring <= Math.max(across, up); ring++) {
                // Whatever lies in farther rings is at least so far off.
                double least = Math.max(0, ring - 1) * size;
                if (count == found.length && least * least > square[count - 1]) {
                    return;
                }
                look(c, r, ring, atX, atY);
            }
        }

        private void look(int c, int r, int ring, double atX, double atY) {
            for (int j = Math.max(0, r - ring); j <= Math.min(up - 1, r + ring); j++) {
                boolean edge = Math.abs(j - r) == ring;
                int step = edge || ring == 0 ? 1 : 2 * ring;
                for (int i = c - ring; i <= c + ring; i += step) {
                    if (i >= 0 && i < across) {
                        take(j * across + i, atX, atY);
                    }
                }
            }
        }

        private void take(int bucket, double atX, double atY) {
            for (int k = first[bucket]; k < first[bucket + 1]; k++) {
                int point = order[k];
                double dx = x[point] - atX;
                double dy = y[point] - atY;
                insert(point, dx * dx + dy * dy);
            }
        }

        private void insert(int point, double distance) {
            if (count == found.length && distance >= square[count - 1]) {
                return;
            }
            int at = count < found.length ? count++ : count - 1;
            while (at > 0 && square[at - 1] > distance) {
                square[at] = square[at - 1];
                found[at] = found[at - 1];
                at--;
            }
            square[at] = distance;
            found[at] = point;
        }
    }
}
