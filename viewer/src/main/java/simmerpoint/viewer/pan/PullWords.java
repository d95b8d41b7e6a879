package simmerpoint.viewer.pan;

import java.math.BigDecimal;
import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.InchLength;
import simmerpoint.units.UnitSystem;

/** Pull-backs as they are typed, stepped and spoken of, in one system of units. */
record PullWords(UnitSystem units) {
    private static final int SIXTEENTHS = 16;

    /** Size of the unit, m. */
    double unit() {
        return units.shortUnitMetres();
    }

    /** Its name. */
    String unitName() {
        return units.shortUnit();
    }

    /** The finest step there is, m: a millimetre, a sixteenth of an inch. */
    double grain() {
        return units == UnitSystem.INCH ? unit() / SIXTEENTHS : 1e-3;
    }

    /** A step of an arrow key, m. */
    double small() {
        return units == UnitSystem.INCH ? unit() / 4 : 5e-3;
    }

    /** A step with Shift, m. */
    double large() {
        return units == UnitSystem.INCH ? unit() : 25e-3;
    }

    /** The nearest whole grain, m. */
    double snapped(double metres) {
        return Math.rint(metres / grain()) * grain();
    }

    /** As it is typed in the file: "12.3 cm", "4.875 in". */
    String typed(double metres) {
        String figure = units == UnitSystem.INCH
                ? new BigDecimal(Math.rint(metres / grain()) / SIXTEENTHS)
                        .stripTrailingZeros()
                        .toPlainString()
                : FigureFormat.fixed(snapped(metres) / unit(), 1).replace('\u2212', '-');
        return figure + " " + unitName();
    }

    /** As it is read: "12.3 cm", "4 7/8 in". */
    String shown(double metres) {
        String figure = units == UnitSystem.INCH
                ? InchLength.fraction(metres / unit(), SIXTEENTHS)
                : FigureFormat.fixed(metres / unit(), 1);
        return figure + FigureFormat.NBSP + unitName();
    }

    /** Where the pan stands, to begin a sentence: "At 12.3 cm", "At the focus". */
    private String at(double pullBack) {
        return snapped(pullBack) == 0 ? "At the focus" : "At " + shown(pullBack);
    }

    /** What the pan gets somewhere by the figures as given: "At 12.3 cm: 510 W as given, simmer; hottest spot about 23 kW/m²". */
    String sentence(double pullBack, PanPosition there) {
        return at(pullBack) + ": " + asGiven(there.cookingPower()) + ", " + LevelWords.of(there.level())
                + hottest(there.hottestFlux()) + ".";
    }

    private String asGiven(Estimate watts) {
        return (watts.value() < 1
                        ? new FigureFormat(units).plainWatts(watts)
                        : FigureFormat.rounded(watts.value(), 2) + FigureFormat.NBSP + "W")
                + " as given";
    }

    private String hottest(double flux) {
        return "; hottest spot about " + new FigureFormat(units).roughFlux(flux);
    }

    /** The same of a traced result, where its own pan stands; empty for a bare disc. */
    Optional<String> sentence(TraceResult result) {
        return result.heat()
                .map(heat -> at(result.scenario().stand().pullBackMetres()) + ": " + asGiven(result.useful())
                        + result.likely()
                                .map(likely -> ", " + LikelyWords.likely(likely.power()) + " likely")
                                .orElse("")
                        + ", " + LevelWords.of(heat.level())
                        + hottest(result.spot().peakFlux().value()) + ".");
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
