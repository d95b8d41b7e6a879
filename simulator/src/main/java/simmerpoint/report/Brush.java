package simmerpoint.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;

/** Text that keeps inside its room and lines that show on any colour. */
final class Brush {
    static final Color INK = new Color(0x1A1A1A);
    static final Color GREY = new Color(0x555555);
    private static final String DOTS = "\u2026";

    private final Graphics2D g;

    Brush(Graphics2D g) {
        this.g = g;
    }

    static Font font(int size) {
        return new Font(Font.SANS_SERIF, Font.PLAIN, size);
    }

    static Font bold(int size) {
        return new Font(Font.SANS_SERIF, Font.BOLD, size);
    }

    /** Sets the largest size from {@code font}'s down to {@code least} in which the text fits. */
    private void fit(String text, Font font, int least, double room) {
        Font f = font;
        g.setFont(f);
        while (f.getSize() > least && width(text) > room) {
            f = f.deriveFont((float) f.getSize() - 1);
            g.setFont(f);
        }
    }

    private int width(String text) {
        return g.getFontMetrics().stringWidth(text);
    }

    /** One line from {@code x} to the right: smaller if it must be, then cut with dots. */
    void line(String text, Font font, int least, double x, double y, double room) {
        fit(text, font, least, room);
        g.drawString(cut(text, room), (float) x, (float) y);
    }

    /** One line that ends at {@code x}. */
    void lineTo(String text, Font font, int least, double x, double y, double room) {
        fit(text, font, least, room);
        String shown = cut(text, room);
        g.drawString(shown, (float) (x - width(shown)), (float) y);
    }

    /** One line about {@code x}. */
    void centred(String text, Font font, double x, double y, double room) {
        fit(text, font, 11, room);
        String shown = cut(text, room);
        g.drawString(shown, (float) (x - width(shown) / 2.0), (float) y);
    }

    private String cut(String text, double room) {
        if (width(text) <= room) {
            return text;
        }
        int end = text.length();
        while (end > 0 && width(text.substring(0, end) + DOTS) > room) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).stripTrailing() + DOTS;
    }

    /** Text broken at spaces into lines no wider than {@code room}. */
    List<String> wrapped(String text, Font font, double room) {
        FontMetrics metrics = g.getFontMetrics(font);
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && metrics.stringWidth(longer) > room) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }

    /** Wrapped text; returns the baseline below its last line. */
    double paragraph(String text, Font font, double x, double y, double room) {
        double at = y;
        for (String line : wrapped(text, font, room)) {
            line(line, font, font.getSize(), x, at, room);
            at += font.getSize() * 1.35;
        }
        return at;
    }

    /** An outline in white over a wider black one, so that it shows on dark and on light. */
    void outlined(Shape shape, float[] dash) {
        g.setColor(new Color(0, 0, 0, 190));
        g.setStroke(new BasicStroke(4.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(shape);
        g.setColor(Color.WHITE);
        g.setStroke(
                dash == null
                        ? new BasicStroke(2f)
                        : new BasicStroke(2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0));
        g.draw(shape);
        g.setStroke(new BasicStroke(1));
        g.setColor(INK);
    }

    /** White text on a dark plate, its left lower corner at (x, y). */
    void plate(String text, Font font, double x, double y) {
        g.setFont(font);
        int w = width(text);
        int h = font.getSize();
        g.setColor(new Color(0, 0, 0, 170));
        g.fillRoundRect((int) x - 5, (int) y - h - 1, w + 10, h + 8, 8, 8);
        g.setColor(Color.WHITE);
        g.drawString(text, (float) x, (float) y);
        g.setColor(INK);
    }
}
