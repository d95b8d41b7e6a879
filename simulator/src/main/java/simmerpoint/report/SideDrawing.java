package simmerpoint.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import simmerpoint.answer.Figures;
import simmerpoint.answer.TargetWords;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.PanelOutline;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Setup;
import simmerpoint.setup.SideView;
import simmerpoint.setup.StandGeometry;
import simmerpoint.setup.TargetOutline;
import simmerpoint.units.UnitSystem;

/**
 * The cooker from its side, to scale: ground, tripod, dish, pan and sun, with the lengths that a builder measures. Drift
 * and turn are drawn as they are. Tripod and stand are sketched: the scenario does not describe them.
 */
final class SideDrawing {
    private static final double LEFT = 26;
    private static final double RIGHT = 30;
    private static final double TOP = 26;
    private static final double BELOW = 66;
    private static final double TALLEST = 420;
    private static final double SUN = 9;
    private static final double LOW_SUN = Math.toRadians(20);
    private static final int PROFILE = 48;
    private static final Vec LIGHT = new Vec(0.6, 0.5, -0.62);

    private final Scenario scenario;
    private final UnitSystem system;
    private final Figures figures;
    private final Setup setup;
    private final SideView view;
    private final StandGeometry geometry;
    private final List<PanelOutline> panels;
    private final TargetOutline target;
    private final LightPaths light;
    private final String noun;
    private double firstMetres = Double.POSITIVE_INFINITY;
    private double lastMetres = Double.NEGATIVE_INFINITY;
    private double topMetres;
    private final SvgScale scale;
    private final SvgSheet sheet;

    SideDrawing(Scenario scenario, UnitSystem system) {
        this.scenario = scenario;
        this.system = system;
        figures = new Figures(system);
        setup = scenario.setup();
        double elevation = scenario.sun().elevationRadians();
        double mount = scenario.aim().mountMetres();
        double height = scenario.ground().tripodHeightMetres();
        view = new SideView(elevation, mount, height);
        geometry = StandGeometry.of(scenario.dish(), elevation, mount, height, scenario.stand());
        panels = inWellAimedFrame(scenario.dish().outlines());
        target = TargetOutline.of(scenario.target(), setup);
        light = new LightPaths(scenario);
        noun = TargetWords.of(scenario.target()).noun();
        bounds();
        double wide = (SvgSheet.WIDTH - LEFT - RIGHT) / (lastMetres - firstMetres);
        double perMetre = Math.min(wide, TALLEST / topMetres);
        double spare = SvgSheet.WIDTH - LEFT - RIGHT - (lastMetres - firstMetres) * perMetre;
        scale = new SvgScale(LEFT + spare / 2, TOP + topMetres * perMetre, firstMetres, 0, perMetre);
        sheet = new SvgSheet(TOP + topMetres * perMetre + BELOW, description());
    }

    private String description() {
        return "The cooker from its side: the sun "
                + figures.degrees(scenario.sun().elevationRadians())
                + " high at the upper right, the dish on its tripod at the left, the " + noun + " "
                + figures.length(geometry.panHeightMetres(), 2) + " above the ground.";
    }

    private List<PanelOutline> inWellAimedFrame(List<PanelOutline> inDish) {
        return inDish.stream()
                .map(p -> new PanelOutline(
                        p.panel(),
                        p.edge().stream().map(setup.dish()::toParent).toList(),
                        p.hole().stream().map(setup.dish()::toParent).toList()))
                .toList();
    }

    private void bounds() {
        panels.forEach(p -> p.edge().forEach(this::include));
        target.points().forEach(this::include);
        light.starts().forEach(this::include);
        include(light.sunPlace());
        include(view.mount());
        double legs = legs();
        include(new SideView.Place(-legs, 0));
        include(new SideView.Place(legs, 0));
    }

    private void include(Vec place) {
        include(view.of(place));
    }

    private void include(SideView.Place place) {
        firstMetres = Math.min(firstMetres, place.towardsSunMetres());
        lastMetres = Math.max(lastMetres, place.towardsSunMetres());
        topMetres = Math.max(topMetres, place.heightMetres());
    }

    private double legs() {
        return scenario.ground().tripodHeightMetres() * Math.tan(StandGeometry.USUAL_LEAN);
    }

    private double[] place(Vec wellAimed) {
        return place(view.of(wellAimed));
    }

    private double[] place(SideView.Place place) {
        return scale.at(place.towardsSunMetres(), place.heightMetres());
    }

    HtmlFigure figure() {
        ground();
        stands();
        dish();
        axis();
        light();
        target();
        lengths();
        scale.bar(sheet, LEFT, scale.y(0) + BELOW - 8, system);
        return HtmlFigure.drawing(
                sheet.finished(),
                "From the side, the sun to the right; to scale. The tripod is a sketch, its legs leaning as usual.");
    }

    private void ground() {
        double y = scale.y(0);
        sheet.rectangle("ground", 0, y, SvgSheet.WIDTH, 5);
        sheet.line("edge", 0, y, SvgSheet.WIDTH, y);
    }

    private void stands() {
        double[] mount = place(view.mount());
        double leg = legs() * scale.perMetre();
        sheet.line("sketch", mount[0], mount[1], mount[0] - leg, scale.y(0));
        sheet.line("sketch", mount[0], mount[1], mount[0] + leg, scale.y(0));
        sheet.line("sketch", mount[0], mount[1], mount[0], scale.y(0));
        double[] vertex = place(setup.dish().toParent(Vec.ZERO));
        sheet.line("sketch", mount[0], mount[1], vertex[0], vertex[1]);
        double[] pan = place(setup.target().origin());
        if (scenario.aim().panCarriedBy() == Aim.PanCarrier.STAND) {
            sheet.line("sketch dashed", pan[0], pan[1], pan[0], scale.y(0));
        }
        sheet.circle("mount", mount[0], mount[1], 3);
    }

    /** The outside of the nearer half, and the section along the ribs that point up and down. */
    private void dish() {
        List<PanelOutline> near = new ArrayList<>(panels);
        boolean mesh = !scenario.dish().cut().has(CutTrait.PARABOLOID);
        near.removeIf(p -> !mesh && nearness(p) < 0);
        near.sort(Comparator.comparingDouble(SideDrawing::nearness));
        if (!scenario.dish().cut().has(CutTrait.PANELS) || near.size() > PanelShades.MOST) {
            sheet.path("panel shade2", SvgSheet.way(profile(), true));
        } else {
            new PanelShades(near, LIGHT, this::place).paint(sheet);
        }
        if (!mesh) {
            sheet.path("profile", SvgSheet.way(profile(), false));
        }
    }

    private static double nearness(PanelOutline panel) {
        return panel.edge().stream().mapToDouble(Vec::y).average().orElse(0);
    }

    private List<double[]> profile() {
        List<double[]> points = new ArrayList<>();
        double f = scenario.dish().focalLengthMetres();
        for (int k = -PROFILE; k <= PROFILE; k++) {
            double r = scenario.dish().radiusMetres() * k / PROFILE;
            points.add(place(setup.dish().toParent(new Vec(r, 0, r * r / (4 * f)))));
        }
        return points;
    }

    private void axis() {
        double f = scenario.dish().focalLengthMetres();
        double[] vertex = place(setup.dish().toParent(Vec.ZERO));
        double[] focus = place(setup.dish().toParent(new Vec(0, 0, f)));
        sheet.line("axis", vertex[0], vertex[1], focus[0], focus[1]);
        double degrees = Math.toDegrees(Math.atan2(focus[1] - vertex[1], focus[0] - vertex[0]));
        boolean room = f * scale.perMetre() > 9 * SvgSheet.LETTERS;
        sheet.text(
                "label",
                "middle",
                vertex[0] + 0.45 * (focus[0] - vertex[0]),
                vertex[1] + 0.45 * (focus[1] - vertex[1]) - 3,
                degrees,
                (room ? "focal length " : "") + figures.length(f));
    }

    private void light() {
        for (List<Vec> way : light.paths()) {
            List<double[]> points = way.stream().map(this::place).toList();
            sheet.path("ray", SvgSheet.way(points, false));
            sheet.arrow("sun", points.get(0), points.get(1), 0.4);
        }
        double[] sun = place(light.sunPlace());
        boolean low = scenario.sun().elevationRadians() < LOW_SUN;
        sheet.circle("sun", sun[0], sun[1], SUN);
        sheet.text(
                "end",
                sun[0] + SUN,
                low ? sun[1] + SUN + SvgSheet.LETTERS : sun[1] - SUN - 5,
                "sun " + figures.degrees(scenario.sun().elevationRadians()) + " high");
    }

    private void target() {
        double[] middle = place(setup.target().origin());
        if (scenario.target() instanceof Pan pan) {
            double half = pan.radiusMetres() * scale.perMetre();
            double high = pan.heightMetres() * scale.perMetre();
            sheet.rectangle("target", middle[0] - half, middle[1] - high, 2 * half, high);
            double[] label = {middle[0], middle[1] - high - 6};
            sheet.text(
                    "middle",
                    label[0],
                    label[1],
                    "pan " + figures.length(pan.diameterMetres()) + " × " + figures.length(pan.heightMetres()));
        } else {
            sheet.path(
                    "target thick",
                    SvgSheet.way(target.underside().stream().map(this::place).toList(), true));
            sheet.text("middle", middle[0], middle[1] - 8, noun);
        }
    }

    private void lengths() {
        double y = scale.y(0);
        double[] mount = place(view.mount());
        double[] pan = place(setup.target().origin());
        double farLeft = Math.min(scale.x(firstMetres), mount[0] - legs() * scale.perMetre()) - 8;
        sheet.line("extension", farLeft, mount[1], mount[0], mount[1]);
        sheet.upright(farLeft, mount[1], y, figures.length(scenario.ground().tripodHeightMetres(), 2));
        double farRight = SvgSheet.WIDTH - 12;
        sheet.line("extension", pan[0], pan[1], farRight, pan[1]);
        sheet.upright(farRight, pan[1], y, figures.length(geometry.panHeightMetres(), 2));
        if (Math.abs(pan[0] - mount[0]) > 2) {
            sheet.line("extension", mount[0], y, mount[0], y + 18);
            sheet.line("extension", pan[0], y, pan[0], y + 18);
            sheet.across(
                    Math.min(mount[0], pan[0]),
                    Math.max(mount[0], pan[0]),
                    y + 16,
                    figures.length(Math.abs(geometry.panDistanceMetres()), 2));
        }
        clearance(y);
    }

    /** From the ground up to the mirror's lowest point, where that is above it. */
    private void clearance(double ground) {
        double[] lowest = panels.stream()
                .flatMap(p -> p.edge().stream())
                .map(this::place)
                .max(Comparator.comparingDouble(p -> p[1]))
                .orElse(place(view.mount()));
        if (ground - lowest[1] > SvgSheet.LETTERS) {
            sheet.line("dimension", lowest[0], lowest[1] + 2, lowest[0], ground);
            sheet.text(
                    "start",
                    lowest[0] + 5,
                    (lowest[1] + ground) / 2 + 4,
                    figures.length((ground - lowest[1]) / scale.perMetre(), 2));
        }
    }
}
