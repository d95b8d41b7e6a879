package simmerpoint.drawing.cooker;

import java.util.Optional;
import simmerpoint.dish.PanelOutline;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.FluxColours;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Raster;
import simmerpoint.drawing.RoundBox;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;

/** The dish along its axis, each panel in the colour of the share of its light that lands, with the scale of the colours. */
public final class ShareDrawing implements Drawing {
    private static final double LEGEND = 40;
    private static final double BAR = 11;
    private static final double GAP = 5;
    private static final double NUMBER = 8;
    private static final double BRIGHTEST = 0.82;
    private static final Raster COLOURS = colours();

    private final Optional<LivePanels> panels;

    /** Of panels; of none, while they are not known yet, the scale alone. */
    public ShareDrawing(Optional<LivePanels> panels) {
        this.panels = panels;
    }

    private static Raster colours() {
        int[] argb = new int[FluxColours.STEPS];
        for (int k = 0; k < argb.length; k++) {
            argb[k] = 0xFF000000 | rgb((k + 0.5) / argb.length);
        }
        return Raster.cells(argb.length, 1, argb);
    }

    /** The colour of a share, 0 to 1, without its pale end: the best panels must be told from the paper. */
    public static int rgb(double share) {
        return FluxColours.rgb(BRIGHTEST * share);
    }

    /** Where the square of the dish stands in a box. */
    public static Box square(Box box) {
        double side = Math.max(20, Math.min(box.width() - 12, box.height() - LEGEND - 8));
        return new Box(box.x() + (box.width() - side) / 2, box.y() + (box.height() - LEGEND - side) / 2, side, side);
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return width - 4 + LEGEND;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        Box square = square(box);
        panels.ifPresent(p -> {
            double reach = p.raster().reachMetres();
            double perMetre = square.width() / 2 / reach;
            FrontFrame frame = new FrontFrame(
                    square.middleX(), square.middleY() + p.raster().middleMetres() * perMetre, perMetre);
            canvas.image(p.colours(), square);
            Path shadow = Path.through(
                    p.shadow().stream().map(v -> frame.at(v[0], v[1])).toList(), true);
            canvas.clip(square.inside(-6, -4, -6, -4), () -> canvas.draw(Style.SHADOW, shadow));
            p.named().stream()
                    .filter(number -> number != p.chosen())
                    .sorted()
                    .flatMap(number -> p.raster().outline(number).stream())
                    .forEach(panel -> number(canvas, panel, frame));
            p.raster().outline(p.chosen()).ifPresent(o -> mark(canvas, o, frame, box));
        });
        legend(canvas, box);
    }

    /** Its number on a panel, on a small sheet, since panels are of any colour. */
    private static void number(Canvas canvas, PanelOutline panel, FrontFrame frame) {
        Box seen = PanelShades.outline(panel.edge(), panel.hole(), frame::at).bounds();
        Text words = Text.at(seen.middleX(), seen.middleY() + NUMBER / 3, Integer.toString(panel.panel() + 1))
                .in(TextStyle.HANDLE)
                .size(NUMBER)
                .middle();
        double wide = canvas.metrics().width(words) + 4;
        canvas.draw(
                Style.CALLOUT,
                new RoundBox(new Box(seen.middleX() - wide / 2, seen.middleY() - NUMBER / 2 - 2, wide, NUMBER + 4), 2));
        canvas.write(words);
    }

    /** A panel's outline, and its number above or below it: on the side away from the dish's middle if there is room. */
    private static void mark(Canvas canvas, PanelOutline panel, FrontFrame frame, Box box) {
        Path outline = PanelShades.outline(panel.edge(), panel.hole(), frame::at);
        canvas.draw(Style.POINTED_PANEL, outline);
        Box seen = outline.bounds();
        Box room = box.inside(0, 0, 0, LEGEND);
        Callout words = Callout.ofHandle("Panel " + (panel.panel() + 1), box.width());
        double high = words.height(canvas.metrics());
        double above = seen.y() - GAP - high;
        double below = seen.bottom() + GAP;
        boolean fitsAbove = above >= room.y();
        boolean fitsBelow = below + high <= room.bottom();
        boolean upper = seen.middleY() < square(box).middleY();
        boolean isAbove = upper ? fitsAbove || !fitsBelow : fitsAbove && !fitsBelow;
        words.draw(canvas, seen.middleX(), isAbove ? above : below, room);
    }

    private static void legend(Canvas canvas, Box box) {
        double wide = Math.min(240, box.width() - 60);
        Box bar = new Box(box.x() + (box.width() - wide) / 2, box.bottom() - LEGEND + 6, wide, BAR);
        canvas.image(COLOURS, bar);
        canvas.draw(Style.FRAME, bar);
        for (int k = 0; k <= 4; k++) {
            double x = bar.x() + wide * k / 4;
            canvas.line(Style.TICK, x, bar.bottom(), x, bar.bottom() + 4);
            canvas.write(
                    Text.at(x, bar.bottom() + 16, 25 * k + (k == 4 ? " %" : "")).middle());
        }
    }
}
