package simmerpoint.safety.field;

/**
 * The tallies of independent replicates added up in their order, however many threads work on them: whoever is ahead waits.
 * Memory: five numbers in single precision a cell, so 20 MB for a million of them.
 */
final class FieldSums {
    private final float[] sums;
    private final float[] squares;
    private int added;

    FieldSums(FieldBox box) {
        sums = new float[FieldTally.PARTS * box.cells()];
        squares = new float[box.cells()];
    }

    void add(FieldTally tally) {
        float[] more = tally.sums();
        for (int chunk = 0; chunk < tally.chunks(); chunk++) {
            if (tally.isLit(chunk)) {
                add(more, chunk << FieldTally.CHUNK_BITS, tally.end(chunk));
            }
        }
        added++;
    }

    private void add(float[] more, int from, int to) {
        for (int k = from; k < to; k++) {
            sums[k] += more[k];
        }
        for (int cell = from / FieldTally.PARTS; cell < to / FieldTally.PARTS; cell++) {
            float fluence = more[FieldTally.PARTS * cell];
            squares[cell] += fluence * fluence;
        }
    }

    /** Means over the replicates and the standard error of the fluence, all divided by the cell's volume. */
    LightField field(FieldBox box) {
        float[] mean = new float[sums.length];
        float[] error = new float[squares.length];
        double scale = 1 / (added * box.cellVolume());
        for (int k = 0; k < mean.length; k++) {
            mean[k] = (float) (sums[k] * scale);
        }
        for (int cell = 0; cell < error.length; cell++) {
            if (squares[cell] == 0) {
                continue;
            }
            double sum = sums[FieldTally.PARTS * cell];
            double spread = Math.max(0, squares[cell] - sum * sum / added);
            error[cell] = (float) (Math.sqrt(spread / (added * (added - 1.0))) / box.cellVolume());
        }
        return new LightField(box, mean, error);
    }
}
