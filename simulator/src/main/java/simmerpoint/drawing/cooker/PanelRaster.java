package simmerpoint.drawing.cooker;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.PanelOutline;
import simmerpoint.drawing.Raster;
import simmerpoint.geometry.Vec;

/**
 * Which panel is seen where, looking from the sun's side along the axis, upper edge up, so +y of the dish to the left: a
 * square of small dots, four of them to a pixel of the picture. So the picture of 100,000 panels is coloured anew as quickly as
 * that of ten. Immutable.
 */
public final class PanelRaster {
    /** Dots across. */
    static final int DOTS = 960;

    /** Pixels across. */
    static final int PIXELS = DOTS / 2;

    private static final int NONE = -1;
    private static final int EDGE = -2;

    private static final int MOST_WITH_EDGES = 3000;

    private final DishPlan dish;
    private final double reach;
    private final double middle;
    private final int[] panel = new int[DOTS * DOTS];
    private final boolean[] edge = new boolean[DOTS * DOTS];
    /** Number of the mix of each pixel: few are of more than one panel. */
    private final int[] mix = new int[PIXELS * PIXELS];

    private final List<Mix> mixes;
    private final List<PanelOutline> outlines;

    private PanelRaster(DishPlan dish, List<PanelOutline> outlines) {
        this.dish = dish;
        this.outlines = List.copyOf(outlines);
        middle = dish.aperture().x();
        reach = 1.01
                * outlines.stream()
                        .flatMap(o -> o.edge().stream())
                        .mapToDouble(v -> Math.hypot(v.x() - middle, v.y()))
                        .max()
                        .orElse(dish.radiusMetres());
        Arrays.fill(panel, NONE);
        outlines.forEach(this::fill);
        if (outlines.size() <= MOST_WITH_EDGES) {
            edges();
        }
        Map<Mix, Integer> numbers = new LinkedHashMap<>();
        Arrays.setAll(mix, pixel -> numbers.computeIfAbsent(mix(pixel), m -> numbers.size()));
        mixes = List.copyOf(numbers.keySet());
    }

    /** What the four dots of a pixel are: numbers of panels, {@link #EDGE} or {@link #NONE}. */
    private record Mix(int first, int second, int third, int fourth) {
        int argb(int[] colours, int edges) {
            int covered = 0;
            int red = 0;
            int green = 0;
            int blue = 0;
            for (int dot : new int[] {first, second, third, fourth}) {
                if (dot == EDGE || (dot >= 0 && dot < colours.length)) {
                    int rgb = dot == EDGE ? edges : colours[dot];
                    covered++;
                    red += (rgb >> 16) & 0xFF;
                    green += (rgb >> 8) & 0xFF;
                    blue += rgb & 0xFF;
                }
            }
            return covered == 0
                    ? 0
                    : ((covered * 255 / 4) << 24)
                            | ((red / covered) << 16)
                            | ((green / covered) << 8)
                            | (blue / covered);
        }
    }

    private Mix mix(int pixel) {
        int at = 2 * (pixel / PIXELS) * DOTS + 2 * (pixel % PIXELS);
        return new Mix(seen(at), seen(at + 1), seen(at + DOTS), seen(at + DOTS + 1));
    }

    private int seen(int dot) {
        return edge[dot] ? EDGE : panel[dot];
    }

    /** Of a dish; takes some milliseconds, for very many panels some tenths of a second. */
    public static PanelRaster of(DishPlan dish) {
        return new PanelRaster(dish, dish.outlines());
    }

    /** Of which dish. */
    public DishPlan dish() {
        return dish;
    }

    /** Half of what is seen across, m. */
    public double reachMetres() {
        return reach;
    }

    /** Distance of the middle of what is seen from the axis, towards the upper edge, m. */
    public double middleMetres() {
        return middle;
    }

    /** The panel at a place from the left and from the top, as shares of the square; below 0 where there is none. */
    public int panelAt(double across, double down) {
        int i = (int) Math.floor(across * DOTS);
        int j = (int) Math.floor(down * DOTS);
        return i < 0 || j < 0 || i >= DOTS || j >= DOTS ? NONE : panel[j * DOTS + i];
    }

    /** The outline of a panel by its number; empty where there is no such panel. */
    Optional<PanelOutline> outline(int number) {
        return number < 0
                ? Optional.empty()
                : outlines.stream().filter(o -> o.panel() == number).findFirst();
    }

    private double column(Vec v) {
        return (1 - v.y() / reach) / 2 * DOTS;
    }

    private double row(Vec v) {
        return (1 - (v.x() - middle) / reach) / 2 * DOTS;
    }

    /** Fills the dots whose middles lie inside, row by row. */
    private void fill(PanelOutline outline) {
        double top = outline.edge().stream().mapToDouble(this::row).min().orElse(0);
        double bottom = outline.edge().stream().mapToDouble(this::row).max().orElse(0);
        double[] crossed = new double[outline.edge().size() + outline.hole().size()];
        for (int j = Math.max(0, (int) Math.ceil(top - 0.5)); j < Math.min(DOTS, bottom); j++) {
            int n = cross(outline.edge(), j + 0.5, crossed, 0);
            n = cross(outline.hole(), j + 0.5, crossed, n);
            Arrays.sort(crossed, 0, n);
            for (int k = 0; k + 1 < n; k += 2) {
                int from = Math.max(0, (int) Math.ceil(crossed[k] - 0.5));
                int to = Math.min(DOTS, (int) Math.ceil(crossed[k + 1] - 0.5));
                if (to > from) {
                    Arrays.fill(panel, j * DOTS + from, j * DOTS + to, outline.panel());
                }
            }
        }
    }

    /** Adds to {@code n} crossings those of a polygon's sides with the line at {@code row}. */
    private int cross(List<Vec> corners, double row, double[] crossed, int n) {
        int count = n;
        for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
            double r1 = row(corners.get(j));
            double r2 = row(corners.get(i));
            if (r1 <= row != r2 <= row) {
                double share = (row - r1) / (r2 - r1);
                crossed[count++] = column(corners.get(j)) * (1 - share) + column(corners.get(i)) * share;
            }
        }
        return count;
    }

    private void edges() {
        for (int j = 1; j < DOTS; j++) {
            for (int i = 1; i < DOTS; i++) {
                int at = j * DOTS + i;
                edge[at] = panel[at] != panel[at - 1] || panel[at] != panel[at - DOTS];
            }
        }
    }

    /**
     * The picture, {@link #PIXELS} across.
     *
     * @param colours 0xRRGGBB of each panel by its number
     * @param edges 0xRRGGBB of the edges between panels
     */
    public Raster picture(int[] colours, int edges) {
        int[] palette = mixes.stream().mapToInt(m -> m.argb(colours, edges)).toArray();
        int[] picture = new int[PIXELS * PIXELS];
        for (int k = 0; k < picture.length; k++) {
            picture[k] = palette[mix[k]];
        }
        return new Raster(PIXELS, PIXELS, picture);
    }
}
