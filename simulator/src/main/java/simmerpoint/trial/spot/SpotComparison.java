package simmerpoint.trial.spot;

/**
 * A photograph beside the traced light, both about their centroids and no farther than the photograph reaches.
 *
 * @param measured the photograph's light in cells; it adds up to 1
 * @param traced that of the fitted dish in the same cells
 * @param planned figures of the dish as it was meant
 * @param fitted figures of the fitted dish
 * @param elsewhere share of the measured light that lies elsewhere than that of the fitted dish
 * @param elsewherePlanned the same beside the dish as it was meant
 */
public record SpotComparison(
        SpotMap measured,
        SpotMap traced,
        SpotProfile planned,
        SpotProfile fitted,
        double elsewhere,
        double elsewherePlanned) {
    /** Cells each way. */
    private static final int CELLS = 40;

    /** How far the cells reach, in radii that hold nine tenths. */
    private static final double ROOM = 1.4;

    /** Of a photograph and two traced maps. */
    static SpotComparison of(SpotPhoto photo, SpotMap planned, SpotMap fitted) {
        SpotProfile meant = planned.withoutFaint().profile(photo.reach());
        SpotProfile found = fitted.withoutFaint().profile(photo.reach());
        double widest = Math.max(photo.profile().radius90(), Math.max(meant.radius90(), found.radius90()));
        double side = 2 * Math.min(photo.reach(), ROOM * widest);
        SpotMap measured =
                photo.map().about(photo.profile().x(), photo.profile().y(), CELLS, side);
        SpotMap traced = fitted.withoutFaint().about(found.x(), found.y(), CELLS, side);
        SpotMap asMeant = planned.withoutFaint().about(meant.x(), meant.y(), CELLS, side);
        return new SpotComparison(
                measured, traced, meant, found, measured.elsewhere(traced), measured.elsewhere(asMeant));
    }
}
