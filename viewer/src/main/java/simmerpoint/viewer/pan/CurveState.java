package simmerpoint.viewer.pan;

import java.util.Optional;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.drawing.chart.LivePan;
import simmerpoint.drawing.chart.MoveChart;
import simmerpoint.drawing.chart.MoveCurve;
import simmerpoint.heat.HeatLevel;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.pan.SimmerPlace;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

/**
 * What is seen on the drawing of the curves.
 *
 * @param pull where the pan stands and what is known along its way
 * @param shown the newest result, the same that every other part of the window shows; may be that of an earlier place
 * @param pointed the pull-back that is pointed at, m; empty if none
 * @param units of lengths
 */
record CurveState(PullState pull, Optional<TraceResult> shown, Optional<Double> pointed, UnitSystem units) {
    /** As long as that usually gets. */
    static final String LONGEST =
            "At \u221210 15/16 in: 1000 W as given, 1000 W likely, keep warm; hottest spot about 54 kW/m\u00b2."
                    + " The flag marks the place recommended for a simmer.";

    /** The drawing of it. */
    MoveChart chart() {
        LivePan pan = new LivePan(pull.presentMetres(), pull.fits(), traced(), pointed);
        return MoveChart.live(pull.line(), pull.lowMetres(), pull.highMetres(), pan, units);
    }

    /** Watts where the pan stands, if it is that place that has been traced. */
    private Optional<Double> traced() {
        return shown.filter(r -> r.scenario().stand().pullBackMetres() == pull.presentMetres())
                .map(r -> r.useful().value());
    }

    /** What is said below the curves, in one sentence. */
    String sentence() {
        PullWords words = new PullWords(units);
        if (!pull.hasPan()) {
            return "A bare disc cooks nothing. Choose a pan to see its curve.";
        }
        if (pull.line().isEmpty()) {
            return pull.working() ? "The curve is being computed." : "No curve yet.";
        }
        if (!pull.fits()) {
            return pull.working()
                    ? "An earlier curve; the new one is being computed."
                    : "An earlier curve; the new one follows when you pause.";
        }
        MoveCurve line = pull.line().get();
        return pointed.map(at -> words.sentence(at, line.at(at)))
                        .or(() -> shown.flatMap(words::sentence))
                        .orElseGet(() -> words.sentence(pull.presentMetres(), line.at(pull.presentMetres())))
                + recommended();
    }

    /** The place recommended for a simmer: a flag, or a sentence where it does not lie on this curve. */
    private String recommended() {
        return pull.line()
                .flatMap(line -> line.result().simmer().map(place -> recommended(line, place)))
                .orElse("");
    }

    private String recommended(MoveCurve line, SimmerPlace place) {
        if (place.move() == MoveStudy.Move.PULL_BACK) {
            return " The flag marks the place recommended for a simmer.";
        }
        if (line.at(pull.presentMetres()).level() == HeatLevel.SIMMER) {
            return "";
        }
        double from = line.move().presentMetres();
        PullWords words = new PullWords(units);
        String there = words.snapped(from) == words.snapped(pull.presentMetres())
                ? ""
                : ", at a pull-back of " + words.shown(from) + ",";
        return " For a simmer" + there + " "
                + new MoveWords(units)
                        .instruction(place.move(), place.position().offsetMetres()) + ".";
    }
}
