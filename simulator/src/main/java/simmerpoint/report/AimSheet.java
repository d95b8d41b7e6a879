package simmerpoint.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.AimAnswer;
import simmerpoint.answer.Figures;
import simmerpoint.answer.Item;
import simmerpoint.answer.SkyWords;
import simmerpoint.answer.TargetWords;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.study.aim.AimCurve;
import simmerpoint.study.aim.AimInterval;
import simmerpoint.study.aim.AimLead;
import simmerpoint.study.aim.AimMap;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.SunTrack;
import simmerpoint.units.UnitSystem;

/** How the picture of aiming is laid out: heading, watts over time, curves, maps with their scale, caption. */
final class AimSheet {
    static final int WIDTH = 1400;
    static final int HEIGHT = 1830;

    private static final int MARGIN = 40;
    private static final int INNER = WIDTH - 2 * MARGIN;
    private static final int LEFT = 120;
    private static final int TIME_TOP = 210;
    private static final int TIME_HEIGHT = 330;
    private static final int CURVE_TOP = 690;
    private static final int CURVE_HEIGHT = 300;
    private static final int MAP_TOP = 1180;
    private static final int MAP_SIZE = 480;
    private static final int SECOND = LEFT + MAP_SIZE + 130;
    private static final int WAY_STEPS = 24;
    private static final double HEADROOM = 1.12;

    private static final Color FIRST = new Color(0x111111);
    private static final Color OTHER = new Color(0x0B4F9E);
    private static final Color THIRD = new Color(0xB34A00);
    private static final BasicStroke SOLID = new BasicStroke(3.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    private static final BasicStroke DASHED =
            new BasicStroke(2.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {10, 7}, 0);
    private static final BasicStroke DOTTED =
            new BasicStroke(3f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1, new float[] {1, 7}, 0);

    private final AimResult result;
    private final UnitSystem system;
    private final Figures figures;
    private final double top;

    AimSheet(AimResult result, UnitSystem system) {
        this.result = result;
        this.system = system;
        figures = new Figures(system);
        double most = result.deadOnWatts().value();
        for (AimCurve curve : result.curves()) {
            for (AimCurve.Point p : curve.points()) {
                most = Math.max(most, p.watts().value());
            }
        }
        top = most;
    }

    void paint(Graphics2D g) {
        Brush brush = new Brush(g);
        heading(g, brush);
        time(g, brush);
        curves(g, brush, false, LEFT, "Sun drifted on, dish and " + noun() + " standing still: W");
        curves(g, brush, true, SECOND, "Dish turned wrong: W");
        maps(g);
        caption(g, brush);
    }

    private String noun() {
        return TargetWords.of(result.scenario().target()).noun();
    }

    private void heading(Graphics2D g, Brush brush) {
        g.setColor(Brush.INK);
        String title = OneLine.of(result.scenario().title());
        brush.line(title.isEmpty() ? "Aiming" : title, Brush.bold(30), 13, MARGIN, 52, INNER);
        var items = AimAnswer.of(result, system).sections().get(0).items();
        brush.paragraph(((Item.Sentence) items.get(0)).text(), Brush.font(19), MARGIN, 88, INNER);
    }

    private void time(Graphics2D g, Brush brush) {
        Rectangle box = new Rectangle(LEFT, TIME_TOP, WIDTH - LEFT - MARGIN, TIME_HEIGHT);
        double end = Math.max(
                result.longInterval().minutes(), result.deadOnInterval().minutes());
        LinePlot plot = new LinePlot(g, box, 0, Math.max(end, 1e-3), top * HEADROOM);
        plot.frame("What the " + noun() + " gets after one aiming: W", "minutes after the aiming");
        if (result.minutes().isPresent()) {
            plot.level(tolerated(), SkyWords.loss(1 - result.plan().lossShare()) + " of dead on");
            plot.upright(
                    result.deadOnInterval().minutes(),
                    SkyWords.minutes(result.deadOnInterval().minutes()));
        }
        AimInterval alone = result.longInterval().minutes() >= end ? result.longInterval() : result.deadOnInterval();
        plot.line(points(alone), FIRST, SOLID);
        result.lead().ifPresent(lead -> plot.line(points(lead.interval()), OTHER, DASHED));
        int y = TIME_TOP + TIME_HEIGHT + 86;
        sample(g, brush, LEFT, y, FIRST, SOLID, "aimed dead on, then left alone", 380);
        result.lead()
                .ifPresent(lead -> sample(
                        g,
                        brush,
                        LEFT + 440,
                        y,
                        OTHER,
                        DASHED,
                        "aimed " + SkyWords.angle(lead.radians()) + " ahead of the sun, then left alone",
                        560));
    }

    private static List<double[]> points(AimInterval interval) {
        return interval.moments().stream()
                .map(m -> new double[] {m.minutes(), m.watts().value()})
                .toList();
    }

    private double tolerated() {
        return (1 - result.plan().lossShare()) * result.deadOnWatts().value();
    }

    private void curves(Graphics2D g, Brush brush, boolean turn, int left, String title) {
        List<AimCurve> two =
                result.curves().stream().filter(c -> c.turn() == turn).toList();
        double reach = Math.toDegrees(
                result.maps().get(0).radians()[result.maps().get(0).radians().length - 1]);
        Rectangle box = new Rectangle(left, CURVE_TOP, MAP_SIZE, CURVE_HEIGHT);
        LinePlot plot = new LinePlot(g, box, -reach, reach, top * HEADROOM);
        plot.frame(title, "degrees from dead on");
        plot.level(tolerated(), "");
        for (AimCurve curve : two) {
            List<double[]> points = curve.points().stream()
                    .map(p ->
                            new double[] {Math.toDegrees(p.radians()), p.watts().value()})
                    .toList();
            plot.line(points, curve.side() ? THIRD : FIRST, curve.side() ? DOTTED : SOLID);
        }
        int y = CURVE_TOP + CURVE_HEIGHT + 84;
        String up = turn ? "up (dish too high) and down" : "up (sun higher) and down";
        sample(g, brush, left, y, FIRST, SOLID, up, 236);
        sample(g, brush, left + 310, y, THIRD, DOTTED, "right and left", 170);
    }

    private static void sample(
            Graphics2D g, Brush brush, int x, int y, Color colour, BasicStroke stroke, String text, int room) {
        g.setColor(colour);
        g.setStroke(stroke);
        g.draw(new Line2D.Double(x, y - 6, x + 46.0, y - 6));
        g.setStroke(new BasicStroke(1));
        g.setColor(Brush.INK);
        brush.line(text, Brush.font(17), 11, x + 58.0, y, room);
    }

    private void maps(Graphics2D g) {
        AimMap drift = result.maps().get(0);
        AimMap turn = result.maps().get(1);
        AimMapPanel left = new AimMapPanel(g, new Rectangle(LEFT, MAP_TOP, MAP_SIZE, MAP_SIZE), drift, top);
        left.paint("Sun drifted on", level(drift), "sun higher", "sun to the right (facing it)");
        List<double[]> dots = new ArrayList<>();
        dots.add(drift(result.deadOnInterval().minutes()));
        left.way(
                way(Math.max(
                        result.longInterval().minutes(), result.deadOnInterval().minutes())),
                dots,
                (result.way().isReal() ? "the sun\u2019s way; dot: " : "a sun\u2019s way; dot: ")
                        + SkyWords.minutes(result.deadOnInterval().minutes()));
        AimMapPanel right = new AimMapPanel(g, new Rectangle(SECOND, MAP_TOP, MAP_SIZE, MAP_SIZE), turn, top);
        right.paint("Dish turned wrong", level(turn), "dish too high", "dish too far right");
        result.lead().ifPresent(lead -> lead(right, lead));
        new WattBar(g, top).paint(new Rectangle(SECOND + MAP_SIZE + 30, MAP_TOP, 26, MAP_SIZE), "W");
    }

    private static void lead(AimMapPanel map, AimLead lead) {
        double[] there = {lead.upRadians(), lead.sideRadians()};
        map.way(List.of(there), List.of(there), "the lead");
    }

    /** The loss counted from the map's own middle, which the same rays gave. */
    private double level(AimMap map) {
        int middle = map.watts().length / 2;
        return (1 - result.plan().lossShare()) * map.watts()[middle][middle];
    }

    private double[] drift(double minutes) {
        SunTrack.Drift drift = result.way().after(minutes);
        return new double[] {drift.upRadians(), drift.sideRadians()};
    }

    private List<double[]> way(double minutes) {
        List<double[]> points = new ArrayList<>();
        for (int k = 1; k <= WAY_STEPS; k++) {
            points.add(drift(minutes * k / WAY_STEPS));
        }
        return points;
    }

    private void caption(Graphics2D g, Brush brush) {
        double y = MAP_TOP + MAP_SIZE + 92.0;
        g.setColor(Brush.GREY);
        brush.line(
                "White line on the maps: " + SkyWords.loss(result.plan().lossShare())
                        + " of the watts dead on (cross) are lost. Grey: the sun is down or the " + noun()
                        + " would touch the mirror.",
                Brush.font(17),
                11,
                MARGIN,
                y,
                INNER);
        brush.line(
                "Sun " + figures.degrees(result.scenario().sun().elevationRadians()) + " high, beam "
                        + Figures.rounded(result.scenario().sun().beamWattsPerSquareMetre(), 3)
                        + "\u00a0W/m\u00b2; seed " + result.options().seed() + ", "
                        + Figures.count(result.run().mapRays()) + " rays for each of "
                        + Figures.count(result.run().aims()) + " aims of the maps. An estimate. Simmerpoint "
                        + Version.text(),
                Brush.font(17),
                11,
                MARGIN,
                y + 27,
                INNER);
        brush.line(
                "Focused sunlight blinds and burns: aim by a shadow, never look along the axis or into the mirror.",
                Brush.font(17),
                12,
                MARGIN,
                y + 54,
                INNER);
        g.setColor(Brush.INK);
    }
}
