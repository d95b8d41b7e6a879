package simmerpoint.scenario.checks;

import java.util.Optional;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.OwnSize;
import simmerpoint.dish.built.BuildErrors;
import simmerpoint.dish.built.Mask;
import simmerpoint.dish.built.Workmanship;
import simmerpoint.pan.Plane;
import simmerpoint.pan.Target;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.GroundHeights;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.sun.CircumsolarSun;
import simmerpoint.sun.GaussianSun;
import simmerpoint.sun.LimbDarkenedSun;
import simmerpoint.sun.MeasuredSun;
import simmerpoint.sun.SunShape;
import simmerpoint.sun.Sunlight;
import simmerpoint.sun.UniformDiscSun;

/** Makes the SI values of a scenario out of checked keys, and reads the files they name. */
final class ScenarioBuilder {
    private final ScenarioValues v;
    private final SunConditions light;
    private final Problems problems;

    ScenarioBuilder(ScenarioValues values, SunConditions light, Problems problems) {
        this.v = values;
        this.light = light;
        this.problems = problems;
    }

    Scenario build() throws ScenarioException {
        Cut whole = SurfaceValues.cut(v, problems).orElse(null);
        SunShape shape = sunShape();
        problems.throwIfAny();
        OwnSize size = DishSize.of(v, whole);
        DishPlan planned = new DishPlan(
                size.diameterMetres(),
                size.focalLengthMetres(),
                v.number("dish.hub"),
                v.number("dish.gap"),
                ZoneValues.cut(whole, v, problems));
        DishPlan dish = AsBuiltDish.of(planned, v, problems);
        problems.throwIfAny();
        Sunlight sun = new Sunlight(light.elevationRadians(), light.beamWattsPerSquareMetre(), shape);
        Optional<CookingSetup> cooking = isPlane() ? Optional.empty() : Optional.of(CookingBuilder.cooking(v));
        return new Scenario(
                v.text("title"),
                dish,
                MirrorValues.ofDish(v),
                sun,
                aim(),
                target(),
                stand(),
                cooking,
                light.site(),
                heights(),
                BuildErrors.of(workmanship(), dish),
                mask(),
                new ShapeValues(v, dish, problems).read());
    }

    /** A shape may know a narrower range than its key; what it then says is for the user. */
    private SunShape sunShape() {
        try {
            return sunShapeOfKind();
        } catch (IllegalArgumentException e) {
            problems.add(v.line("sun.shape"), "sun.shape", e.getMessage());
            return null;
        }
    }

    private SunShape sunShapeOfKind() {
        return switch (v.text("sun.shape.kind")) {
            case "limb-darkened" -> new LimbDarkenedSun(v.number("sun.shape.half-angle"));
            case "gaussian" -> new GaussianSun(v.number("sun.shape.sigma"));
            case "circumsolar" -> new CircumsolarSun(v.number("sun.shape.ratio"));
            case "table" -> sunTable();
            default -> new UniformDiscSun(v.number("sun.shape.half-angle"));
        };
    }

    private SunShape sunTable() {
        return NamedFile.read(v, "sun.shape.file", problems, MeasuredSun::read).orElse(null);
    }

    private Workmanship workmanship() {
        return new Workmanship(
                v.number("workmanship.rib-cut"),
                v.number("workmanship.rib-set"),
                v.number("workmanship.panel-edge"),
                v.number("workmanship.sag"),
                v.number("workmanship.bubble-height"),
                v.number("workmanship.bubble-width"),
                v.number("workmanship.bubbled"));
    }

    private Mask mask() {
        Mask.Part part = Mask.Part.of(v.text("dish.covered.part")).orElseThrow();
        return new Mask(part, part.hasWidth() ? v.number("dish.covered.width") : 0);
    }

    private Aim aim() {
        boolean byDish = v.text("aim.pan-carried-by").equals("dish");
        return new Aim(
                v.number("aim.turn.up"),
                v.number("aim.turn.side"),
                v.number("aim.drift.up"),
                v.number("aim.drift.side"),
                v.number("aim.jitter"),
                v.number("aim.mount"),
                byDish ? Aim.PanCarrier.DISH : Aim.PanCarrier.STAND);
    }

    private Target target() {
        return isPlane() ? new Plane(v.number("plane.disc"), v.number("plane.lean")) : CookingBuilder.pan(v);
    }

    private boolean isPlane() {
        return v.hasSection("plane");
    }

    private GroundHeights heights() {
        return new GroundHeights(
                v.number("stand.tripod-height"), v.number("stand.lowest-pan"), v.number("stand.highest-pan"));
    }

    private Stand stand() {
        return new Stand(
                v.number("stand.pull-back"), v.number("stand.slide"), v.number("stand.raise"), v.number("stand.side"));
    }
}
