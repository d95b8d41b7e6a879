package simmerpoint.drawing.cooker;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.dish.Aperture;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.PanelOutline;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.setup.TargetOutline;
import simmerpoint.units.UnitSystem;

/** The dish seen from the sun's side along its axis, to scale, with its diameter and the size of a panel. */
public final class FrontDrawing implements Drawing {
    private static final double MARGIN = 14;
    private static final double BELOW = 74;
    private static final Vec LIGHT = new Vec(0.5, 0.45, 0.74);

    private final Scenario scenario;
    private final UnitSystem units;
    private final FigureFormat figures;
    private final List<PanelOutline> panels;
    private final List<Vec> target;
    private final Aperture rim;
    private final double middle;
    private final double reach;

    /** Of a scenario, lengths in those units. */
    public FrontDrawing(Scenario scenario, UnitSystem units) {
        this.scenario = scenario;
        this.units = units;
        figures = new FigureFormat(units);
        panels = scenario.dish().outlines();
        Setup setup = scenario.setup();
        target = TargetOutline.of(scenario.target(), setup).points().stream()
                .map(setup.dish()::fromParent)
                .toList();
        DishPlan dish = scenario.dish();
        Aperture own = dish.aperture();
        rim = own.isBesideAxis() ? own : Aperture.about(dish.cut().reachMetres(dish));
        middle = own.isBesideAxis() ? (farthest(Vec::x) - farthest(v -> -v.x())) / 2 : 0;
        reach = Math.max(
                Math.max(farthest(Vec::x) - middle, farthest(v -> -v.x()) + middle),
                Math.max(farthest(Vec::y), farthest(v -> -v.y())));
    }

    /** How far rim and target reach some way from the axis, m. */
    private double farthest(ToDoubleFunction<Vec> way) {
        double edge = rim.radius() + way.applyAsDouble(new Vec(rim.x(), rim.y(), 0));
        return Math.max(edge, target.stream().mapToDouble(way).max().orElse(edge));
    }

    /** Half of what is called its diameter, m. */
    public double radiusMetres() {
        return rim.radius();
    }

    /** Number of panels, if they are too small to be drawn. */
    public Optional<Integer> undrawnPanels() {
        return Optional.of(panels.size()).filter(n -> n > PanelShades.MOST);
    }

    /** The size of the framed panel in words; empty if none is framed. */
    public Optional<String> panelSize() {
        return undrawnPanels().isPresent() || panels.size() < 2
                ? Optional.empty()
                : scenario.dish().cut().panelSizeLabel(scenario.dish(), figures::length);
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return width - MARGIN + BELOW;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double half = box.width() / 2 - MARGIN;
        double perMetre = half / reach;
        FrontFrame frame = new FrontFrame(box.middleX(), box.y() + MARGIN + half + middle * perMetre, perMetre);
        mirrors(canvas, frame);
        mask(canvas, frame);
        canvas.draw(
                Style.TARGET,
                Path.through(ShadowOutline.hull(target.stream().map(frame::at).toList()), true));
        double[] at = frame.at(middle(target));
        canvas.write(Text.at(at[0], at[1] + 4, TargetWords.of(scenario.target()).noun())
                .in(TextStyle.NOTE)
                .middle());
        double bottom = box.y() + MARGIN + 2 * half + 16;
        double wide = rim.radius() * frame.perMetre();
        Dimensions lines = new Dimensions(canvas, box);
        lines.across(box.middleX() - wide, box.middleX() + wide, bottom, figures.length(2 * rim.radius()));
        lines.scaleBar(box.x() + MARGIN, bottom + 34, frame.perMetre(), box.width() / 4, false, units);
        panelSize().ifPresent(size -> {
            Box sample = new Box(box.middleX() - 24, bottom + 24, 12, 10);
            canvas.draw(Style.SHADE_4, sample);
            canvas.draw(Style.CHOSEN, sample);
            canvas.write(Text.at(box.middleX() - 6, bottom + 34, size));
        });
    }

    private void mask(Canvas canvas, FrontFrame frame) {
        if (scenario.mask().isThere()) {
            MaskOutline mask = new MaskOutline(scenario.mask(), rim);
            canvas.draw(Style.TARGET, mask.path(frame));
            double[] at = mask.middle(frame);
            canvas.write(Text.at(at[0], at[1] + 4, "mask").in(TextStyle.NOTE).middle());
        }
    }

    private void mirrors(Canvas canvas, FrontFrame frame) {
        Circle outline = new Circle(
                frame.at(rim.x(), rim.y())[0], frame.at(rim.x(), rim.y())[1], rim.radius() * frame.perMetre());
        canvas.draw(Style.EXTENSION, outline);
        if (undrawnPanels().isPresent()) {
            canvas.draw(Style.SHADE_2, outline);
            return;
        }
        PanelShades.draw(
                canvas,
                PanelShades.of(panels, LIGHT),
                panels.stream()
                        .map(p -> PanelShades.outline(p.edge(), p.hole(), frame::at))
                        .toList(),
                scenario.dish().cut().has(CutTrait.PARABOLOID));
        if (panelSize().isPresent()) {
            canvas.draw(Style.CHOSEN, PanelShades.outline(chosen().edge(), List.of(), frame::at));
        }
    }

    /** A panel at the rim, to the lower right. */
    private PanelOutline chosen() {
        return panels.stream()
                .max(Comparator.comparingDouble(p -> {
                    Vec m = middle(p.edge());
                    return -0.75 * m.y() - 0.66 * m.x();
                }))
                .orElseThrow();
    }

    private static Vec middle(List<Vec> points) {
        return points.stream().reduce(Vec.ZERO, Vec::plus).times(1.0 / points.size());
    }
}
