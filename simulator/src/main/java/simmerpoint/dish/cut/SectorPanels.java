package simmerpoint.dish.cut;

import java.util.Optional;
import java.util.function.DoubleFunction;
import simmerpoint.dish.CutParameter;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.PanelSize;
import simmerpoint.units.RangeCheck;

/** What cuts into sectors have in common. */
final class SectorPanels {
    static final CutParameter SECTORS =
            CutParameter.count("sectors", "24", "3 to 10000", "6 to 64", "Number of sectors or strips round the dish.");

    private SectorPanels() {}

    static void check(int sectors) {
        RangeCheck.require(sectors >= 3, "sectors", sectors, "3 or more");
    }

    /** Length of a sector's edge at the rim, m. */
    static double edge(double diameter, int sectors) {
        return diameter * Math.sin(Math.PI / sectors);
    }

    /** Size of a panel at the rim that is {@code along} m long. */
    static Optional<PanelSize> size(DishPlan plan, int sectors, double along) {
        double edge = edge(plan.diameterMetres(), sectors) - plan.gapMetres();
        return Optional.of(new PanelSize(Math.max(0, edge), Math.max(0, along)));
    }

    /** End of a description. */
    static String atRim(Optional<PanelSize> size, DoubleFunction<String> length) {
        return size.map(s -> ", at the rim " + length.apply(s.rimMetres()) + " wide and " + length.apply(s.ribMetres())
                        + " along the rib")
                .orElse("");
    }
}
