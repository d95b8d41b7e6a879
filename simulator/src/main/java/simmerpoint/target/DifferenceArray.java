package simmerpoint.target;

/** Sums over a row of equally spaced positions, to which whole stretches are added at the cost of their two ends. */
final class DifferenceArray {
    private final int count;
    private final double[] change;

    DifferenceArray(int count) {
        this.count = count;
        change = new double[count + 1];
    }

    /** Adds {@code amount} to every position κ with low ≤ κ ≤ high. */
    void add(double low, double high, double amount) {
        int from = first(low);
        int to = last(high);
        if (from <= to) {
            change[from] += amount;
            change[to + 1] -= amount;
        }
    }

    /** First position not below {@code low}; {@code count} if there is none. */
    private int first(double low) {
        return (int) Math.ceil(Math.max(0, Math.min(count, low)));
    }

    /** Last position not above {@code high}; −1 if there is none. */
    private int last(double high) {
        return (int) Math.floor(Math.max(-1, Math.min(count - 1, high)));
    }

    /** Adds to every position in (low, high) but outside [holeLow, holeHigh]. */
    void addBeside(double low, double high, double holeLow, double holeHigh, double amount) {
        if (!(holeLow <= holeHigh)) {
            add(low, high, amount);
            return;
        }
        int from = first(low);
        int to = last(high);
        int holeFrom = first(holeLow);
        int holeTo = last(holeHigh);
        addSteps(from, Math.min(to, holeFrom - 1), amount);
        addSteps(Math.max(from, Math.max(holeFrom, holeTo + 1)), to, amount);
    }

    private void addSteps(int from, int to, double amount) {
        if (from <= to) {
            change[from] += amount;
            change[to + 1] -= amount;
        }
    }

    /** The sums at all positions. */
    double[] sums() {
        double[] out = new double[count];
        double sum = 0;
        for (int k = 0; k < count; k++) {
            sum += change[k];
            out[k] = sum;
        }
        return out;
    }
}
