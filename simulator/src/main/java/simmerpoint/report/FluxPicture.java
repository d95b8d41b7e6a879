package simmerpoint.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import simmerpoint.drawing.FluxColours;
import simmerpoint.target.FluxMap;

/** A flux map painted cell by cell into a rectangle. */
final class FluxPicture {
    private FluxPicture() {}

    /** Which way the map's axes run on the picture. */
    enum Look {
        /** Second axis to the right, first axis downwards: a pan from above, the sun at the upper edge. */
        FIRST_DOWN,
        /** Second axis to the right, first axis upwards: a bare disc, seen from the dish. */
        FIRST_UP,
        /** First axis to the right, second axis upwards: an unrolled wall, seen from outside. */
        FIRST_RIGHT
    }

    /** Paints {@code map} over {@code box}; flux of {@code top} W/m² and more gets the last colour. */
    static void paint(Graphics2D g, FluxMap map, Look look, Rectangle box, double top) {
        BufferedImage image = new BufferedImage(box.width, box.height, BufferedImage.TYPE_INT_RGB);
        for (int py = 0; py < box.height; py++) {
            double down = (py + 0.5) / box.height;
            for (int px = 0; px < box.width; px++) {
                double right = (px + 0.5) / box.width;
                image.setRGB(px, py, FluxColours.rgb(at(map, look, right, down) / top));
            }
        }
        g.setColor(Brush.GREY);
        g.drawRect(box.x - 1, box.y - 1, box.width + 1, box.height + 1);
        g.drawImage(image, box.x, box.y, null);
        g.setColor(Color.BLACK);
    }

    private static double at(FluxMap map, Look look, double right, double down) {
        return switch (look) {
            case FIRST_DOWN -> cell(map, down, right);
            case FIRST_UP -> cell(map, 1 - down, right);
            case FIRST_RIGHT -> cell(map, right, 1 - down);
        };
    }

    private static double cell(FluxMap map, double first, double second) {
        int i = Math.min(map.columns() - 1, (int) (first * map.columns()));
        int j = Math.min(map.rows() - 1, (int) (second * map.rows()));
        return map.at(i, j);
    }

    /** The largest rectangle of the map's shape inside {@code room}, centred; at least 8 pixels either way. */
    static Rectangle shaped(FluxMap map, Look look, Rectangle room) {
        double first = map.columns() * map.cellWidth();
        double second = map.rows() * map.cellHeight();
        double across = look == Look.FIRST_RIGHT ? first : second;
        double upright = look == Look.FIRST_RIGHT ? second : first;
        double scale = Math.min(room.width / across, room.height / upright);
        int w = Math.max(8, Math.min(room.width, (int) Math.round(across * scale)));
        int h = Math.max(8, Math.min(room.height, (int) Math.round(upright * scale)));
        return new Rectangle(room.x + (room.width - w) / 2, room.y + (room.height - h) / 2, w, h);
    }
}
