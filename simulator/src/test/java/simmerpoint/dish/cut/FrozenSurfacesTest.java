package simmerpoint.dish.cut;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.FlatPanel;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.frozen.FrozenNumbers;
import simmerpoint.frozen.NumberDigest;
import simmerpoint.frozen.OddScenes;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;

/** Surfaces, outlines and flat panels of every cut are what they were; {@code SurfaceTest} and its neighbours hold that they are right. */
class FrozenSurfacesTest {
    private static final int POINTS = 500;

    static Stream<Map.Entry<String, Scenario>> scenes() {
        return OddScenes.all().entrySet().stream();
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void areAsTheyWere(Map.Entry<String, Scenario> scene) {
        DishPlan plan = scene.getValue().dish();
        NumberDigest digest = new NumberDigest();
        surface(digest, "surface", plan.surface(Direction.Z));
        surface(digest, "slanted", plan.surface(Direction.of(new Vec(0.2, -0.1, 1))));
        if (!(plan.cut() instanceof FromFile)) {
            DishPlan perfect = plan.withCut(new Perfected(plan.cut(), true, true));
            surface(digest, "perfected", perfect.surface(Direction.Z));
        }
        List<PanelOutline> outlines = plan.outlines();
        digest.add("outlines", outlines.size());
        for (int k = 0; k < outlines.size(); k += Math.max(1, outlines.size() / 5)) {
            digest.add("outline" + k, outlines.get(k));
        }
        List<FlatPanel> flat = plan.cut().flatPanels(plan);
        for (int k = 0; k < flat.size(); k += Math.max(1, flat.size() / 5)) {
            digest.add("flat" + k, flat.get(k));
        }
        digest.add("largest", plan.largestPanel())
                .add("reach", plan.cut().reachMetres(plan))
                .add("gapLimit", plan.cut().gapLimit(plan.diameterMetres(), plan.hubMetres()))
                .add("estimated", plan.cut().estimatedPanels(plan.diameterMetres(), plan.hubMetres(), plan.gapMetres()))
                .add("ribs", plan.cut().ribs(plan))
                .add("fits", plan.cut().fits(plan));
        FrozenNumbers.check("surface-" + scene.getKey(), digest);
    }

    private static void surface(NumberDigest digest, String name, MirrorSurface surface) {
        digest.add(name + ".outline", surface.outlineArea())
                .add(name + ".aperture", surface.apertureArea())
                .add(name + ".panels", surface.panels())
                .add(name + ".steepest", surface.steepestSlope())
                .add(name + ".radius", surface.radius())
                .add(name + ".blocking", surface.blockingPanels().isPresent());
        SplittableRandom random = new SplittableRandom(8);
        double[] u = random.doubles(POINTS).sorted().toArray();
        double[] v = random.doubles(POINTS).toArray();
        MirrorPoints points = new MirrorPoints(POINTS);
        surface.fill(u, v, POINTS, points);
        digest.add(name + ".x", points.x).add(name + ".y", points.y).add(name + ".z", points.z);
        digest.add(name + ".nx", points.nx).add(name + ".ny", points.ny).add(name + ".nz", points.nz);
        digest.add(name + ".area", points.area).add(name + ".panel", points.panel);
        double[] heights = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            heights[i] = surface.heightAt(points.x[i], points.y[i]);
        }
        digest.add(name + ".heights", heights);
    }
}
