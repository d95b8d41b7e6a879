package simmerpoint.report;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.function.ToDoubleFunction;
import simmerpoint.answer.Figures;
import simmerpoint.answer.Words;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.PanResult;
import simmerpoint.units.UnitSystem;

/** How the picture of the three moves is laid out: heading, legend, one panel per move on the same scales, caption. */
final class PanSheet {
    static final int WIDTH = 1400;

    private static final int MARGIN = 40;
    private static final int INNER = WIDTH - 2 * MARGIN;
    private static final int LEFT = MARGIN + 80;
    private static final int RIGHT = WIDTH - MARGIN - 80;
    private static final int TOP = 208;
    private static final int PANEL = 270;
    private static final int PITCH = PANEL + 130;
    private static final int CAPTION = 64;
    private static final double HEADROOM = 1.25;

    private final PanResult result;
    private final UnitSystem system;
    private final double mostWatts;
    private final double mostFlux;

    PanSheet(PanResult result, UnitSystem system) {
        this.result = result;
        this.system = system;
        mostWatts = mostWatts(result);
        mostFlux = mostFlux(result);
    }

    /** Upper end of the watts' scale, the same for all moves, W. */
    static double mostWatts(PanResult result) {
        return Math.max(1, HEADROOM * largest(result, p -> p.absorbed().value()));
    }

    /** Upper end of the fluxes' scale, the same for all moves, W/m². */
    static double mostFlux(PanResult result) {
        return Math.max(100, HEADROOM * largest(result, PanPosition::hottestFlux));
    }

    private static double largest(PanResult result, ToDoubleFunction<PanPosition> figure) {
        double largest = figure.applyAsDouble(result.here());
        for (PanMove move : result.moves()) {
            for (PanPosition position : move.positions()) {
                largest = Math.max(largest, figure.applyAsDouble(position));
            }
        }
        return largest;
    }

    int height() {
        return TOP + result.moves().size() * PITCH + CAPTION;
    }

    void paint(Graphics2D g) {
        Brush brush = new Brush(g);
        String title = Words.oneLine(result.base().scenario().title());
        g.setColor(Brush.INK);
        brush.line(title.isEmpty() ? "Where the pan stands" : title, Brush.bold(30), 13, MARGIN, 52, INNER);
        g.setColor(Brush.GREY);
        brush.line(
                "What the pan takes up, how hot its hottest spot gets and what its water does, over the three moves",
                Brush.font(20),
                14,
                MARGIN,
                84,
                INNER);
        new MoveLegend(g).paint(MARGIN, 118, INNER);
        int top = TOP;
        for (PanMove move : result.moves()) {
            Rectangle box = new Rectangle(LEFT, top, RIGHT - LEFT, PANEL);
            new MovePanel(g, move, result, system, mostWatts, mostFlux).paint(box);
            top += PITCH;
        }
        caption(g, brush, top + 12);
    }

    private void caption(Graphics2D g, Brush brush, double y) {
        Figures figures = new Figures(system);
        g.setColor(Brush.GREY);
        brush.line(
                "Sun " + figures.degrees(result.base().scenario().sun().elevationRadians()) + " high, beam "
                        + Figures.rounded(result.base().scenario().sun().beamWattsPerSquareMetre(), 3)
                        + "\u00a0W/m\u00b2; seed " + result.base().seed() + ", "
                        + Figures.count(result.run().rays())
                        + " rays. Heat levels for the likely losses of this pan, lid and wind. An estimate. Simmerpoint "
                        + Version.text(),
                Brush.font(17),
                11,
                MARGIN,
                y,
                INNER);
        brush.line(
                "Focused sunlight blinds and burns: cover the mirror before moving the pan; keep eyes, face and hands out of the "
                        + "beam.",
                Brush.font(17),
                12,
                MARGIN,
                y + 27,
                INNER);
        g.setColor(Brush.INK);
    }
}
