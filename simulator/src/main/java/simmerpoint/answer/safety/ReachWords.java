package simmerpoint.answer.safety;

import java.util.List;
import java.util.Optional;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.safety.CookerLight;
import simmerpoint.safety.SafetyResult;
import simmerpoint.safety.YardRisks;
import simmerpoint.safety.field.Reach;
import simmerpoint.safety.field.Way;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.sampling.Estimate;
import simmerpoint.units.UnitSystem;

/**
 * How far light reaches, in words and tables. Distances are rounded up, never down.
 *
 * @param result what was found
 * @param hazards to tell of
 * @param system units
 */
record ReachWords(SafetyResult result, List<Hazard> hazards, UnitSystem system) {
    private static final double COARSE_METRES = 0.05;
    private static final String NOWHERE = "\u2013";

    /** "135 cm" or "54 in": up to whole 5 cm in any units, and these up to whole ones, so that one place is always as far. */
    static String away(double metres, UnitSystem system) {
        double up = Math.ceil(metres / COARSE_METRES - 1e-6) * COARSE_METRES;
        return FigureFormat.fixed(Math.ceil(up / system.shortUnitMetres() - 1e-6), 0)
                + FigureFormat.NBSP
                + system.shortUnit();
    }

    /** "132 cm": the nearest whole unit. */
    static String whole(double metres, UnitSystem system) {
        return FigureFormat.fixed(metres / system.shortUnitMetres(), 0) + FigureFormat.NBSP + system.shortUnit();
    }

    String away(double metres) {
        return away(metres, system);
    }

    /** Whole units, rounded up, two standard errors added. */
    private String cell(Optional<Estimate> distance) {
        return distance.map(d -> FigureFormat.fixed(
                        Math.ceil((d.value() + 2 * d.standardError()) / system.shortUnitMetres() - 1e-6), 0))
                .orElse(NOWHERE);
    }

    /** Hazards that light of this cooker comes to at all, with the pan taken away. */
    List<Reach> reached() {
        return result.taken().reaches().stream()
                .filter(reach ->
                        hazards.contains(reach.hazard()) && !reach.ways().isEmpty())
                .toList();
    }

    /** The farthest distances, pan in place and taken away, in this sun and in the strongest. */
    Item shortTable() {
        Columns<Reach> columns = columns()
                .with("pan in\nplace, " + system.shortUnit(), reach -> farthest(result.standing(), reach))
                .with("pan taken\naway, " + system.shortUnit(), reach -> farthest(result.taken(), reach));
        return (result.light().strongest().isPresent()
                        ? columns.with("in strongest\nsun, " + system.shortUnit(), this::inStrongestSun)
                        : columns)
                .table(reached());
    }

    private String inStrongestSun(Reach reach) {
        return farthest(result.light().inStrongestSun().taken(), reach);
    }

    /** Which sun the short table is for. */
    Optional<String> suns() {
        return result.light()
                .strongest()
                .map(bright -> "Both columns before the last are for this sun of " + beam(result.light())
                        + "; the distances to keep, and the sheet, go by the strongest, " + beam(bright) + ".");
    }

    private static String beam(CookerLight light) {
        return FigureFormat.rounded(light.scenario().sun().beamWattsPerSquareMetre(), 3) + "\u00a0W/m\u00b2";
    }

    private String farthest(YardRisks risks, Reach reach) {
        return cell(risks.farthest(reach.hazard()));
    }

    private static Columns<Reach> columns() {
        return Columns.<Reach>none()
                .with("up to this far from the focus", reach -> ShortAnswer.capital(brief(reach.hazard())))
                .with(
                        "from\nkW/m\u00b2",
                        reach -> FigureFormat.rounded(reach.hazard().wattsPerSquareMetre() / 1000, 2));
    }

    /** A few words for a table. */
    private static String brief(Hazard hazard) {
        return switch (hazard) {
            case DISCOMFORT -> "skin gets too hot";
            case PAIN -> "skin hurts in half a minute";
            case SMOULDER -> "wood left for long smoulders";
            case TINDER -> "dry leaves burn in half a minute";
            case CHAR -> "leaves burn in 10 s, wood chars";
            case FLASH -> "leaves burn in 2 s";
            case BURST -> "plywood burns in 2 s";
        };
    }

    /** Every way, for one of both. */
    Item table(YardRisks risks) {
        return Columns.<Reach>none()
                .with("from the focus, " + system.shortUnit(), reach -> ReachWords.shortest(reach.hazard()))
                .with("axis", reach -> cell(at(risks, reach, Way.AXIS)))
                .with("rim", reach -> cell(at(risks, reach, Way.RIM)))
                .with("side", reach -> cell(at(risks, reach, Way.SIDE)))
                .with("dish", reach -> cell(at(risks, reach, Way.DISH)))
                .with("level", reach -> cell(risks.reach(reach.hazard()).level()))
                .with("above\nground", reach -> cell(risks.reach(reach.hazard()).height()))
                .table(reached());
    }

    private static String shortest(Hazard hazard) {
        return switch (hazard) {
            case DISCOMFORT -> "skin too hot";
            case PAIN -> "skin hurts, 30\u00a0s";
            case SMOULDER -> "wood smoulders";
            case TINDER -> "leaves burn, 30\u00a0s";
            case CHAR -> "leaves burn, 10\u00a0s";
            case FLASH -> "leaves burn, 2\u00a0s";
            case BURST -> "plywood burns, 2\u00a0s";
        };
    }

    private static Optional<Estimate> at(YardRisks risks, Reach reach, Way way) {
        return risks.reach(reach.hazard()).of(way);
    }

    /** The same with the sun that it is for. */
    String verdictWithSun() {
        return verdict() + ", as in "
                + (result.light().strongest().isPresent() ? "the strongest sun, " : "this sun of ")
                + beam(result.light().inStrongestSun()) + ".";
    }

    /** "Keep people 130 cm and everything that burns 60 cm away from the focus". */
    String verdict() {
        String people = "Keep people " + away(result.people());
        return result.things() > 0
                ? people + " and everything that burns " + away(result.things()) + " away from the focus"
                : people + " away from the focus";
    }
}
