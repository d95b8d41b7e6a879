package simmerpoint.answer.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.Spot;
import simmerpoint.target.SpotEllipse;

/** The spot figures, for whoever wants the optics. */
final class SpotSection {
    /** Axes that differ by less than this factor have no direction worth telling. */
    private static final double ROUND = 1.05;

    private final FigureFormat figures;
    private final TargetWords words;
    private final List<Item> items = new ArrayList<>();

    private SpotSection(FigureFormat figures, TargetWords words) {
        this.figures = figures;
        this.words = words;
    }

    static Section of(TraceResult result, FigureFormat figures, TargetWords words) {
        SpotSection section = new SpotSection(figures, words);
        return result.ledger().caught().value() > 0 ? section.build(result.spot()) : section.dark();
    }

    private Section build(Spot spot) {
        add("intercept factor", figures.number(spot.interceptFactor()));
        add("50 % of the light within", radius(spot.radius50()));
        add("90 % of the light within", radius(spot.radius90()));
        add("95 % of the light within", radius(spot.radius95()));
        add("centre of the light", centroid(spot));
        add("long and short axis", spot.ellipse().map(this::ellipse).orElse("no light"));
        add(
                "peak flux",
                figures.flux(spot.peakFlux()) + ", mean over a disc of " + figures.length(spot.peakDiscRadius())
                        + " radius");
        add("mean concentration", figures.number(spot.meanConcentration()) + " suns on the " + words.face());
        add("evenness", figures.number(spot.evenness()) + " (standard deviation ÷ mean; 0 is even)");
        return new Section("The spot", items);
    }

    private Section dark() {
        add("intercept factor", "0: nothing of the focused light is caught");
        return new Section("The spot", items);
    }

    private void add(String label, String value) {
        items.add(new Item.Figure(label, value));
    }

    private String radius(Optional<Estimate> radius) {
        return radius.map(r -> figures.length(r) + " of the middle")
                .orElse("never: less than that crosses the level of the " + words.face());
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
        return figures.length(new Estimate(Math.abs(e.value()), e.standardError())) + " " + where;
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
