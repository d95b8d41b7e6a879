package simmerpoint.viewer.yard;

import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import simmerpoint.drawing.FluxColours;
import simmerpoint.viewer.theme.Shade;
import simmerpoint.viewer.theme.Theme;

/** Paints a {@link PanelScene}. */
final class PanelPainter {
    private static final double LEGEND = 40;
    private static final int LEGEND_STEPS = 50;

    private final WritableImage image = new WritableImage(PanelRaster.PIXELS, PanelRaster.PIXELS);

    /** Where the square of the dish stands on a sheet of that size: left, top, side, px. */
    static double[] square(double width, double height) {
        double side = Math.max(20, Math.min(width - 12, height - LEGEND - 8));
        return new double[] {(width - side) / 2, (height - LEGEND - side) / 2, side};
    }

    /** Works out the picture of the panels; the slow part, needed when shares or colours change. */
    void colour(PanelScene scene, PanelRaster raster, Theme theme) {
        int panels = scene.watts().map(w -> w.panels()).orElse(0);
        int unlit = rgb(Shade.HAIR.in(theme));
        int[] colours = new int[panels];
        for (int k = 0; k < panels; k++) {
            double share = scene.share(k);
            colours[k] = Double.isNaN(share) ? unlit : FluxColours.rgb(share);
        }
        int[] picture = raster.picture(colours, rgb(Shade.LINE.in(theme).interpolate(Shade.SHEET.in(theme), 0.3)));
        image.getPixelWriter()
                .setPixels(
                        0,
                        0,
                        PanelRaster.PIXELS,
                        PanelRaster.PIXELS,
                        PixelFormat.getIntArgbPreInstance(),
                        picture,
                        0,
                        PanelRaster.PIXELS);
    }

    private static int rgb(Color c) {
        return (int) Math.round(255 * c.getRed()) << 16
                | (int) Math.round(255 * c.getGreen()) << 8
                | (int) Math.round(255 * c.getBlue());
    }

    /** Paints everything with the panels as last coloured. */
    void paint(
            GraphicsContext g,
            PanelScene scene,
            Optional<PanelRaster> raster,
            Theme theme,
            double width,
            double height) {
        g.clearRect(0, 0, width, height);
        Pen pen = new Pen(g, theme);
        double[] square = square(width, height);
        if (raster.isPresent()) {
            g.setImageSmoothing(true);
            g.drawImage(image, square[0], square[1], square[2], square[2]);
            shadow(pen, scene, raster.get(), square);
            raster.get()
                    .outline(scene.chosen())
                    .ifPresent(o -> new PanelMark(pen, raster.get(), square).paint(o, width, height - LEGEND));
        }
        legend(pen, width, height);
    }

    private static void shadow(Pen pen, PanelScene scene, PanelRaster raster, double[] square) {
        int n = scene.shadow().size();
        double[] x = new double[n];
        double[] y = new double[n];
        double perMetre = square[2] / (2 * raster.reachMetres());
        for (int k = 0; k < n; k++) {
            x[k] = square[0] + square[2] / 2 - scene.shadow().get(k)[1] * perMetre;
            y[k] = square[1] + square[2] / 2 - scene.shadow().get(k)[0] * perMetre;
        }
        pen.g.save();
        pen.g.beginPath();
        pen.g.rect(square[0] - 6, square[1] - 4, square[2] + 12, square[2] + 8);
        pen.g.clip();
        pen.stroke(Shade.SHEET, 4);
        pen.g.strokePolygon(x, y, n);
        pen.stroke(Shade.WORD, 1.8, 6, 3);
        pen.g.strokePolygon(x, y, n);
        pen.g.restore();
    }

    private static void legend(Pen pen, double width, double height) {
        double wide = Math.min(240, width - 60);
        double left = (width - wide) / 2;
        double top = height - LEGEND + 6;
        for (int k = 0; k < LEGEND_STEPS; k++) {
            int rgb = FluxColours.rgb((k + 0.5) / LEGEND_STEPS);
            pen.g.setFill(Color.rgb(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF));
            pen.g.fillRect(left + wide * k / LEGEND_STEPS, top, wide / LEGEND_STEPS + 0.5, 11);
        }
        pen.stroke(Shade.LINE, 1);
        pen.g.strokeRect(left, top, wide, 11);
        for (int k = 0; k <= 4; k++) {
            double x = left + wide * k / 4;
            pen.line(x, top + 11, x, top + 15);
            pen.words(Shade.WORD, TextAlignment.CENTER, x, top + 23, 25 * k + (k == 4 ? " %" : ""));
        }
    }
}
