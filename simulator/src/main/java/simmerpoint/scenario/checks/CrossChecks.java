package simmerpoint.scenario.checks;

import java.util.Optional;
import simmerpoint.dish.Curve;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.OwnSize;
import simmerpoint.dish.cut.Tiles;
import simmerpoint.dish.shape.ShapeError;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.keys.CutKeys;
import simmerpoint.scenario.keys.MirrorKeys;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.units.QuantityWriter;

/** What must hold between keys, as a builder would expect. Told with the line of the key that is easier to change. */
final class CrossChecks {
    private static final double LEAST_FOCAL_SHARE = 0.15;
    private static final String CURVE = "dish.surface.curve";
    private static final double MOST_PANELS = 2_000_000;
    private final ScenarioValues v;
    private final Problems problems;
    private final double diameter;
    private final double focalLength;
    private final double hub;
    private final CutKind kind;
    private final Cut cut;

    private CrossChecks(ScenarioValues values, Cut cut, Problems problems) {
        this.v = values;
        this.problems = problems;
        this.cut = cut;
        OwnSize size = DishSize.of(values, cut);
        this.diameter = size.diameterMetres();
        this.focalLength = size.focalLengthMetres();
        this.hub = values.number("dish.hub");
        this.kind = SurfaceValues.kind(values);
    }

    /** Checks all; {@code elevation} is where the sun stands, rad. */
    static void check(ScenarioValues values, double elevation, Problems problems) {
        Optional<Cut> cut = SurfaceValues.cut(values, problems);
        if (cut.isEmpty()) {
            return;
        }
        CrossChecks checks = new CrossChecks(values, cut.get(), problems);
        checks.applicable();
        if (cut.get().ownSize().isEmpty()) {
            checks.dish();
            checks.curve();
        }
        checks.gap();
        checks.measuredShape();
        checks.mask();
        RimValues.check(values, checks.kind, problems);
        ZoneValues.check(values, checks.kind, problems);
        checks.panels();
        checks.pan();
        checks.sun(elevation);
        checks.heights();
        checks.mirror();
        CookingChecks.check(values, problems);
    }

    /** A mirror that is no material of the catalogue. */
    private void mirror() {
        if (v.text(MirrorKeys.MATERIAL).equals(MirrorKeys.OWN_FIGURES)) {
            MirrorKeys.needed("mirror")
                    .filter(key -> !v.has(key.path()))
                    .forEach(key -> problems.add(v.line(MirrorKeys.MATERIAL), key.path(), MirrorKeys.why(key)));
        }
    }

    private void dish() {
        double share = focalLength / diameter;
        if (!(hub < diameter)) {
            tell(
                    "dish.hub",
                    typed("dish.hub") + " is not smaller than the dish, which is " + typed("dish.diameter") + " wide");
        }
        if (!(share >= LEAST_FOCAL_SHARE)) {
            tell(
                    "dish.focal-length",
                    typed("dish.focal-length") + " is too short for a dish " + typed("dish.diameter")
                            + " wide; it must be at least 0.15 times the diameter, here "
                            + QuantityWriter.length(LEAST_FOCAL_SHARE * diameter));
        }
    }

    /** Not in zones, each of which would have a chain of its own, and no circle steeper than a dish. */
    private void curve() {
        if (cut.curve() == Curve.PARABOLA) {
            return;
        }
        if (v.hasSection(ZoneKeys.SECTION)) {
            tell(CURVE, "the ribs of a dish with zones follow the parabola; leave curve out");
        } else if (diameter > 2 * cut.curve().largestRim(focalLength)) {
            tell(
                    CURVE,
                    "a circle of twice the focal length, " + QuantityWriter.length(2 * focalLength)
                            + ", is too steep at the rim of a dish " + QuantityWriter.length(diameter)
                            + " wide; at most "
                            + QuantityWriter.length(2 * cut.curve().largestRim(focalLength)) + " is allowed");
        }
    }

    private void applicable() {
        CutKeys.refusals(kind).forEach((path, why) -> {
            if (v.has(path) && v.number(path) != 0) {
                problems.add(v.line(path), path, why);
            }
        });
    }

    private void gap() {
        double gap = v.number("dish.gap");
        if (gap > 0 && kind.has(CutTrait.SEAMS) && !(gap < cut.gapLimit(diameter, hub))) {
            tell(
                    "dish.gap",
                    typed("dish.gap") + " leaves nothing of the panels; the narrowest side is "
                            + QuantityWriter.length(cut.gapLimit(diameter, hub)) + " long");
        }
    }

    /** Measured ribs hold what the whole dish is off. */
    private void measuredShape() {
        if (!v.has(AsBuiltDish.FILE)) {
            return;
        }
        for (ShapeError error : ShapeError.values()) {
            String path = CutKeys.SHAPE + error.key();
            if (!error.isBetweenRibs() && v.number(path) != 0) {
                tell(path, "the ribs were measured (" + AsBuiltDish.FILE + "), which holds it already; leave it out");
            }
        }
    }

    /** Something of the mirror must stay open. */
    private void mask() {
        String width = "dish.covered.width";
        if (!v.has(width)) {
            return;
        }
        double most = v.text("dish.covered.part").equals("rim") ? diameter / 2 : diameter;
        if (!(v.number(width) < most)) {
            tell(
                    width,
                    typed(width) + " leaves nothing of the mirror open; it must be below "
                            + QuantityWriter.length(most));
        }
    }

    private void panels() {
        if (!kind.has(CutTrait.SEAMS)) {
            return;
        }
        String key = CutKeys.path(kind.parameters().get(0));
        if (kind.takes(Tiles.TILE) && !(v.number(key) < diameter)) {
            tell(key, typed(key) + " is not smaller than the dish, which is " + typed("dish.diameter") + " wide");
        }
        refusePanels(key, cut.estimatedPanels(diameter, hub, v.number("dish.gap")));
    }

    private void refusePanels(String key, double count) {
        mostPanels(count).ifPresent(why -> tell(key, why));
    }

    /** What to tell of too many panels. */
    static Optional<String> mostPanels(double count) {
        return count <= MOST_PANELS
                ? Optional.empty()
                : Optional.of("this makes about " + Math.round(count) + " panels; at most 2000000 are traced");
    }

    private void pan() {
        boolean tooWide = !v.hasSection("plane") && !(v.number("pan.diameter") < diameter);
        if (tooWide) {
            String standard = v.has("pan.diameter") ? "" : " (the default)";
            boolean own = cut.ownSize().isPresent();
            tell(
                    v.has("pan.diameter") ? "pan.diameter" : own ? "dish.surface" : "dish.diameter",
                    "a pan " + typed("pan.diameter") + " wide" + standard + " is not smaller than the dish, which is "
                            + (own ? QuantityWriter.length(diameter) : typed("dish.diameter")) + " wide");
        }
    }

    /** Where it has drifted to, the sun must still shine. */
    private void sun(double elevation) {
        Vec sun = Direction.tiltedFromZ(v.number("aim.drift.up"), v.number("aim.drift.side"))
                .vec();
        if (!(sun.x() * Math.cos(elevation) + sun.z() * Math.sin(elevation) > 0)) {
            tell(
                    "aim.drift.up",
                    "the sun, " + QuantityWriter.degrees(elevation) + " high, would have drifted below the horizon");
        }
    }

    private void heights() {
        if (!(v.number("stand.lowest-pan") < v.number("stand.highest-pan"))) {
            tell(
                    v.has("stand.highest-pan") ? "stand.highest-pan" : "stand.lowest-pan",
                    "the highest pan, " + typed("stand.highest-pan") + ", must be above the lowest, "
                            + typed("stand.lowest-pan"));
        }
    }

    private String typed(String path) {
        return v.shown(path);
    }

    private void tell(String path, String text) {
        int line = v.line(path);
        problems.add(line > 0 ? line : v.line("dish"), path, text);
    }
}
