package simmerpoint.scenario.checks;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import simmerpoint.dish.Curve;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.Zone;
import simmerpoint.dish.cut.Clipped;
import simmerpoint.dish.cut.Cuts;
import simmerpoint.dish.cut.PlanRegion;
import simmerpoint.dish.cut.Zoned;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.keys.MirrorKeys;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.scenario.values.ScenarioValues;

/** The values of {@code dish.zones}: the cut of a dish that is made of several, and whether they go together. */
final class ZoneValues {
    private static final String CUT = "surface.cut";

    private final ScenarioValues v;
    private final Problems problems;
    private final String name;

    private ZoneValues(ScenarioValues values, Problems problems, String zone) {
        v = values;
        this.problems = problems;
        name = zone;
    }

    private static Stream<ZoneValues> zones(ScenarioValues values, Problems problems) {
        return ZoneKeys.NAMES.stream()
                .filter(zone -> values.hasSection(ZoneKeys.section(zone)))
                .map(zone -> new ZoneValues(values, problems, zone));
    }

    /** The cut of the dish: that of its surface, or its zones, within its rim. */
    static Cut cut(Cut whole, ScenarioValues values, Problems problems) {
        List<Zone> zones = zones(values, problems).map(zone -> zone.zone(whole)).toList();
        return zones.isEmpty() ? RimValues.clipped(whole, values) : new Zoned(zones);
    }

    /** Tells what does not go together. */
    static void check(ScenarioValues values, CutKind kind, Problems problems) {
        if (!values.hasSection(ZoneKeys.SECTION)) {
            return;
        }
        if (!ZoneKeys.isZone(kind)) {
            problems.add(
                    values.line(ZoneKeys.SECTION),
                    ZoneKeys.SECTION,
                    "a dish cut as " + kind.word() + " is not made of zones; leave zones out, or take another cut");
            return;
        }
        zones(values, problems).forEach(zone -> zone.check(kind));
    }

    private String key(String rest) {
        return ZoneKeys.section(name) + "." + rest;
    }

    private double inner() {
        return v.number(key("inner-diameter"), v.number("dish.hub"));
    }

    private double outer() {
        return v.number(key("outer-diameter"), v.number("dish.diameter"));
    }

    private double gap(CutKind kind) {
        return kind.has(CutTrait.SEAMS) ? v.number(key("gap"), v.number("dish.gap")) : 0;
    }

    private boolean ownSurface() {
        return v.has(key(CUT));
    }

    private CutKind kind(CutKind dish) {
        return ownSurface() ? Cuts.find(v.text(key(CUT))).orElseThrow() : dish;
    }

    private Cut own(Cut whole) {
        return ownSurface() ? kind(whole.kind()).maker().apply(new SurfaceValues(v, problems, key("surface"))) : whole;
    }

    private Zone zone(Cut whole) {
        Cut own = own(whole);
        DishPlan plan = new DishPlan(
                outer(),
                v.number("dish.focal-length"),
                inner(),
                gap(own.kind()),
                Clipped.of(RimValues.clipped(own, v), part()));
        return new Zone(name, plan, mirror());
    }

    private PlanRegion part() {
        double from = v.number(key("from-angle"));
        double to = v.number(key("to-angle"));
        return PlanRegion.circle(outer() / 2).between(from, to > from ? to : to + 2 * Math.PI);
    }

    private Optional<Mirror> mirror() {
        return v.hasSection(key("mirror"))
                ? Optional.of(MirrorValues.ofZone(v, key("mirror"), MirrorValues.ofDish(v)))
                : Optional.empty();
    }

    private void check(CutKind dish) {
        diameters();
        angles();
        CutKind kind = kind(dish);
        if (ownSurface()) {
            cut(kind);
        }
        if (v.has(key("gap")) && v.number(key("gap")) > 0 && !kind.has(CutTrait.SEAMS)) {
            tell("gap", "a smooth zone has no panels with gaps between them; leave gap out");
        }
        if (!ownSurface() && inner() < outer() && !(gap(kind) < outer() / 2)) {
            tell("gap", shown("gap", "dish.gap") + " leaves nothing of the panels of this zone");
        }
        figures();
    }

    private void angles() {
        boolean both = v.has(key("from-angle")) && v.has(key("to-angle"));
        if (both && v.number(key("from-angle")) == v.number(key("to-angle"))) {
            tell("to-angle", "a zone from " + shown("from-angle") + " to " + shown("to-angle") + " has no width");
        }
    }

    private void diameters() {
        String wrong = outer() > v.number("dish.diameter") ? "outer-diameter" : "inner-diameter";
        if (outer() > v.number("dish.diameter")) {
            tell(wrong, shown(wrong) + " is more than the dish has, which is " + v.shown("dish.diameter") + " wide");
        } else if (!(inner() < outer())) {
            tell(
                    v.has(key("inner-diameter")) ? "inner-diameter" : "outer-diameter",
                    "a zone from " + (v.has(key("inner-diameter")) ? "" : "the hub, ")
                            + shown("inner-diameter", "dish.hub") + (v.has(key("inner-diameter")) ? "" : ",") + " to "
                            + shown("outer-diameter", "dish.diameter") + " has no width");
        }
    }

    private void cut(CutKind kind) {
        Cut own = kind.maker().apply(new SurfaceValues(v, problems, key("surface")));
        if (inner() < outer()
                && gap(kind) > 0
                && !(gap(kind) < Math.min(outer() / 2, own.gapLimit(outer(), inner())))) {
            tell("gap", shown("gap", "dish.gap") + " leaves nothing of the panels of this zone");
        }
        if (own.curve() != Curve.PARABOLA) {
            tell("surface.curve", "zones follow the parabola; leave curve out");
        }
        CrossChecks.mostPanels(own.estimatedPanels(outer(), inner(), gap(kind))).ifPresent(why -> tell(CUT, why));
    }

    private void figures() {
        String material = key("mirror.material");
        if (v.has(material) && v.text(material).equals(MirrorKeys.OWN_FIGURES)) {
            MirrorKeys.needed(key("mirror"))
                    .filter(key -> !v.has(key.path()))
                    .forEach(key -> problems.add(v.line(material), key.path(), MirrorKeys.why(key)));
        }
    }

    private String shown(String rest) {
        return v.shown(key(rest));
    }

    private String shown(String rest, String ofDish) {
        return v.has(key(rest)) ? shown(rest) : v.shown(ofDish);
    }

    private void tell(String rest, String why) {
        problems.add(v.line(key(rest)), key(rest), why);
    }
}
