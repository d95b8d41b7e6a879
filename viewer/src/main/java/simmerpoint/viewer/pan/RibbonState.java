package simmerpoint.viewer.pan;

import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.drawing.chart.LevelRibbon;
import simmerpoint.drawing.chart.LivePan;
import simmerpoint.drawing.chart.MoveCurve;
import simmerpoint.heat.HeatLevel;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.SimmerPlace;
import simmerpoint.units.UnitSystem;

/**
 * What is seen on the ribbon of the pan's places.
 *
 * @param pull where the pan stands and what is known along its way
 * @param pointed the pull-back that is pointed at, m; empty if none
 * @param units of lengths
 */
record RibbonState(PullState pull, Optional<Double> pointed, UnitSystem units) {
    /** As long as that usually gets. */
    static final String LONGEST = "12.0 cm: simmer, about 190 W less than where the pan stands now, and 5 more words.";

    /** The drawing of it. */
    LevelRibbon drawing() {
        LivePan pan = new LivePan(pull.presentMetres(), pull.fits(), Optional.empty(), pointed);
        return new LevelRibbon(pull.line(), pull.lowMetres(), pull.highMetres(), pan, units);
    }

    /** What is said below it, in a sentence or two. It tells no watts of its own beside the answer's: only differences. */
    String sentence() {
        if (!pull.hasPan()) {
            return "A bare disc cooks nothing. Choose a pan to see where it boils and where it simmers.";
        }
        if (pull.line().isEmpty() || !pull.fits()) {
            return pull.working() ? "Finding out where it boils and where it simmers\u2026" : "";
        }
        MoveCurve line = pull.line().get();
        return pointed.map(at -> there(line, at)).orElseGet(() -> here(line));
    }

    private String there(MoveCurve line, double at) {
        PanPosition there = line.at(at);
        double more = there.cookingPower().value()
                - line.at(pull.presentMetres()).cookingPower().value();
        String watts = FigureFormat.rounded(Math.abs(more), 2) + FigureFormat.NBSP + "W ";
        String than = Math.abs(more) < 1
                ? "as much heat as where the pan stands now"
                : "about " + watts + (more < 0 ? "less" : "more") + " than where the pan stands now";
        return new PullWords(units).shown(at) + ": " + LevelWords.of(there.level()) + ", " + than + ".";
    }

    private String here(MoveCurve line) {
        HeatLevel level = line.at(pull.presentMetres()).level();
        Optional<SimmerPlace> simmer = line.result().simmer();
        String move = simmer.filter(place -> level != HeatLevel.SIMMER)
                .map(place -> " For a simmer, " + instruction(line, place) + ".")
                .orElse("");
        return "Here it will " + verb(level) + "." + move;
    }

    private String instruction(MoveCurve line, SimmerPlace place) {
        double offset = place.position().offsetMetres();
        if (place.move() == MoveStudy.Move.PULL_BACK) {
            offset += line.move().presentMetres() - pull.presentMetres();
        }
        return new MoveWords(units).instruction(place.move(), offset);
    }

    private static String verb(HeatLevel level) {
        return switch (level) {
            case TOO_COOL -> "stay too cool to cook";
            case KEEP_WARM -> "keep food warm";
            case SIMMER -> "simmer";
            case BOIL -> "boil";
            case FAST_BOIL -> "boil fast";
        };
    }
}
