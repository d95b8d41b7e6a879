package simmerpoint.viewer.editing;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.Clipped;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.Tiles;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.units.UnitSystem;

/** Usual ways in which a dish is made of zones. */
final class ZoneStarts {
    /** Where an outer zone usually begins, as a share of the way from hub to rim. */
    private static final double BORDER = 0.7;

    private static final String FOIL = "kitchen foil on card";
    private static final String MATERIAL = "mirror.material";

    private final DishPlan dish;
    private final UnitSystem units;

    private ZoneStarts(DishPlan dish, UnitSystem units) {
        this.dish = dish;
        this.units = units;
    }

    static List<Start> of(Scenario scenario, UnitSystem units) {
        ZoneStarts starts = new ZoneStarts(scenario.dish(), units);
        return List.of(
                Start.of("one", "the same all over").instead(List.of(ZoneKeys.SECTION)),
                starts.outside(),
                starts.patches(),
                start("below", "another mirror below")
                        .instead(List.of(ZoneKeys.SECTION, "dish.rim.half"))
                        .and(key("upper", "from-angle"), "-90°")
                        .and(key("upper", "to-angle"), "90°")
                        .and(key("lower", "from-angle"), "90°")
                        .and(key("lower", "to-angle"), "270°")
                        .and(key("lower", MATERIAL), FOIL));
    }

    private static Start start(String id, String words) {
        return Start.of(id, words).instead(List.of(ZoneKeys.SECTION)).asZones();
    }

    private static String key(String zone, String rest) {
        return ZoneKeys.section(zone) + "." + rest;
    }

    /** Flat rings are shared out between the two zones, so that there are as many as before. */
    private Start outside() {
        Start start = start("outside", "another mirror outside");
        Cut cut = dish.cut() instanceof Clipped clipped ? clipped.panels() : dish.cut();
        if (cut instanceof FlatRings rings && rings.rings() > 1) {
            int inside = (int) Math.max(1, Math.min(rings.rings() - 1, Math.round(BORDER * rings.rings())));
            return borders(start, (double) inside / rings.rings(), "rim")
                    .and(key("middle", "surface.cut"), "flat-rings")
                    .and(key("middle", "surface.sectors"), "" + rings.sectors())
                    .and(key("middle", "surface.rings"), "" + inside)
                    .and(key("rim", "surface.cut"), "flat-rings")
                    .and(key("rim", "surface.sectors"), "" + rings.sectors())
                    .and(key("rim", "surface.rings"), "" + (rings.rings() - inside))
                    .and(key("rim", MATERIAL), FOIL);
        }
        Start halved = borders(start, BORDER, "rim").and(key("rim", MATERIAL), FOIL);
        // Whole tiles would leave a bare ring on both sides of the border.
        return cut instanceof Tiles ? halved.and("dish.surface.at-rim", "cut") : halved;
    }

    private Start patches() {
        return borders(start("patches", "patches round the rim"), BORDER, "patches")
                .and(key("patches", "surface.cut"), "square-tiles")
                .and(key("patches", "surface.tile"), units == UnitSystem.INCH ? "2 in" : "5 cm")
                .and(key("patches", "surface.at-rim"), "cut")
                .and(key("patches", "mirror.slope-error"), "8 mrad")
                .and(key("patches", "mirror.panel-tilt"), "12 mrad");
    }

    /** A middle and an outer zone that begins so far from hub to rim, over the edge of the middle. */
    private Start borders(Start start, double border, String outer) {
        return start.and(key("middle", "outer-diameter"), diameter(border))
                .and(key(outer, "inner-diameter"), diameter(border));
    }

    private String diameter(double share) {
        return Start.written(dish.hubMetres() + share * (dish.diameterMetres() - dish.hubMetres()), units);
    }

    /** The keys of a zone that are asked for: where it lies, how it is cut and what covers it. */
    static List<String> asked(String zone) {
        boolean half = zone.equals("upper") || zone.equals("lower");
        List<String> paths = new ArrayList<>();
        List.of(half ? "from-angle" : "inner-diameter", half ? "to-angle" : "outer-diameter", "surface.cut", MATERIAL)
                .forEach(rest -> paths.add(key(zone, rest)));
        return paths;
    }
}
