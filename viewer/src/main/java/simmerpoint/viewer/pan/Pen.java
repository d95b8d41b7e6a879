package simmerpoint.viewer.pan;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import simmerpoint.viewer.theme.Shade;
import simmerpoint.viewer.theme.Theme;

/** Words and lines on a canvas: words never reach beyond the room they are given, lines show on any ground. */
final class Pen {
    private static final double LEAST_SIZE = 9;
    private static final double SEAM = 2.6;

    private final GraphicsContext g;
    private final Theme theme;

    Pen(GraphicsContext g, Theme theme) {
        this.g = g;
        this.theme = theme;
    }

    static Font font(double size) {
        return Font.font(size);
    }

    static Font bold(double size) {
        return Font.font(null, FontWeight.BOLD, size);
    }

    static double width(String words, Font font) {
        Text text = new Text(words);
        text.setFont(font);
        return text.getLayoutBounds().getWidth();
    }

    GraphicsContext g() {
        return g;
    }

    Color shade(Shade shade) {
        return shade.in(theme);
    }

    Theme theme() {
        return theme;
    }

    /** Words with their baseline at y, smaller if there is too little room, and cut if that does not help. */
    void words(String words, double x, double y, TextAlignment where, Font font, double room) {
        Font fitting = fitting(words, font, room);
        write(fitting, where);
        g.fillText(shortened(words, fitting, room), x, y);
    }

    /** The same on a rim of the ground's colour, so that lines behind do not run through the letters. */
    void rimmed(
            String words,
            double x,
            double y,
            TextAlignment where,
            Font font,
            double room,
            Color ground,
            Color letters) {
        write(fitting(words, font, room), where);
        g.setStroke(ground);
        g.setLineWidth(SEAM + 1);
        g.setLineJoin(StrokeLineJoin.ROUND);
        g.strokeText(words, x, y);
        g.setLineWidth(1);
        g.setFill(letters);
        words(words, x, y, where, font, room);
    }

    private void write(Font font, TextAlignment where) {
        g.setFont(font);
        g.setTextAlign(where);
        g.setTextBaseline(VPos.BASELINE);
    }

    private static Font fitting(String words, Font font, double room) {
        double wide = width(words, font);
        if (wide <= room) {
            return font;
        }
        double size = Math.max(LEAST_SIZE, font.getSize() * room / wide);
        return Font.font(font.getFamily(), FontWeight.findByName(font.getStyle()), size);
    }

    private static String shortened(String words, Font font, double room) {
        String shown = words;
        while (shown.length() > 1 && width(shown, font) > room + 0.5) {
            shown = shown.substring(0, shown.endsWith("\u2026") ? shown.length() - 2 : shown.length() - 1)
                            .stripTrailing()
                    + "\u2026";
        }
        return shown;
    }

    /** Words broken into lines that fit into the room. */
    static List<String> broken(String words, Font font, double room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, font) > room) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }

    /** A ring with a dark seam on both sides, so that it shows on dark and on pale colours. */
    void ring(double x, double y, double radius, double... dashes) {
        seam(() -> g.strokeOval(x - radius, y - radius, 2 * radius, 2 * radius), Color.WHITE, Color.BLACK, dashes);
    }

    /** An upright cross, seen on any colour. */
    void cross(double x, double y, double arm) {
        seam(
                () -> {
                    g.strokeLine(x - arm, y, x + arm, y);
                    g.strokeLine(x, y - arm, x, y + arm);
                },
                Color.WHITE,
                Color.BLACK);
    }

    private void seam(Runnable stroke, Color inner, Color outer, double... dashes) {
        g.setLineDashes();
        g.setStroke(outer.deriveColor(0, 1, 1, 0.75));
        g.setLineWidth(1.6 + SEAM);
        g.setLineDashes(dashes);
        stroke.run();
        g.setStroke(inner);
        g.setLineWidth(1.6);
        stroke.run();
        g.setLineDashes();
        g.setLineWidth(1);
    }
}
