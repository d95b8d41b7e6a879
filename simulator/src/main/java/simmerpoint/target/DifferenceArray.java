package simmerpoint.target;

/** Sums at equally spaced positions, held as differences, so that adding to a whole interval changes two entries. */
final class DifferenceArray {
    private final int count;
    private final double[] differences;

    DifferenceArray(int count) {
        this.count = count;
        differences = new double[count + 1];
    }

    /** Adds {@code amount} to every position κ with low ≤ κ ≤ high. */
    void add(double low, double high, double amount) {
        addPositions(first(low), last(high), amount);
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
    void addOutside(double low, double high, double holeLow, double holeHigh, double amount) {
        if (!(holeLow <= holeHigh)) {
            add(low, high, amount);
            return;
        }
        int from = first(low);
        int to = last(high);
        int holeFrom = first(holeLow);
        int holeTo = last(holeHigh);
        addPositions(from, Math.min(to, holeFrom - 1), amount);
        addPositions(Math.max(from, Math.max(holeFrom, holeTo + 1)), to, amount);
    }

    private void addPositions(int from, int to, double amount) {
        if (from <= to) {
            differences[from] += amount;
            differences[to + 1] -= amount;
        }
    }

    /** The sums at all positions. */
    double[] sums() {
        double[] out = new double[count];
        double sum = 0;
        for (int k = 0; k < count; k++) {
            sum += differences[k];
            out[k] = sum;
        }
        return out;
    }
}
