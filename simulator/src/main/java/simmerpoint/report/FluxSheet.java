package simmerpoint.report;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.Optional;
import simmerpoint.answer.Figures;
import simmerpoint.answer.TargetWords;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;
import simmerpoint.units.UnitSystem;

/** How the flux picture is laid out: heading, map, colour bar, legend, lid, wall, caption. */
final class FluxSheet {
    static final int WIDTH = 1400;

    private static final int MARGIN = 40;
    private static final int INNER = WIDTH - 2 * MARGIN;
    private static final int MAP_TOP = 146;
    private static final int MAP_SIZE = 740;
    private static final int COLUMN_LEFT = MARGIN + MAP_SIZE + 170;
    private static final int LID_SIZE = 250;
    private static final int WALL_TOP = MAP_TOP + MAP_SIZE + 92;
    private static final int TALLEST_WALL = 260;
    private static final int CAPTION = 110;

    private final TraceResult result;
    private final Figures figures;
    private final TargetWords words;
    private final FluxPicture.Look look;
    private final double top;
    private final Optional<FluxMap> wall;
    private final Optional<Rectangle> wallBox;

    FluxSheet(TraceResult result, UnitSystem system) {
        this.result = result;
        this.figures = new Figures(system);
        this.words = TargetWords.of(result.scenario().target());
        this.look = words.isPan() ? FluxPicture.Look.FIRST_DOWN : FluxPicture.Look.FIRST_UP;
        this.top = top(result);
        this.wall = result.maps()
                .wall()
                .map(map -> awayInTheMiddle(map, result.scenario().target().radiusMetres()));
        this.wallBox = wall.map(FluxSheet::wallBox);
    }

    /** Flux at the upper end of the colours, W/m². */
    static double top(TraceResult result) {
        double top = surely(result.maps().crossing());
        top = Math.max(top, result.maps().wall().map(FluxSheet::surely).orElse(0.0));
        top = Math.max(top, result.maps().lid().map(FluxSheet::surely).orElse(0.0));
        return top > 0 && Double.isFinite(top) ? top : 1000;
    }

    /** The largest flux less one standard error, so that one cell bright by chance does not set the scale. */
    static double surely(FluxMap map) {
        double top = 0;
        for (int k = 0; k < map.flux().length; k++) {
            double error = map.standardError()[k];
            top = Math.max(top, map.flux()[k] - (Double.isFinite(error) ? error : 0));
        }
        return top;
    }

    /** The wall turned so that its side away from the sun, where the dish is, comes to the middle of the strip. */
    static FluxMap awayInTheMiddle(FluxMap wall, double radius) {
        double girth = 2 * Math.PI * radius;
        double length = wall.columns() * wall.cellWidth();
        if (Math.abs(length - girth) > 1e-6 * girth) {
            return wall;
        }
        int shift = (int) Math.round((-girth / 2 - wall.firstMin()) / wall.cellWidth());
        double[] flux = new double[wall.flux().length];
        double[] error = new double[flux.length];
        for (int j = 0; j < wall.rows(); j++) {
            for (int i = 0; i < wall.columns(); i++) {
                int from = j * wall.columns() + Math.floorMod(i + shift, wall.columns());
                flux[j * wall.columns() + i] = wall.flux()[from];
                error[j * wall.columns() + i] = wall.standardError()[from];
            }
        }
        double firstMin = wall.firstMin() + shift * wall.cellWidth();
        return new FluxMap(
                wall.columns(),
                wall.rows(),
                wall.cellWidth(),
                wall.cellHeight(),
                firstMin,
                wall.secondMin(),
                flux,
                error);
    }

    private static Rectangle wallBox(FluxMap wall) {
        Rectangle room = new Rectangle(MARGIN, WALL_TOP, INNER, TALLEST_WALL);
        Rectangle box = FluxPicture.shaped(wall, FluxPicture.Look.FIRST_RIGHT, room);
        box.setLocation(MARGIN, WALL_TOP);
        return box;
    }

    int height() {
        return captionTop() + CAPTION;
    }

    private int captionTop() {
        return wallBox.map(box -> box.y + box.height + 70).orElse(MAP_TOP + MAP_SIZE + 74);
    }

    void paint(Graphics2D g) {
        Brush brush = new Brush(g);
        heading(g, brush);
        Rectangle room = new Rectangle(MARGIN, MAP_TOP, MAP_SIZE, MAP_SIZE);
        Rectangle box = FluxPicture.shaped(result.maps().crossing(), look, room);
        FluxPicture.paint(g, result.maps().crossing(), look, box, top);
        new SpotMarks(g, result, figures, box, look).paint();
        sides(brush, box);
        new ColourBar(g, top).paint(new Rectangle(MARGIN + MAP_SIZE + 30, MAP_TOP, 28, MAP_SIZE));
        new Legend(g, result, figures, words).paint(COLUMN_LEFT, MAP_TOP + 16, WIDTH - MARGIN - COLUMN_LEFT);
        result.maps().lid().ifPresent(lid -> lid(g, brush, lid));
        wallBox.ifPresent(strip -> wall(g, brush, wall.orElseThrow(), strip));
        caption(g, brush);
    }

    private void heading(Graphics2D g, Brush brush) {
        String title = OneLine.of(result.scenario().title());
        g.setColor(Brush.INK);
        brush.line(title.isEmpty() ? "Flux map" : title, Brush.bold(30), 13, MARGIN, 52, INNER);
        g.setColor(Brush.GREY);
        String what = words.isPan()
                ? "Focused light in the plane of the pan\u2019s underside, as if seen from above through the pan"
                : "Focused light in the plane of the disc, seen from the dish";
        brush.line(what, Brush.font(20), 14, MARGIN, 84, INNER);
        g.setColor(Brush.INK);
    }

    private void sides(Brush brush, Rectangle box) {
        String up = words.isPan() ? words.towardsMinusX() : words.towardsPlusX();
        String down = words.isPan() ? words.towardsPlusX() : words.towardsMinusX();
        brush.centred("\u2191 " + up, Brush.font(18), box.getCenterX(), box.y - 14, MAP_SIZE);
        brush.centred("\u2193 " + down, Brush.font(18), box.getCenterX(), box.y + box.height + 28, MAP_SIZE);
    }

    private void lid(Graphics2D g, Brush brush, FluxMap lid) {
        int y = MAP_TOP + MAP_SIZE - LID_SIZE;
        brush.line("Lid, seen from above", Brush.bold(18), 12, COLUMN_LEFT, y - 40, WIDTH - MARGIN - COLUMN_LEFT);
        brush.line(
                lid.largest() > 0 ? "same colours and directions as the map" : "no focused light falls on it",
                Brush.font(16),
                12,
                COLUMN_LEFT,
                y - 16,
                WIDTH - MARGIN - COLUMN_LEFT);
        Rectangle box = FluxPicture.shaped(lid, look, new Rectangle(COLUMN_LEFT, y, LID_SIZE, LID_SIZE));
        FluxPicture.paint(g, lid, look, box, top);
        new SpotMarks(g, result, figures, box, look).outline(lid);
    }

    private void wall(Graphics2D g, Brush brush, FluxMap wall, Rectangle box) {
        brush.line(
                "Wall, unrolled, seen from outside; same colours; " + figures.length(wall.rows() * wall.cellHeight())
                        + " high; "
                        + Scales.wallWords(wall, figures),
                Brush.bold(18),
                12,
                MARGIN,
                box.y - 16,
                INNER);
        FluxPicture.paint(g, wall, FluxPicture.Look.FIRST_RIGHT, box, top);
        new WallMarks(g, brush, wall, words, result.scenario().target().radiusMetres()).paint(box);
    }

    private void caption(Graphics2D g, Brush brush) {
        double y = captionTop();
        g.setColor(Brush.INK);
        String reach = figures.watts(result.ledger().caught()) + " of focused sunlight ";
        String first = (words.isPan()
                        ? figures.plainWatts(result.ledger().absorbed()) + " go into the pan; " + reach + "reach it"
                        : reach + "land on the disc")
                + "; sun " + figures.degrees(result.scenario().sun().elevationRadians()) + " high, beam "
                + Figures.rounded(result.scenario().sun().beamWattsPerSquareMetre(), 3) + "\u00a0W/m\u00b2";
        brush.line(first, Brush.font(20), 13, MARGIN, y, INNER);
        g.setColor(Brush.GREY);
        String second =
                "Seed " + result.seed() + ", " + Figures.count(result.run().rays()) + " rays in "
                        + result.replicates() + " replicates. \u00b1 is one standard error. An estimate. Simmerpoint "
                        + Version.text();
        brush.line(second, Brush.font(17), 12, MARGIN, y + 30, INNER);
        brush.line(
                "Focused sunlight blinds and burns: keep eyes, face and hands out of the beam; cover the mirror when not in "
                        + "use.",
                Brush.font(17),
                12,
                MARGIN,
                y + 57,
                INNER);
        g.setColor(Brush.INK);
    }
}
