package simmerpoint.answer.cut;

import java.util.List;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.study.build.RibsAsBuilt;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CutPlan;

/**
 * What measured ribs cost and which to mend first.
 *
 * @param plan the dish
 * @param ribs what was found
 * @param units for lengths
 */
record AsBuiltSection(CutPlan plan, RibsAsBuilt ribs, UnitSystem units) {
    private static final int MOST = 6;

    /** A gain below so many of its standard errors is not seen. */
    private static final double SEEN = 2;

    Section section() {
        FigureFormat figures = new FigureFormat(units);
        List<RibsAsBuilt.Rib> worth = worth();
        return Section.headed("The ribs as built")
                .say(sentence())
                .addAll(
                        worth.isEmpty()
                                ? List.of()
                                : List.of(Columns.<RibsAsBuilt.Rib>none()
                                        .with("rib", rib -> Integer.toString(rib.number()))
                                        .with("off by up to", rib -> figures.length(rib.farthestOff(), 2))
                                        .with("mended alone it gains", rib -> figures.watts(rib.gain()))
                                        .table(worth)))
                .say("Rib 1 is the dish\u2019s upper edge, the others follow anticlockwise as seen from the sun. "
                        + error(figures))
                .build();
    }

    /** What the ribs' errors cost and which rib comes first. */
    String sentence() {
        FigureFormat figures = new FigureFormat(units);
        return "On ribs as measured the pan gets " + figures.plainWatts(ribs.built()) + ", on ribs as planned "
                + figures.plainWatts(ribs.planned()) + ": their errors cost " + figures.watts(ribs.gain()) + ". "
                + first(worth());
    }

    private List<RibsAsBuilt.Rib> worth() {
        return ribs.ribs().stream().filter(AsBuiltSection::isSeen).limit(MOST).toList();
    }

    private static boolean isSeen(RibsAsBuilt.Rib rib) {
        return rib.gain().value() > SEEN * rib.gain().standardError()
                && rib.gain().value() > 0;
    }

    private static String first(List<RibsAsBuilt.Rib> worth) {
        return worth.isEmpty()
                ? "No single rib is seen to cost anything."
                : "Mend rib " + worth.get(0).number() + " first.";
    }

    /** How far the ruled surface is off bent sheet: f\u0394\u00b2/4, see the dish's ribs as measured. */
    private String error(FigureFormat figures) {
        double focal = plan.scenario().dish().focalLengthMetres();
        double off = focal * ribs.slopeDifference() * ribs.slopeDifference() / 4;
        return "Between two ribs the mirror is taken as straight from points of one to points of the other that are equally far "
                + "from the middle; bent sheet lies up to " + figures.length(off, 1) + " off that.";
    }
}
