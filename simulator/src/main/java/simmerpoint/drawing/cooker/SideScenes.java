package simmerpoint.drawing.cooker;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.PanelOutline;
import simmerpoint.drawing.Style;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Support;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.setup.SideView.Place;
import simmerpoint.setup.StandGeometry;
import simmerpoint.setup.TargetOutline;
import simmerpoint.study.light.RayPath;
import simmerpoint.units.UnitSystem;

/** Makes {@link SideScene}s; keeps the outlines of the last dish. */
public final class SideScenes {
    private static final int PROFILE = 40;
    private static final double SUN_AT = 1.75;
    private static final double SUN_BEYOND = 0.8;
    private static final double RAYS_FROM = 1.25;
    private static final Vec LIGHT = new Vec(0.6, 0.5, -0.62);

    private DishPlan known;
    private List<PanelOutline> outlines = List.of();
    private List<Style> shades = List.of();

    /** A scene with a few rays from the sun's centre. */
    public static SideScene of(Scenario scenario, UnitSystem system) {
        return new SideScenes().of(scenario, new LightPaths(scenario).paths(), Optional.empty(), system);
    }

    /**
     * A scene.
     *
     * @param scenario what it shows
     * @param paths rays of its dish
     * @param refusal why it cannot be, if it cannot
     * @param system units of what is said in words
     */
    public SideScene of(Scenario scenario, List<RayPath> paths, Optional<String> refusal, UnitSystem system) {
        YardPlace yard = new YardPlace(scenario);
        Setup setup = scenario.setup();
        double f = scenario.dish().focalLengthMetres();
        StandGeometry geometry = scenario.standGeometry();
        List<Place> profile = profile(scenario, setup, yard);
        Place lowest = profile.stream()
                .min(Comparator.comparingDouble(Place::heightMetres))
                .orElseThrow();
        Place pan = yard.of(setup.target().origin());
        return new SideScene(
                scenario,
                geometry,
                panels(scenario, setup, yard),
                profile,
                yard.of(setup.dish().toParent(Vec.ZERO)),
                yard.of(setup.dish().toParent(scenario.dish().middle())),
                yard.of(setup.dish().toParent(new Vec(0, 0, f))),
                yard.mount(),
                scenario.heights().tripodHeightMetres() * Math.tan(StandGeometry.USUAL_LEAN),
                pan,
                disc(scenario, setup, yard),
                bars(scenario, setup, yard),
                profile.get(profile.size() - 1),
                lowest,
                yard.of(setup.sun().vec().times(Math.max(SUN_AT * f, top(scenario, setup) + SUN_BEYOND * f))),
                rays(scenario, paths, yard),
                panTrouble(scenario, pan, refusal),
                dishTrouble(scenario, lowest, system),
                List.of());
    }

    private static List<Place> profile(Scenario scenario, Setup setup, YardPlace yard) {
        List<Place> points = new ArrayList<>();
        double upper = scenario.dish().upperEdgeMetres();
        double lower = scenario.dish().lowerEdgeMetres();
        for (int k = -PROFILE; k <= PROFILE; k++) {
            double x = (upper - lower) / 2 + (upper + lower) / 2 * k / PROFILE;
            points.add(yard.of(setup.dish().toParent(scenario.dish().onMirror(x, 0))));
        }
        return points;
    }

    private List<SideScene.Panel> panels(Scenario scenario, Setup setup, YardPlace yard) {
        if (!scenario.dish().equals(known)) {
            known = scenario.dish();
            outlines = near(known);
            shades = PanelShades.of(outlines, LIGHT);
        }
        Function<Vec, Place> seen = v -> yard.of(setup.dish().toParent(v));
        List<SideScene.Panel> panels = new ArrayList<>();
        for (int k = 0; k < outlines.size(); k++) {
            PanelOutline outline = outlines.get(k);
            panels.add(new SideScene.Panel(
                    outline.edge().stream().map(seen).toList(),
                    outline.hole().stream().map(seen).toList(),
                    shades.get(k)));
        }
        return panels;
    }

    /** The half of the mirror that is seen from the side, the farther panels first. */
    private static List<PanelOutline> near(DishPlan dish) {
        if (!dish.cut().has(CutTrait.PANELS)) {
            return List.of();
        }
        boolean mesh = !dish.cut().has(CutTrait.PARABOLOID);
        List<PanelOutline> near = new ArrayList<>(dish.outlines());
        near.removeIf(p -> !mesh && nearness(p) < 0);
        near.sort(Comparator.comparingDouble(SideScenes::nearness));
        return near.size() > PanelShades.MOST ? List.of() : near;
    }

    private static double nearness(PanelOutline panel) {
        return panel.edge().stream().mapToDouble(Vec::y).average().orElse(0);
    }

    private static List<Place> disc(Scenario scenario, Setup setup, YardPlace yard) {
        if (scenario.target() instanceof Pan) {
            return List.of();
        }
        return TargetOutline.of(scenario.target(), setup).underside().stream()
                .map(yard::of)
                .toList();
    }

    /** Ends of bars, arm and ring. */
    private static List<List<Place>> bars(Scenario scenario, Setup setup, YardPlace yard) {
        List<List<Place>> bars = new ArrayList<>();
        if (scenario.target() instanceof Pan pan) {
            for (Support.Bar bar : pan.support().bars()) {
                Vec half = new Vec(Math.cos(bar.azimuthRadians()), Math.sin(bar.azimuthRadians()), 0)
                        .times(bar.lengthMetres() / 2);
                bars.add(ends(new Vec(bar.x(), bar.y(), 0), half, setup, yard));
            }
            double ring = pan.support().ringRadiusMetres();
            if (ring > 0) {
                bars.add(ends(Vec.ZERO, new Vec(ring, 0, 0), setup, yard));
            }
        }
        return bars;
    }

    private static List<Place> ends(Vec middle, Vec half, Setup setup, YardPlace yard) {
        return List.of(
                yard.of(setup.target().toParent(middle.minus(half))),
                yard.of(setup.target().toParent(middle.plus(half))));
    }

    /** How far out along the axis the target reaches, about, m. */
    private static double top(Scenario scenario, Setup setup) {
        return setup.target().origin().z() + (scenario.target() instanceof Pan pan ? pan.heightMetres() : 0);
    }

    private static List<SideScene.Ray> rays(Scenario scenario, List<RayPath> paths, YardPlace yard) {
        double start = RAYS_FROM * scenario.dish().focalLengthMetres();
        double top = top(scenario, scenario.setup());
        double level = Math.max(start, top + 0.25 * start);
        List<SideScene.Ray> rays = new ArrayList<>();
        for (RayPath path : paths) {
            double back = (level - path.mirror().z()) / path.towardsSun().z();
            Place from = yard.of(path.mirror().plus(path.towardsSun().times(back)));
            boolean shaded = path.fate() == RayPath.Fate.SHADED;
            Place mirror = yard.of(shaded ? path.end() : path.mirror());
            rays.add(new SideScene.Ray(from, mirror, yard.of(path.end()), path.fate()));
        }
        return rays;
    }

    private static Optional<String> panTrouble(Scenario scenario, Place pan, Optional<String> refusal) {
        if (refusal.isPresent()) {
            return refusal;
        }
        String noun = TargetWords.of(scenario.target()).noun();
        return pan.heightMetres() > 0
                ? Optional.empty()
                : Optional.of("The " + noun + " would stand in the ground: raise it, or raise the tripod.");
    }

    private static Optional<String> dishTrouble(Scenario scenario, Place lowest, UnitSystem system) {
        FigureFormat figures = new FigureFormat(system);
        if (lowest.heightMetres() <= 0) {
            double least = scenario.heights().tripodHeightMetres() - lowest.heightMetres();
            return Optional.of("The dish would reach " + figures.length(Math.max(0.001, -lowest.heightMetres()), 2)
                    + " into the ground: it needs a tripod at least " + figures.length(least, 3) + " high.");
        }
        return Optional.empty();
    }
}
