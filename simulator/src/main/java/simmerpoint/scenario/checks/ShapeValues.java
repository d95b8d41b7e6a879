package simmerpoint.scenario.checks;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.RibLayout;
import simmerpoint.dish.shape.ShapeError;
import simmerpoint.dish.shape.ShapeErrors;
import simmerpoint.dish.sheet.SheetMaterial;
import simmerpoint.dish.sheet.SheetSag;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.keys.CutKeys;
import simmerpoint.scenario.values.ScenarioValues;

/**
 * How the shape of a dish differs from its plan, as a scenario says.
 *
 * @param v its values
 * @param dish its plan
 * @param problems where what is wrong is told
 */
record ShapeValues(ScenarioValues v, DishPlan dish, Problems problems) {
    private static final String BY_WEIGHT = CutKeys.SHAPE + "sheet-weight";
    private static final String MATERIAL = "build.panel-material";

    ShapeErrors read() {
        Map<ShapeError, Double> metres = new EnumMap<>(ShapeError.class);
        for (ShapeError error : ShapeError.values()) {
            metres.put(error, v.number(CutKeys.SHAPE + error.key()));
        }
        ShapeErrors measured = new ShapeErrors(metres);
        return v.isOn(BY_WEIGHT)
                ? measured.with(ShapeError.SHEET_SAG, measured.of(ShapeError.SHEET_SAG) + byWeight())
                : measured;
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
