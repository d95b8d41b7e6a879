package simmerpoint.viewer.yard;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javafx.scene.text.TextAlignment;
import simmerpoint.answer.TargetWords;
import simmerpoint.pan.Target;
import simmerpoint.viewer.theme.Shade;

/** What the lines of the side view mean: a strip below it, of as many rows as the words need. */
final class RayKey {
    private static final double SAMPLE = 24;
    private static final double BETWEEN = 14;
    private static final double ROW = 17;
    private static final double SIDE = 10;

    private static final Map<String, List<Entry>> KNOWN = new ConcurrentHashMap<>();

    private record Entry(Shade shade, double wide, String words, double width, double... dashes) {
        static Entry of(Shade shade, double wide, String words, double... dashes) {
            return new Entry(shade, wide, words, SAMPLE + 5 + Pen.plainWidth(words), dashes);
        }
    }

    private RayKey() {}

    private static List<Entry> entries(Target target) {
        return KNOWN.computeIfAbsent(TargetWords.of(target).noun(), RayKey::entries);
    }

    private static List<Entry> entries(String noun) {
        return List.of(
                Entry.of(Shade.SUN, 1.2, "sunlight"),
                Entry.of(Shade.RAY, 2, "reaches the " + noun),
                Entry.of(Shade.LOST, 1.6, "goes past the " + noun, SidePainter.MISSED),
                Entry.of(Shade.SOLID, 2, "holds the " + noun, SidePainter.HOLDS),
                Entry.of(Shade.LINE, 1, "the dish\u2019s axis", SidePainter.AXIS));
    }

    /** Height of the strip on a sheet of that width, px. */
    static double height(Target target, double width) {
        return walk(null, target, width, 0) + 5;
    }

    /** Paints the strip with its upper edge at {@code top}. */
    static void paint(Pen pen, Target target, double width, double top) {
        pen.g.setFill(pen.colour(Shade.SHEET));
        pen.g.fillRect(0, top, width, height(target, width));
        walk(pen, target, width, top);
    }

    /** Goes through the entries and paints them if there is a pen; the height they take. */
    private static double walk(Pen pen, Target target, double width, double top) {
        double x = SIDE;
        double y = top + 3;
        for (Entry entry : entries(target)) {
            if (x > SIDE && x + entry.width() > width - SIDE) {
                x = SIDE;
                y += ROW;
            }
            if (pen != null) {
                pen.stroke(entry.shade(), entry.wide(), entry.dashes());
                pen.line(x, y + ROW / 2, x + SAMPLE, y + ROW / 2);
                pen.stroke(entry.shade(), entry.wide());
                if (entry.shade() == Shade.SUN) {
                    pen.head(x + SAMPLE / 2, y + ROW / 2, -1, 0);
                }
                pen.words(Shade.WORD, TextAlignment.LEFT, x + SAMPLE + 5, y + ROW / 2, entry.words());
            }
            x += entry.width() + BETWEEN;
        }
        return y + ROW - top;
    }
}
