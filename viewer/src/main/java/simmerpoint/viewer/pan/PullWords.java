package simmerpoint.viewer.pan;

import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

/** Pull-backs as they are typed, stepped and spoken of, in one system of units. */
record PullWords(UnitSystem units) {

    /** Size of the unit, m. */
    double unit() {
        return units.shortUnitMetres();
    }

    /** Its name. */
    String unitName() {
        return units.shortUnit();
    }

    /** The finest step there is, m: a millimetre, a twentieth of an inch. */
    double grain() {
        return units == UnitSystem.INCH ? unit() / 20 : 1e-3;
    }

    /** A step of an arrow key, m. */
    double small() {
        return units == UnitSystem.INCH ? unit() / 5 : 5e-3;
    }

    /** A step with Shift, m. */
    double large() {
        return units == UnitSystem.INCH ? unit() : 25e-3;
    }

    /** The nearest whole grain, m. */
    double snapped(double metres) {
        return Math.rint(metres / grain()) * grain();
    }

    /** As it is typed in the file: "12.3 cm", "4.85 in". */
    String typed(double metres) {
        String figure = FigureFormat.fixed(snapped(metres) / unit(), units == UnitSystem.INCH ? 2 : 1);
        return figure.replace('\u2212', '-') + " " + unitName();
    }

    /** As it is read: "12.3 cm", "4.85 in", always with the same digits so that nothing jumps. */
    String shown(double metres) {
        return FigureFormat.fixed(metres / unit(), units == UnitSystem.INCH ? 2 : 1) + FigureFormat.NBSP + unitName();
    }

    /** What the pan gets somewhere: "At 12.3 cm: 512 W, simmer; hottest spot 23 kW/m²". */
    String sentence(double pullBack, PanPosition there) {
        FigureFormat figures = new FigureFormat(units);
        Estimate hot = new Estimate(there.hottestFlux(), 0.05 * there.hottestFlux());
        return "At " + shown(pullBack) + ": " + figures.plainWatts(there.cookingPower()) + ", "
                + LevelWords.of(there.level()) + "; hottest spot about " + figures.plainFlux(hot) + ".";
    }

    /** The same of a traced result, where its own pan stands; empty for a bare disc. */
    Optional<String> sentence(TraceResult result) {
        FigureFormat figures = new FigureFormat(units);
        return result.heat()
                .map(heat -> "At " + shown(result.scenario().stand().pullBackMetres()) + ": "
                        + figures.plainWatts(result.useful()) + ", " + LevelWords.of(heat.level())
                        + "; hottest spot " + figures.flux(result.spot().peakFlux()) + ".");
    }

    /** What moving further out means. */
    static String out() {
        return MoveWords.positive(simmerpoint.study.pan.MoveStudy.Move.PULL_BACK);
    }

    /** What moving further in means. */
    static String in() {
        return MoveWords.negative(simmerpoint.study.pan.MoveStudy.Move.PULL_BACK);
    }
}
