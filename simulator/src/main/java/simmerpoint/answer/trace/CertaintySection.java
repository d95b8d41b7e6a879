package simmerpoint.answer.trace;

import java.util.Optional;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Support;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

/** How sure the figures are, and what they came from. */
public final class CertaintySection {
    /** What another seed is where panels are glued askew. */
    public static final String LUCK_OF_TILT =
            "No two dishes are glued alike: another seed is another dish built with the same care, and it "
                    + "differs by more than the ±.";

    private CertaintySection() {}

    static Section of(TraceResult result, FigureFormat figures, TargetWords words) {
        SectionBuilder out = Section.headed(Cautions.HOW_SURE);
        double relative = result.ledger().caught().relativeError();
        String sure = relative > 0 && Double.isFinite(relative)
                ? " The caught watts are sure to ±" + FigureFormat.rounded(100 * relative, 2) + "\u00a0%."
                : "";
        if (!result.precisionReached()) {
            out.caution("The precision asked for was not reached before the bound on rays." + sure
                    + " Allow more rays or ask for less.");
            sure = "";
        }
        result.likely()
                .ifPresent(likely -> out.say(LikelyWords.method(likely)).say(LikelyWords.worthMeasuring(likely)));
        out.say("± is one standard error from sampling: two times in three the figure for exactly this "
                + "dish lies within it." + sure
                + " It says nothing of mirrors, wind or sky that differ from the scenario.");
        out.sayIf(result.scenario().built().hasTiltedPanels(), LUCK_OF_TILT);
        out.say(grate(result, figures));
        out.say(standard(result, figures));
        out.say(FigureFormat.count(result.run().rays()) + " rays in " + result.replicates()
                + " replicates, seed " + result.seed() + "; " + FigureFormat.count(result.panels())
                + (result.panels() == 1 ? " panel" : " panels") + ", mirrors of "
                + area(result.apertureArea(), figures) + " seen along the axis, outline "
                + area(result.outlineArea(), figures) + "; sun "
                + figures.degrees(result.scenario().sun().elevationRadians()) + " high, beam "
                + FigureFormat.rounded(result.scenario().sun().beamWattsPerSquareMetre(), 3) + "\u00a0W/m², "
                + OneLine.of(result.scenario().sun().shape().describe()) + ".");
        return out.build();
    }

    private static Optional<String> grate(TraceResult result, FigureFormat figures) {
        return Optional.of(result.scenario().target())
                .filter(target -> target instanceof Pan pan && !pan.support().any())
                .map(target -> "The scenario does not say what the pan stands on: a grate of three bars "
                        + figures.length(Support.USUAL.bars().get(0).widthMetres(), 2) + " wide stops about "
                        + figures.percent(Support.USUAL.shareOfDisc(target.radiusMetres()))
                        + " of the light on an evenly lit underside (stand.grate, stand.arm).");
    }

    /** The figure of the published test, for whoever compares cookers by it. */
    private static Optional<String> standard(TraceResult result, FigureFormat figures) {
        return result.standardCookingPower()
                .filter(watts -> watts.value() > 0)
                .map(watts -> "Standardised to " + FigureFormat.fixed(StandardCookingPower.STANDARD_IRRADIANCE, 0)
                        + "\u00a0W/m\u00b2, as cooker tests are (ASAE S580), the cooking power is "
                        + figures.plainWatts(watts)
                        + "; by the beam alone, while such tests count the light of the whole sky.");
    }

    private static String area(double squareMetres, FigureFormat figures) {
        return switch (figures.system()) {
            case METRIC -> FigureFormat.rounded(squareMetres, 3) + "\u00a0m²";
            case INCH ->
                FigureFormat.rounded(squareMetres / (UnitSystem.FOOT_METRES * UnitSystem.FOOT_METRES), 3) + "\u00a0ft²";
        };
    }
}
