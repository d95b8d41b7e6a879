package simmerpoint.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.geometry.euclidean.twod.hull.MonotoneChain;
import simmerpoint.answer.Figures;
import simmerpoint.answer.TargetWords;
import simmerpoint.dish.PanelOutline;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.setup.TargetOutline;
import simmerpoint.units.UnitSystem;

/**
 * The dish seen from the sun's side along its axis, to scale: upper edge up, so +y of the dish frame, to the right of
 * someone who stands behind the dish, comes to the left.
 */
final class FrontDrawing {
    private static final double MARGIN = 14;
    private static final double BELOW = 74;
    private static final Vec LIGHT = new Vec(0.5, 0.45, 0.74);

    private final Scenario scenario;
    private final UnitSystem system;
    private final Figures figures;
    private final List<PanelOutline> panels;
    private final List<Vec> target;
    private final double radius;
    private final double reach;
    private final SvgScale scale;

    FrontDrawing(Scenario scenario, UnitSystem system) {
        this.scenario = scenario;
        this.system = system;
        figures = new Figures(system);
        panels = scenario.dish().outlines();
        Setup setup = scenario.setup();
        target = TargetOutline.of(scenario.target(), setup).points().stream()
                .map(setup.dish()::fromParent)
                .toList();
        radius = scenario.dish().cut().reachMetres(scenario.dish());
        reach = Math.max(
                radius,
                target.stream()
                        .mapToDouble(v -> Math.max(Math.abs(v.x()), Math.abs(v.y())))
                        .max()
                        .orElse(0));
        double perMetre = (SvgSheet.WIDTH - 2 * MARGIN) / (2 * reach);
        scale = new SvgScale(SvgSheet.WIDTH / 2, MARGIN + reach * perMetre, 0, 0, perMetre);
    }

    private double[] place(Vec v) {
        return scale.at(-v.y(), v.x());
    }

    HtmlFigure figure() {
        String noun = TargetWords.of(scenario.target()).noun();
        String across = figures.length(2 * radius);
        SvgSheet sheet = new SvgSheet(
                MARGIN + 2 * reach * scale.perMetre() + BELOW,
                "The dish from the sun’s side: " + across + " across, the " + noun + " before it.");
        mirrors(sheet);
        sheet.path("target", SvgSheet.way(hull(), true));
        sheet.text("middle", scale.x(-middle().y()), scale.y(middle().x()) + 4, noun);
        double bottom = scale.y(-reach) + 16;
        sheet.across(scale.x(-radius), scale.x(radius), bottom, across);
        scale.bar(sheet, scale.x(-reach), bottom + 34, system);
        Optional<String> size = size();
        size.ifPresent(text -> {
            sheet.rectangle("panel shade4 chosen", SvgSheet.WIDTH / 2 - 24, bottom + 24, 12, 10);
            sheet.text("start", SvgSheet.WIDTH / 2 - 6, bottom + 34, text);
        });
        return HtmlFigure.drawing(
                sheet.finished(),
                "From the front, along the dish’s axis, its upper edge up; to scale."
                        + (size.isPresent() ? " The size is that of the framed panel." : "")
                        + (tooMany()
                                ? " Its " + Figures.count(panels.size()) + " panels are too small to be drawn."
                                : ""));
    }

    private boolean tooMany() {
        return panels.size() > PanelShades.MOST;
    }

    private void mirrors(SvgSheet sheet) {
        sheet.circle("extension", scale.x(0), scale.y(0), radius * scale.perMetre());
        if (tooMany()) {
            sheet.circle("panel shade2", scale.x(0), scale.y(0), radius * scale.perMetre());
            return;
        }
        new PanelShades(panels, LIGHT, this::place).paint(sheet);
        if (size().isPresent()) {
            sheet.path("chosen", PanelShades.way(chosen().edge(), this::place));
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
        Vec sum = Vec.ZERO;
        for (Vec p : points) {
            sum = sum.plus(p);
        }
        return sum.times(1.0 / points.size());
    }

    private Vec middle() {
        return middle(target);
    }

    private Optional<String> size() {
        return tooMany() || panels.size() < 2
                ? Optional.empty()
                : scenario.dish().cut().panelSizeLabel(scenario.dish(), figures::length);
    }

    /** Convex outline of the target on the sheet. */
    private List<double[]> hull() {
        List<Vector2D> points = new ArrayList<>();
        target.forEach(v -> points.add(new Vector2D(place(v))));
        List<double[]> hull = new ArrayList<>();
        new MonotoneChain(false, 1e-9).findHullVertices(points).forEach(p -> hull.add(p.toArray()));
        return hull;
    }
}
