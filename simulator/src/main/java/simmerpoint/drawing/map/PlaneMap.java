package simmerpoint.drawing.map;

import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.chart.ColourBar;
import simmerpoint.drawing.chart.MapMarks;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;
import simmerpoint.target.Spot;
import simmerpoint.units.UnitSystem;

/**
 * The light on underside or disc: map, scale of colours, what is marked on it, which way round it is. In print the key stands beside a
 * wide map, with the lid under it where light falls on it, and below a narrow one; in the window beside the map if there is room.
 */
public final class PlaneMap implements Drawing {
    private static final double LINE = 17;
    private static final double GAP = 8;

    /** Room for the colours from the edge of the map to the right. */
    private static final double BAR = GAP + ColourBar.WIDTH;

    private static final double WIDE = 480;
    private static final double WIDE_SHARE = 0.56;
    private static final double KEY_LEAST = 130;
    private static final double KEY_MOST = 190;
    private static final double SMALLEST_WITH_KEY = 120;
    private static final double SMALLEST_WITH_BAR = 220;
    private static final double LID = 178;

    /** How far words over the map may reach beyond it. */
    private static final double BESIDE = 5;

    private final TraceResult result;
    private final UnitSystem units;
    private final double top;
    private final Optional<LiveMap> live;
    private final FluxMap map;
    private final TargetWords words;
    private final MapKey key;

    private PlaneMap(TraceResult result, UnitSystem units, double top, Optional<LiveMap> live) {
        this.result = result;
        this.units = units;
        this.top = top;
        this.live = live;
        map = result.maps().crossing();
        words = TargetWords.of(result.scenario().target());
        String note = words.isPan() ? "As if seen from above through the pan" : "Seen from the dish";
        key = new MapKey(result, new FigureFormat(units), live.isPresent() ? 11 : Text.SIZE, live.map(l -> note));
    }

    /** The light of a result. */
    public static PlaneMap of(TraceResult result, UnitSystem units) {
        return new PlaneMap(result, units, FluxScale.top(result), Optional.empty());
    }

    /** The light of a result while somebody reads it, in colours up to {@code top} W/m². */
    public static PlaneMap live(TraceResult result, UnitSystem units, double top, LiveMap live) {
        return new PlaneMap(result, units, top, Optional.of(live));
    }

    private static double printed(double width) {
        return width < WIDE ? width - BAR - 2 : WIDE_SHARE * width;
    }

    private Facing facing() {
        return Facing.of(result.scenario().target());
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        double side = printed(width);
        double high = MapFrame.in(map, facing(), 0, 0, side, side).box().height() + 2 * LINE;
        return width < WIDE ? high + LINE / 2 + key.height(width, metrics) : high;
    }

    /** Where the map lies in a box. */
    public MapFrame frame(Box box) {
        if (live.isEmpty()) {
            double side = printed(box.width());
            return MapFrame.in(map, facing(), box.x() + 1, box.y() + LINE, side, side);
        }
        double side = Math.min(box.height() - 2 * LINE - 2, box.width() - BAR);
        double withKey = Math.min(side, box.width() - BAR - KEY_LEAST);
        boolean hasKey = live.get().key() && withKey >= SMALLEST_WITH_KEY;
        double used = hasKey ? withKey : side;
        double keyed = hasKey ? Math.min(KEY_MOST, box.width() - BAR - used) : 0;
        double left = Math.max(0, (box.width() - BAR - used - keyed) / 2);
        double down = Math.max(0, (box.height() - 2 * LINE - used) / 2);
        double inner = Math.max(8, used - 2);
        return MapFrame.in(map, facing(), box.x() + left + 2, box.y() + LINE + down, inner, inner);
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        MapFrame frame = frame(box);
        MarkedMap marks = new MarkedMap(canvas, frame);
        marks.map(top, live.filter(LiveMap::earlier).isPresent(), () -> marks(marks));
        String up = words.isPan() ? words.towardsMinusX() : words.towardsPlusX();
        String down = words.isPan() ? words.towardsPlusX() : words.towardsMinusX();
        Box inner = frame.box();
        // Words wider than a small map end with it, since the unit of the colours stands to the right.
        side(canvas, "\u2191 " + up, inner, inner.y() - 5, box.x(), inner.right() + BESIDE);
        side(canvas, "\u2193 " + down, inner, inner.bottom() + 13, box.x(), box.right());
        Box bar = new Box(inner.right() + GAP, inner.y(), ColourBar.WIDTH, inner.height());
        new ColourBar(top / 1000, "kW/m\u00b2").draw(canvas, bar);
        if (live.isEmpty() && box.width() < WIDE) {
            double foot = inner.bottom() + 1.5 * LINE;
            key.draw(canvas, new Box(box.x(), foot, box.width(), box.bottom() - foot));
        } else if (live.isEmpty() || live.get().key()) {
            beside(canvas, inner, box);
        }
    }

    private static void side(Canvas canvas, String words, Box map, double y, double left, double right) {
        Text text = Text.at(map.middleX(), y, words).middle().within(right - left);
        double half = Math.min(right - left, canvas.metrics().width(text)) / 2;
        canvas.write(text.moved(Math.max(left + half, Math.min(right - half, map.middleX())), y));
    }

    private void beside(Canvas canvas, Box inner, Box box) {
        double left = inner.right() + BAR;
        Optional<FluxMap> lid = result.maps().lid().filter(l -> live.isEmpty() && l.largest() > 0);
        double foot = lid.isPresent() ? inner.bottom() - LID - 2 * LINE : inner.bottom() + LINE;
        if (box.right() - left >= KEY_LEAST - 4) {
            key.draw(canvas, new Box(left, inner.y(), box.right() - left, foot - inner.y()));
            lid.ifPresent(l -> lid(canvas, l, new Box(left, inner.bottom() - LID, box.right() - left, LID)));
        }
    }

    private void lid(Canvas canvas, FluxMap lid, Box box) {
        double own = FluxScale.own(lid, result);
        String most = new FigureFormat(units).roughFlux(own);
        canvas.write(Text.at(box.x(), box.y() - 5, "Lid, seen from above; its own colours, up to " + most)
                .within(box.width()));
        MapFrame frame = MapFrame.in(lid, facing(), box.x(), box.y(), LID, LID);
        MarkedMap marks = new MarkedMap(canvas, frame);
        marks.map(own, false, () -> outline(marks));
    }

    private void outline(MarkedMap marks) {
        marks.circle(Style.OUTLINE, result.scenario().target().radiusMetres());
    }

    private void marks(MarkedMap marks) {
        outline(marks);
        Spot spot = result.spot();
        circle(marks, Style.OUTLINE_DASHED, spot.radius50(), "50\u00a0%", -0.30 * Math.PI);
        circle(marks, Style.OUTLINE_DOTTED, spot.radius90(), "90\u00a0%", -0.20 * Math.PI);
        MapFrame frame = marks.frame();
        if (result.ledger().caught().value() > 0) {
            Place hot = new Place(spot.peakX(), spot.peakY());
            MapMarks.cross(marks.canvas(), frame.x(hot), frame.y(hot), 7);
            Place middle = new Place(spot.centroidX().value(), spot.centroidY().value());
            MarkedMap.diamond(marks.canvas(), frame.x(middle), frame.y(middle));
        }
        if (frame.box().width() >= SMALLEST_WITH_BAR) {
            marks.scaleBar(units);
        }
        live.flatMap(LiveMap::reading).ifPresent(marks::ring);
    }

    private static void circle(MarkedMap marks, Style style, Optional<Estimate> radius, String tag, double direction) {
        radius.filter(r -> Double.isFinite(r.value())).ifPresent(r -> {
            marks.circle(style, r.value());
            marks.tag(tag, r.value(), direction);
        });
    }
}
