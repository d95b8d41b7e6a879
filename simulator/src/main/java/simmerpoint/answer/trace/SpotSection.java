package simmerpoint.answer.trace;

import java.util.Optional;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.Spot;
import simmerpoint.target.SpotEllipse;

/** The spot figures, for whoever wants the optics. */
record SpotSection(TraceResult result, FigureFormat figures, TargetWords words) {
    /** Axes that differ by less than this factor have no direction worth telling. */
    private static final double ROUND = 1.05;

    Section section() {
        SectionBuilder out = Section.headed("The spot");
        if (!(result.ledger().caught().value() > 0)) {
            return out.figure("intercept factor", "0: nothing of the focused light is caught")
                    .build();
        }
        Spot spot = result.spot();
        return out.figure("intercept factor", figures.number(spot.interceptFactor()))
                .figure("50 % of the light within", radius(spot.radius50()))
                .figure("90 % of the light within", radius(spot.radius90()))
                .figure("95 % of the light within", radius(spot.radius95()))
                .figure("centre of the light", centroid(spot))
                .figure("long and short axis", spot.ellipse().map(this::ellipse).orElse("no light"))
                .figure(
                        "peak flux",
                        figures.flux(spot.peakFlux()) + ", mean over a disc of " + figures.length(spot.peakDiscRadius())
                                + " radius")
                .figure("mean concentration", figures.number(spot.meanConcentration()) + " suns on the " + words.face())
                .figure("unevenness", figures.percent(spot.evenness()) + " (standard deviation ÷ mean; 0 % is even)")
                .build();
    }

    private String radius(Optional<Estimate> radius) {
        return radius.map(r -> figures.length(r) + " of the middle")
                .orElse("not reached: part of the light never comes to the level of the " + words.face()
                        + (words.isPan() ? ", it hits the wall first" : ""));
    }

    private String centroid(Spot spot) {
        double x = spot.centroidX().value();
        double y = spot.centroidY().value();
        if (!Double.isFinite(Math.hypot(x, y))) {
            return "no light";
        }
        return along(spot.centroidX(), x >= 0 ? words.towardsPlusX() : words.towardsMinusX()) + ", "
                + along(spot.centroidY(), y >= 0 ? TargetWords.RIGHT : TargetWords.LEFT);
    }

    private String along(Estimate e, String where) {
        return figures.length(e.abs()) + " " + where;
    }

    private String ellipse(SpotEllipse e) {
        if (e.longSigma() < ROUND * e.shortSigma()) {
            return figures.length(e.longSigma()) + " (standard deviation): the spot is round";
        }
        return figures.length(e.longSigma()) + " and " + figures.length(e.shortSigma())
                + " (standard deviations); the long axis lies "
                + figures.degrees(Math.abs(e.angleRadians())) + " off the line \u201c" + words.towardsPlusX()
                + "\u201d, turned " + (e.angleRadians() >= 0 ? TargetWords.RIGHT : TargetWords.LEFT);
    }
}
