package simmerpoint.drawing.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.drawing.chart.MapMarks;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;
import simmerpoint.target.Spot;

/** What the marks on a map mean, with their figures. */
public final class MapKey {
    private static final double SAMPLE = 26;
    private static final double SWATCH = 20;
    private static final double LEADING = 1.23;
    private static final double ROOMY = 250;
    private static final double LESS_THAN_LINE = 4;

    private final double size;
    private final List<Entry> entries = new ArrayList<>();

    /** Draws a mark with its middle at a place. */
    @FunctionalInterface
    private interface Mark {
        void draw(Canvas canvas, double x, double y);
    }

    /** What a mark means; words without a mark stand farther left. */
    private record Entry(String words, Optional<Mark> mark) {
        double indent() {
            return mark.isPresent() ? SAMPLE : 0;
        }
    }

    /** In letters of a size; {@code note} says how the map is seen. */
    MapKey(TraceResult result, FigureFormat figures, double size, Optional<String> note) {
        this.size = size;
        TargetWords words = TargetWords.of(result.scenario().target());
        Spot spot = result.spot();
        double across = 2 * result.scenario().target().radiusMetres();
        line(Style.OUTLINE, "the " + words.noun() + "\u2019s outline, " + figures.length(across) + " across");
        double reach = reach(result.maps().crossing());
        line(Style.OUTLINE_DASHED, circle("50\u00a0%", spot.radius50(), figures, reach));
        line(Style.OUTLINE_DOTTED, circle("90\u00a0%", spot.radius90(), figures, reach));
        if (result.ledger().caught().value() > 0) {
            String mean = ", mean over " + figures.length(spot.peakDiscRadius()) + " radius";
            entry(
                    "hottest spot about " + figures.roughFlux(spot.peakFlux().value()) + (note.isPresent() ? "" : mean),
                    (canvas, x, y) -> MapMarks.cross(canvas, x, y, 6));
            entry("centre of the light", MarkedMap::diamond);
        } else {
            entries.add(new Entry("no light is caught", Optional.empty()));
        }
        note.ifPresent(n -> entries.add(new Entry(n, Optional.empty())));
    }

    /** Distance from the middle to the map's farthest corner, m. */
    private static double reach(FluxMap map) {
        double first = Math.max(-map.firstMin(), map.firstMin() + map.columns() * map.cellWidth());
        double second = Math.max(-map.secondMin(), map.secondMin() + map.rows() * map.cellHeight());
        return Math.hypot(first, second);
    }

    /** What a circle means; there is none for more light than comes to the level of underside or disc. */
    static String circle(String share, Optional<Estimate> radius, FigureFormat figures, double reach) {
        return radius.map(r -> share + " of light within " + figures.length(r.value(), 2) + " of the middle"
                        + (r.value() > reach ? " (beyond the picture)" : ""))
                .orElse("less than " + share + " of light gets to this level");
    }

    private void line(Style style, String words) {
        entry(words, (canvas, x, y) -> canvas.line(style, x - SWATCH / 2 + 2, y, x + SWATCH / 2 - 2, y));
    }

    private void entry(String words, Mark mark) {
        entries.add(new Entry(words, Optional.of(mark)));
    }

    private Text text(Entry entry, double x, double y, double room) {
        return Text.at(x + entry.indent(), y, entry.words())
                .in(TextStyle.SOFT)
                .size(size)
                .within(room - entry.indent());
    }

    private double step() {
        return LEADING * size;
    }

    private static double gap(double height) {
        return height > ROOMY ? 9 : LESS_THAN_LINE;
    }

    /** Height of everything, units. */
    double height(double room, TextMetrics metrics) {
        return entries.stream()
                .mapToDouble(e -> metrics.lines(text(e, 0, 0, room)).size() * step() + LESS_THAN_LINE)
                .sum();
    }

    /** As many of the entries from above as find room as a whole. */
    void draw(Canvas canvas, Box box) {
        double y = box.y() + size - 1;
        for (Entry entry : entries) {
            Text text = text(entry, box.x(), y, box.width());
            int lines = canvas.metrics().lines(text).size();
            if (y + step() * (lines - 1) + 2 > box.bottom()) {
                return;
            }
            double middle = y - 0.35 * size;
            entry.mark().ifPresent(mark -> {
                canvas.draw(Style.PLATE, new Box(box.x(), middle - 7, SWATCH, 14));
                mark.draw(canvas, box.x() + SWATCH / 2, middle);
            });
            canvas.paragraph(text);
            y += step() * lines + gap(box.height());
        }
    }
}
