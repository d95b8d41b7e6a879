package simmerpoint.heat.plate;

/** What lies in the pan on its bottom. */
public sealed interface SheetContents {
    /** Nothing but a film of oil, with the lid off. */
    record Dry() implements SheetContents {}

    /**
     * Water that moves, up to a line on the wall.
     *
     * @param celsius of the water
     * @param lineMetres its height
     */
    record Water(double celsius, double lineMetres) implements SheetContents {}

    /**
     * Oil for deep frying, up to a line on the wall.
     *
     * @param celsius of the oil
     * @param lineMetres its height
     */
    record Oil(double celsius, double lineMetres) implements SheetContents {}

    /**
     * Food that lies still on the bottom, under water or food of one temperature: it only conducts.
     *
     * @param celsius above the layer
     * @param lineMetres height up to which the wall is wet
     * @param resistance of the layer, m² K/W
     */
    record Still(double celsius, double lineMetres, double resistance) implements SheetContents {}
}
