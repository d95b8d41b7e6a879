package simmerpoint.scenario.checks;

import java.util.List;
import java.util.Locale;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.Zone;
import simmerpoint.dish.built.BuildErrors;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.setup.Aim;
import simmerpoint.units.QuantityWriter;

/** What can only be told once the scenario is made: whether mesh and tiles fit the dish, whether its errors can be traced. */
final class BuiltScenarioChecks {
    private static final String UNIT = "dish.surface.unit";
    private static final String TILE = "dish.surface.tile";
    private static final String WORKMANSHIP = "workmanship";
    private static final double MESH_SLACK = 1.01;
    private static final double LEAST_MESH = 0.5;
    private static final double MOST_RADIANS = 0.2;

    /** The last dish whose tiles fit, so that changes of other keys do not lay out thousands of tiles again. */
    private static volatile DishPlan lastLaidOut;

    private final Scenario scenario;
    private final DishPlan dish;
    private final ScenarioValues v;
    private final Problems problems;

    private BuiltScenarioChecks(Scenario scenario, ScenarioValues values, Problems problems) {
        this.scenario = scenario;
        this.dish = scenario.dish();
        this.v = values;
        this.problems = problems;
    }

    static void check(Scenario scenario, ScenarioValues values, Problems problems) {
        BuiltScenarioChecks checks = new BuiltScenarioChecks(scenario, values, problems);
        checks.place();
        checks.mesh();
        checks.tiles();
        checks.errors();
    }

    /** The pan's middle must stand on the focus' side of the mirror. */
    private void place() {
        Vec pan = scenario.withAim(Aim.PERFECT).setup().target().origin();
        boolean overDish = dish.aperture().contains(pan.x(), pan.y());
        if (!(pan.z() > (overDish ? dish.onMirror(pan.x(), pan.y()).z() : 0))) {
            String path = "stand.pull-back";
            tell(path, "the moves together put the pan's middle into or behind the mirror");
        }
    }

    /** A wrong unit of a mesh shows in its size; one that lies beside the axis has a size of its own, too. */
    private void mesh() {
        if (dish.cut().has(CutTrait.PARABOLOID)) {
            return;
        }
        double off = Math.hypot(dish.aperture().x(), dish.aperture().y());
        double reach = off > 0 ? dish.aperture().radius() : dish.cut().reachMetres(dish);
        double parent = dish.cut().reachMetres(dish);
        if (!fits(reach) && !fits(parent)) {
            tell(
                    UNIT,
                    "with numbers in " + v.text(UNIT) + " the mesh reaches " + QuantityWriter.length(reach)
                            + " from the axis, but half of dish.diameter is "
                            + QuantityWriter.length(dish.radiusMetres()) + "; check unit and diameter");
        }
    }

    private boolean fits(double reach) {
        return reach <= dish.radiusMetres() * MESH_SLACK && reach >= dish.radiusMetres() * LEAST_MESH;
    }

    /** Whether any whole tile fits: only laying them out tells. */
    private void tiles() {
        if (dish.equals(lastLaidOut)) {
            return;
        }
        if (!dish.cut().zones().isEmpty()) {
            zones();
            return;
        }
        if (!v.has(TILE)) {
            return;
        }
        if (dish.cut().fits(dish)) {
            lastLaidOut = dish;
        } else {
            String where = dish.hubMetres() > 0
                    ? "between the hub, " + v.shown("dish.hub") + " wide, and the rim of the dish, "
                    : "into the dish, ";
            tell(
                    TILE,
                    "no whole tile of " + v.shown(TILE) + " fits " + where + v.shown("dish.diameter")
                            + " wide; a tile must be smaller");
        }
    }

    private void zones() {
        List<Zone> bare = dish.cut().zones().stream()
                .filter(zone -> !zone.plan().cut().fits(zone.plan()))
                .toList();
        bare.forEach(zone -> tell(
                ZoneKeys.section(zone.name()),
                "no whole panel fits into this zone; make its panels smaller or the zone wider"));
        if (bare.isEmpty()) {
            lastLaidOut = dish;
        }
    }

    private void errors() {
        BuildErrors errors = scenario.workmanship();
        double tilt = Math.hypot(scenario.mirror().panelTiltRadians(), errors.tilt());
        double slope = Math.hypot(scenario.mirror().slopeErrorRadians(), errors.slope());
        if (!(Math.max(tilt, slope) <= MOST_RADIANS)) {
            tell(
                    WORKMANSHIP,
                    String.format(
                            Locale.ROOT,
                            "these tolerances make a slope error of %.0f mrad and tilt the panels by %.0f mrad; beyond 200"
                                    + " mrad it is no longer a mirror",
                            1000 * slope,
                            1000 * tilt));
        }
    }

    private void tell(String path, String text) {
        problems.add(v.line(path), path, text);
    }
}
