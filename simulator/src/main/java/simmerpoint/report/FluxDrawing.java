package simmerpoint.report;

import java.awt.Rectangle;
import java.util.Base64;
import java.util.Optional;
import simmerpoint.answer.Figures;
import simmerpoint.answer.TargetWords;
import simmerpoint.drawing.FluxColours;
import simmerpoint.drawing.chart.Ticks;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;
import simmerpoint.target.Spot;
import simmerpoint.units.UnitSystem;

/** The map of the focused light with the target's outline, the wall unrolled below; narrow enough for a phone. */
final class FluxDrawing {
    private static final double LEFT = 6;
    private static final double TOP = 20;
    private static final double SIZE = 284;
    private static final double BAR_LEFT = LEFT + SIZE + 12;
    private static final double BAR_WIDTH = 14;
    private static final double WALL_WIDTH = SvgSheet.WIDTH - 2 * LEFT;
    private static final double TALLEST_WALL = 110;
    private static final int PIXELS_PER_CELL = 3;
    private static final int MARKS = 6;
    private static final int STEPS = 64;
    private static final double LINE = 18;
    private static final int KEY_LINES = 4;

    private final TraceResult result;
    private final UnitSystem system;
    private final Figures figures;
    private final TargetWords words;
    private final FluxMap map;
    private final FluxPicture.Look look;
    private final double top;
    private final Optional<FluxMap> wall;
    private final double wallHeight;
    private final double width;
    private final double height;
    private SvgSheet sheet;

    FluxDrawing(TraceResult result, UnitSystem system) {
        this.result = result;
        this.system = system;
        figures = new Figures(system);
        words = TargetWords.of(result.scenario().target());
        map = result.maps().crossing();
        look = words.isPan() ? FluxPicture.Look.FIRST_DOWN : FluxPicture.Look.FIRST_UP;
        top = FluxSheet.top(result);
        double radius = result.scenario().target().radiusMetres();
        wall = result.maps().wall().map(w -> FluxSheet.awayInTheMiddle(w, radius));
        wallHeight = wall.map(w ->
                        Math.min(TALLEST_WALL, WALL_WIDTH * w.rows() * w.cellHeight() / (w.columns() * w.cellWidth())))
                .orElse(0.0);
        double across = map.rows() * map.cellHeight();
        double upright = map.columns() * map.cellWidth();
        width = SIZE * Math.min(1, across / upright);
        height = SIZE * Math.min(1, upright / across);
    }

    HtmlFigure figure() {
        double foot = TOP + height + 20;
        double wallTop = foot + KEY_LINES * LINE + 26;
        double whole = wall.isPresent() ? wallTop + wallHeight + 22 : wallTop - 22;
        sheet = new SvgSheet(whole, description());
        sheet.text(
                "middle",
                LEFT + width / 2,
                TOP - 7,
                "↑ " + (words.isPan() ? words.towardsMinusX() : words.towardsPlusX()));
        sheet.image(raster(map, look), LEFT, TOP, width, height);
        marks();
        sheet.text(
                "middle",
                LEFT + width / 2,
                foot - 5,
                "↓ " + (words.isPan() ? words.towardsPlusX() : words.towardsMinusX()));
        colours();
        key(foot + LINE);
        wall.ifPresent(w -> wall(w, wallTop));
        return HtmlFigure.drawing(sheet.finished(), caption());
    }

    private String description() {
        return "Map of the focused light in the plane of the " + words.face() + ", hottest spot "
                + figures.plainFlux(result.spot().peakFlux()) + "; the figures follow below.";
    }

    private String caption() {
        String from = words.isPan()
                ? "The focused light in the plane of the pan’s underside, as if seen from above through the pan"
                : "The focused light in the plane of the disc, seen from the dish";
        String lid = result.maps()
                .lid()
                .filter(map -> map.largest() > 0)
                .map(map -> " The lid gets up to about " + about(map) + ".")
                .orElse("");
        return from + ". The paler, the stronger." + lid;
    }

    private String about(FluxMap map) {
        double surely = FluxSheet.surely(map);
        return figures.plainFlux(new Estimate(surely, 0.05 * surely));
    }

    private String raster(FluxMap cells, FluxPicture.Look way) {
        boolean level = way == FluxPicture.Look.FIRST_RIGHT;
        int w = PIXELS_PER_CELL * (level ? cells.columns() : cells.rows());
        int h = PIXELS_PER_CELL * (level ? cells.rows() : cells.columns());
        byte[] png =
                Sheets.png(Sheets.image(w, h, g -> FluxPicture.paint(g, cells, way, new Rectangle(0, 0, w, h), top)));
        return "data:image/png;base64," + Base64.getEncoder().encodeToString(png);
    }

    private double perMetre() {
        return width / (map.rows() * map.cellHeight());
    }

    private double x(double second) {
        return LEFT + (second - map.secondMin()) * perMetre();
    }

    private double y(double first) {
        double along = (first - map.firstMin()) * perMetre();
        return words.isPan() ? TOP + along : TOP + height - along;
    }

    private void marks() {
        circle("", result.scenario().target().radiusMetres());
        Spot spot = result.spot();
        spot.radius50().ifPresent(r -> circle(" half", r.value()));
        spot.radius90().ifPresent(r -> circle(" most", r.value()));
        if (result.ledger().caught().value() > 0) {
            cross(x(spot.peakY()), y(spot.peakX()));
        }
        double unit = system == UnitSystem.INCH ? 0.0254 : 0.01;
        double count = Ticks.below(0.25 * width / perMetre() / unit);
        sheet.rectangle("plate", LEFT + 6, TOP + height - 30, Math.max(46, count * unit * perMetre() + 16), 24);
        sheet.rectangle("white", LEFT + 14, TOP + height - 12, count * unit * perMetre(), 2.5);
        sheet.text(
                "white",
                "start",
                LEFT + 14,
                TOP + height - 16,
                0,
                Figures.rounded(count, 1) + Figures.NBSP + (system == UnitSystem.INCH ? "in" : "cm"));
    }

    /** A circle about the middle, where the map holds all of it; light over dark, so that it shows everywhere. */
    private void circle(String style, double radius) {
        double r = radius * perMetre();
        if (r <= Math.min(width, height) / 2 && Double.isFinite(r)) {
            sheet.circle("under", x(0), y(0), r);
            sheet.circle("over" + style, x(0), y(0), r);
        }
    }

    private void cross(double x, double y) {
        for (String style : new String[] {"under", "over"}) {
            sheet.line(style, x - 6, y, x + 6, y);
            sheet.line(style, x, y - 6, x, y + 6);
        }
    }

    private void colours() {
        double step = height / STEPS;
        for (int k = 0; k < STEPS; k++) {
            String colour = String.format("#%06x", FluxColours.rgb((k + 0.5) / STEPS));
            sheet.coloured(colour, BAR_LEFT, TOP + height - (k + 1) * step, BAR_WIDTH, step + 0.3);
        }
        sheet.text("heading", "end", SvgSheet.WIDTH - 2, TOP - 7, 0, "kW/m²");
        for (double mark : Ticks.upTo(top / 1000, MARKS)) {
            double y = TOP + height * (1 - mark * 1000 / top);
            sheet.line("tick", BAR_LEFT + BAR_WIDTH, y, BAR_LEFT + BAR_WIDTH + 4, y);
            sheet.text("start", BAR_LEFT + BAR_WIDTH + 7, Math.max(TOP + 8, y + 4), SvgChart.text(mark));
        }
    }

    private void key(double y) {
        Spot spot = result.spot();
        sample(
                "",
                y,
                "the " + words.noun() + "’s outline, "
                        + figures.length(2 * result.scenario().target().radiusMetres()) + " across");
        sample(" half", y + LINE, "50 % of the reflected light" + within(spot.radius50()));
        sample(" most", y + 2 * LINE, "90 % of the reflected light" + within(spot.radius90()));
        double at = y + 3 * LINE;
        sheet.rectangle("plate", LEFT, at - 11, 30, 14);
        cross(LEFT + 15, at - 4);
        String hottest = result.ledger().caught().value() > 0 ? ", " + figures.plainFlux(spot.peakFlux()) : ": none";
        sheet.text("start", LEFT + 38, at, "hottest spot of the " + words.face() + hottest);
    }

    private String within(Optional<Estimate> radius) {
        return radius.map(r -> ": within " + figures.length(r.value())).orElse(": less gets this far");
    }

    private void sample(String style, double y, String text) {
        sheet.rectangle("plate", LEFT, y - 11, 30, 14);
        sheet.line("over" + style, LEFT + 2, y - 4, LEFT + 28, y - 4);
        sheet.text("start", LEFT + 38, y, text);
    }

    private void wall(FluxMap cells, double y) {
        sheet.text("heading", "start", LEFT, y - 8, 0, "Wall, unrolled: " + Scales.wallWords(cells, figures));
        sheet.image(raster(cells, FluxPicture.Look.FIRST_RIGHT), LEFT, y, WALL_WIDTH, wallHeight);
        double foot = y + wallHeight + 14;
        sheet.text("start", LEFT, foot, words.towardsMinusX());
        sheet.text("middle", LEFT + WALL_WIDTH / 2, foot, words.towardsPlusX());
        sheet.text("end", LEFT + WALL_WIDTH, foot, words.towardsMinusX());
    }
}
