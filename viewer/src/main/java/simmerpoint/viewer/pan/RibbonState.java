package simmerpoint.viewer.pan;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.drawing.chart.LevelRibbon;
import simmerpoint.drawing.chart.LivePan;
import simmerpoint.drawing.chart.MoveCurve;
import simmerpoint.heat.HeatLevel;
import simmerpoint.study.pan.BestPlace;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.pan.PanPosition;
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
    static final String LONGEST =
            "Here it will keep food warm. For a simmer, move the pan 28 cm away from the dish; for most heat, move the pan 28 cm"
                    + " nearer to the dish (about 190 W more).";

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
        Optional<String> simmer = line.result()
                .simmer()
                .filter(place -> level != HeatLevel.SIMMER)
                .map(place -> "for a simmer, "
                        + new MoveWords(units).inShort(place.move(), offset(line, place.move(), place.position())));
        String moves = Stream.concat(simmer.stream(), most(line).stream()).collect(Collectors.joining("; "));
        return "Here it will " + verb(level) + "." + (moves.isEmpty() ? "" : " F" + moves.substring(1) + ".");
    }

    /** Where the pan gets most, if that is worth a move from here. */
    private Optional<String> most(MoveCurve line) {
        BestPlace best = line.result().best();
        PanPosition here = line.at(pull.presentMetres());
        double more =
                best.position().cookingPower().value() - here.cookingPower().value();
        return Optional.of(best)
                .filter(place -> place.isWorthAMove(here))
                .map(place -> "for most heat, "
                        + new MoveWords(units).inShort(place.move(), offset(line, place.move(), place.position()))
                        + " (about " + FigureFormat.rounded(more, 1) + FigureFormat.NBSP + "W more)");
    }

    /** How far the pan is from there now, which the study knows from where it stood then. */
    private double offset(MoveCurve line, MoveStudy.Move move, PanPosition there) {
        double since = move == MoveStudy.Move.PULL_BACK ? line.move().presentMetres() - pull.presentMetres() : 0;
        return there.offsetMetres() + since;
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
