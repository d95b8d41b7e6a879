package simmerpoint.safety.field;

import simmerpoint.geometry.Vec;

/** The largest fluence of each block of cells, so few numbers that searches for strong light pass over weak light quickly. */
final class BrightestCells {
    /** Blocks of 2^{@value} cells each way. */
    private static final int BITS = 3;

    private final FieldBox box;
    private final int wide;
    private final int deep;
    private final float[] most;

    /** Of the first of {@link FieldTally#PARTS} numbers of each cell of {@code box}. */
    BrightestCells(FieldBox box, float[] cells) {
        this.box = box;
        wide = blocks(box.nx());
        deep = blocks(box.ny());
        most = new float[wide * deep * blocks(box.nz())];
        for (int k = 0; k < box.nz(); k++) {
            for (int j = 0; j < box.ny(); j++) {
                for (int i = 0; i < box.nx(); i++) {
                    float fluence = cells[FieldTally.PARTS * box.index(i, j, k)];
                    if (fluence > 0) {
                        raise(i, j, k, fluence);
                    }
                }
            }
        }
    }

    private static int blocks(int cells) {
        return ((cells - 1) >> BITS) + 1;
    }

    /** A cell counts in its neighbours' blocks, too, since light is told between the middles of cells. */
    private void raise(int i, int j, int k, float fluence) {
        for (int c = below(k); c <= above(k, box.nz()); c++) {
            for (int b = below(j); b <= above(j, box.ny()); b++) {
                for (int a = below(i); a <= above(i, box.nx()); a++) {
                    int at = (c * deep + b) * wide + a;
                    most[at] = Math.max(most[at], fluence);
                }
            }
        }
    }

    private static int below(int cell) {
        return Math.max(0, cell - 1) >> BITS;
    }

    private static int above(int cell, int cells) {
        return Math.min(cells - 1, cell + 1) >> BITS;
    }

    /** No fluence about a place of the box is larger. */
    float around(Vec place) {
        int i = block(place.x() - box.corner().x(), box.nx());
        int j = block(place.y() - box.corner().y(), box.ny());
        int k = block(place.z() - box.corner().z(), box.nz());
        return most[(k * deep + j) * wide + i];
    }

    private int block(double metres, int cells) {
        return Math.max(0, Math.min(cells - 1, (int) (metres / box.cellMetres()))) >> BITS;
    }
}
