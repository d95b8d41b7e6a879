package simmerpoint.drawing.map;

import java.util.List;
import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;
import simmerpoint.target.WallPeak;
import simmerpoint.units.UnitSystem;

/** The pan's wall unrolled, seen from outside, its side away from the sun in the middle. */
public final class WallMap implements Drawing {
    private static final double LINE = 17;
    private static final double SIZE = 11;
    private static final double SMALL = 10;
    private static final double TALLEST = 0.3;
    private static final double TICK = 4;

    private final TraceResult result;
    private final FluxMap wall;
    private final FigureFormat figures;
    private final double top;
    private final Optional<Double> ownTop;
    private final Optional<LiveMap> live;

    private WallMap(
            TraceResult result,
            FluxMap wall,
            UnitSystem units,
            double top,
            Optional<Double> ownTop,
            Optional<LiveMap> live) {
        this.result = result;
        this.wall = wall;
        figures = new FigureFormat(units);
        this.top = top;
        this.ownTop = ownTop;
        this.live = live;
    }

    /** The wall of a result in colours of its own; empty for a bare disc, and where no light falls on it. */
    public static Optional<WallMap> of(TraceResult result, UnitSystem units) {
        return UnrolledWall.of(result).filter(wall -> wall.largest() > 0).map(wall -> {
            double top = FluxScale.own(wall, result);
            return new WallMap(result, wall, units, top, Optional.of(top), Optional.empty());
        });
    }

    /**
     * The same while somebody reads it.
     *
     * @param result whose light
     * @param wall its wall, unrolled
     * @param units of lengths
     * @param top flux at the upper end of the colours of the other maps, W/m²
     * @param ownTop the same of colours of its own, if it has such
     * @param live what is read
     */
    public static WallMap live(
            TraceResult result, FluxMap wall, UnitSystem units, double top, Optional<Double> ownTop, LiveMap live) {
        return new WallMap(result, wall, units, top, ownTop, Optional.of(live));
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        double shape = wall.rows() * wall.cellHeight() / (wall.columns() * wall.cellWidth());
        double whole = Math.floor((width - 4) * shape);
        return (live.isPresent() ? whole : Math.min(whole, TALLEST * width)) + 2 * LINE + 2;
    }

    /** Where the wall lies in a box. */
    public MapFrame frame(Box box) {
        return MapFrame.in(wall, Facing.FIRST_RIGHT, 0, box.y() + LINE, box.width() - 4, box.height() - 2 * LINE - 2)
                .centred(box.x(), box.width());
    }

    /** Which colours it is drawn in. */
    public String colours() {
        if (!(wall.largest() > 0)) {
            return "no focused light falls on it";
        }
        if (ownTop.isEmpty()) {
            return "the same colours";
        }
        String most = UnrolledWall.peak(wall, figures);
        return WallPeak.of(wall) >= result.scenario().sun().beamWattsPerSquareMetre()
                ? "its own colours, up to " + most
                : "at most " + most + "; colours up to direct sun";
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        MapFrame frame = frame(box);
        heading(canvas, frame.box(), box);
        MarkedMap marks = new MarkedMap(canvas, frame);
        marks.map(
                ownTop.orElse(top),
                live.filter(LiveMap::earlier).isPresent(),
                () -> live.flatMap(LiveMap::reading).ifPresent(marks::ring));
        sides(canvas, frame);
    }

    /** The longest that fits. */
    private void heading(Canvas canvas, Box map, Box box) {
        String colours = colours();
        String most = colours.equals("the same colours") ? ", " + UnrolledWall.words(wall, figures) : "";
        List<String> heads = List.of(
                "Wall, unrolled, from outside; " + colours + most,
                "Wall, unrolled; " + colours + most,
                "Wall, unrolled; " + colours);
        String head = heads.stream()
                .filter(h -> canvas.metrics().width(Text.at(0, 0, h)) <= box.width())
                .findFirst()
                .orElse(heads.get(2));
        double wide = canvas.metrics().width(Text.at(0, 0, head));
        double left = Math.max(box.x(), Math.min(map.x(), box.right() - wide));
        canvas.write(Text.at(left, map.y() - 5, head).within(box.right() - left));
    }

    /** Which way each quarter faces; where there is little room the names of fewer of them. */
    private void sides(Canvas canvas, MapFrame frame) {
        TargetWords words = TargetWords.of(result.scenario().target());
        String[] names = {words.towardsPlusX(), "right", words.towardsMinusX(), "left"};
        Box box = frame.box();
        double quarter = Math.PI / 2 * result.scenario().target().radiusMetres();
        double part = box.width() / 4;
        double size = apart(canvas, names, part, SIZE) ? SIZE : SMALL;
        boolean narrow = !apart(canvas, names, part, size);
        boolean middleOnly = 2 * width(canvas, names[2], size) + width(canvas, names[0], size) + 8 > box.width();
        double room = (middleOnly ? 4 : narrow ? 2 : 1.3) * part;
        for (int k = -2; k <= 2; k++) {
            double x = frame.x(new Place(k * quarter, 0));
            if (!(x >= box.x() - 2 && x <= box.right() + 2)) {
                continue;
            }
            canvas.line(Style.TICK, x, box.bottom(), x, box.bottom() + TICK);
            boolean told = !(k % 2 != 0 && narrow) && !(k != 0 && middleOnly);
            if (told) {
                Text.Anchor anchor = k == -2 ? Text.Anchor.START : k == 2 ? Text.Anchor.END : Text.Anchor.MIDDLE;
                double at = Math.max(box.x(), Math.min(box.right(), x));
                canvas.write(Text.at(at, box.bottom() + 15, names[Math.floorMod(k, 4)])
                        .anchored(anchor)
                        .size(size)
                        .within(room));
            }
        }
    }

    /** Whether the names of the ends leave room for those of the sides. */
    private static boolean apart(Canvas canvas, String[] names, double part, double size) {
        return width(canvas, names[2], size) + width(canvas, names[1], size) / 2 + 6 <= part;
    }

    private static double width(Canvas canvas, String words, double size) {
        return canvas.metrics().width(words, size, false);
    }
}
