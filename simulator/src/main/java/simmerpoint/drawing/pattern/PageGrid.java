package simmerpoint.drawing.pattern;

import simmerpoint.geometry.Polygon;

/**
 * How a piece is spread over pages that overlap.
 *
 * @param turned whether the piece is turned by a quarter
 * @param columns pages side by side
 * @param rows pages one above the other
 * @param page what one page shows of it
 */
record PageGrid(boolean turned, int columns, int rows, Page page) {
    /**
     * What a page shows.
     *
     * @param width m
     * @param height m
     * @param overlap how much of it the next page shows again, m
     */
    record Page(double width, double height, double overlap) {
        /** Pages that cover a length. */
        static int count(double length, double shown, double overlap) {
            return length <= shown ? 1 : (int) Math.ceil((length - shown) / (shown - overlap) - 1e-9) + 1;
        }

        PageGrid grid(boolean turned, double across, double up) {
            return new PageGrid(turned, count(across, width, overlap), count(up, height, overlap), this);
        }
    }

    /** The way that takes fewer pages. */
    static PageGrid of(Polygon outline, Page page) {
        PageGrid as = page.grid(false, outline.width(), outline.height());
        PageGrid turned = page.grid(true, outline.height(), outline.width());
        return turned.pages() < as.pages() ? turned : as;
    }

    int pages() {
        return columns * rows;
    }

    /** From one page's left edge to the next one's, m. */
    double stepAcross() {
        return page.width() - page.overlap();
    }

    /** From one page's upper edge to the next one's, m. */
    double stepDown() {
        return page.height() - page.overlap();
    }

    /** Name of a page: a letter for its column, a number for its row. */
    static String name(int column, int row) {
        return Character.toString((char) ('A' + column)) + (row + 1);
    }
}
