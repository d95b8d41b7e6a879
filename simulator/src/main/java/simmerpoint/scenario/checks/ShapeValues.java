package simmerpoint.scenario.checks;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.RibLayout;
import simmerpoint.dish.shape.ShapeError;
import simmerpoint.dish.shape.ShapeErrors;
import simmerpoint.dish.sheet.FilmBulge;
import simmerpoint.dish.sheet.SheetMaterial;
import simmerpoint.dish.sheet.SheetSag;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.keys.CutKeys;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.units.QuantityWriter;

/**
 * How the shape of a dish differs from its plan, as a scenario says.
 *
 * @param v its values
 * @param dish its plan
 * @param problems where what is wrong is told
 */
record ShapeValues(ScenarioValues v, DishPlan dish, Problems problems) {
    private static final String BY_WEIGHT = CutKeys.SHAPE + "sheet-weight";
    private static final String TENSION = CutKeys.SHAPE + "film-tension";
    private static final String PRESSURE = CutKeys.SHAPE + "film-pressure";

    /** Farther than any key allows, m. */
    private static final double MOST_BULGE = 0.05;

    private static final String MATERIAL = "build.panel-material";

    ShapeErrors read() {
        Map<ShapeError, Double> metres = new EnumMap<>(ShapeError.class);
        for (ShapeError error : ShapeError.values()) {
            metres.put(error, v.number(CutKeys.SHAPE + error.key()));
        }
        metres.merge(ShapeError.SHEET_BULGE, film(), Double::sum);
        ShapeErrors measured = new ShapeErrors(metres);
        return v.isOn(BY_WEIGHT)
                ? measured.with(ShapeError.SHEET_SAG, measured.of(ShapeError.SHEET_SAG) + byWeight())
                : measured;
    }

    /** What film without a backing stands out by between two ribs at the rim, m. */
    private double film() {
        double tension = v.number(TENSION);
        double pressure = v.number(PRESSURE);
        if (tension == 0) {
            return pressure == 0
                    ? 0
                    : told(PRESSURE, "how tightly is the film stretched? Give shape.film-tension as well");
        }
        Optional<RibLayout> ribs = dish.cut().ribs(dish);
        if (ribs.isEmpty() || !ribs.get().curved()) {
            return told(TENSION, "film without a backing lies on bent ribs: take cut: bent-strips, or leave it out");
        }
        if (ribs.get().sectors() < FilmBulge.FEWEST_RIBS) {
            return told(
                    TENSION,
                    "between so few ribs no film lies steady; " + FilmBulge.FEWEST_RIBS + " or more are allowed");
        }
        double bulge = FilmBulge.betweenRibs(
                pressure,
                tension,
                dish.focalLengthMetres(),
                dish.radiusMetres(),
                ribs.get().sectors());
        return Math.abs(bulge) <= MOST_BULGE
                ? bulge
                : told(
                        PRESSURE,
                        v.shown(PRESSURE) + " bends film so far, " + QuantityWriter.length(bulge)
                                + ", that it is stretched by it; take a higher shape.film-tension");
    }

    /** What flat panels hang down by between two ribs at the rim, m. */
    private double byWeight() {
        Optional<RibLayout> ribs = dish.cut().ribs(dish);
        if (ribs.isEmpty() || ribs.get().curved()) {
            return told(
                    BY_WEIGHT,
                    ribs.isEmpty()
                            ? "this dish has no ribs; leave it out"
                            : "strips are stiffened by their bend; measure them and give shape.sheet-sag");
        }
        SheetMaterial sheet = SheetMaterial.named(v.text(MATERIAL));
        if (!(sheet.modulus() > 0)) {
            return told(MATERIAL, "the stiffness of " + sheet.name() + " is not known; give shape.sheet-sag instead");
        }
        double span = 2 * dish.radiusMetres() * Math.sin(Math.PI / ribs.get().sectors());
        return SheetSag.betweenRibs(sheet, v.number("build.panel-thickness"), span)
                .depth();
    }

    private double told(String path, String text) {
        problems.add(v.line(path), path, text);
        return 0;
    }
}
