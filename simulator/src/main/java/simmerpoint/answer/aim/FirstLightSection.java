package simmerpoint.answer.aim;

import java.util.Optional;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.ShellWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.aim.FirstLight;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.units.UnitSystem;

/** How to find the focus of the finished dish with nearly all of its mirror covered. */
record FirstLightSection(FirstLight light, Scenario scenario, FigureFormat figures, TargetWords words) {
    private static final int DIGITS = 2;

    /** Spots nearer to each other than this are one, m. */
    private static final double ONE = 0.005;

    /** A focus is told no finer, m. */
    private static final double HALF_CENTIMETRES = 0.005;

    private static final double QUARTER_INCHES = UnitSystem.INCH.shortUnitMetres() / 4;

    Section section() {
        return Section.headed("First light")
                .say(cover())
                .say(move()
                        + " from the side: two spots come together, are one, and part again. Where they are one is the true focus: "
                        + place() + ". Mark it; there goes the "
                        + (words.isPan() ? "middle of the pan\u2019s underside" : "middle of the disc") + ".")
                .add(table())
                .say(meaning())
                .caution(care())
                .build();
    }

    private String move() {
        return "Aim by the stick. Fix a white card to a pole, square to "
                + (shell().isPresent()
                        ? "the stick, hold it where the two strings meet, and move it along a line parallel to the stick"
                        : "the dish\u2019s axis, and move it along the axis");
    }

    private String cover() {
        String holes = light.holes().sideBySide() ? "side by side" : "one above the other";
        return "Before any pan, cover the mirror with a cloth that has two round holes in it, "
                + figures.length(light.holes().diameterMetres(), DIGITS) + " wide and " + holes + ", "
                + figures.length(light.holes().apartMetres(), DIGITS)
                + " from middle to middle, as far from the dish\u2019s middle the one as the other. "
                + LikelyWords.likely(light.watts()) + " come through both of them; all of the mirror throws "
                + FigureFormat.rounded(light.times(), DIGITS) + " times as much.";
    }

    private Item table() {
        return Columns.<FirstLight.OnCard>none()
                .with(shell().isPresent() ? "card, from\nthe focus" : "card from\nthe middle", this::card)
                .with(
                        "spots apart",
                        card -> card.apart().likely() < ONE
                                ? "one spot"
                                : length(card.apart().likely()))
                .with("four in five", card -> span(card.apart()))
                .with("each spot\nwide", card -> length(card.width().likely()))
                .with("four in five", card -> span(card.width()))
                .table(light.cards());
    }

    private static String meaning() {
        return "Width is that of the circle that holds four fifths of a spot\u2019s light. Wider spots: the mirror is rougher, or"
                + " panels lean. Two spots that pass beside each other: the dish is twisted. One of them wider than the other:"
                + " mend that side first. Spots of other pairs of holes that meet nearer or farther: the curve is not the one"
                + " planned (trial --card fits it to what you measured).";
    }

    private String care() {
        return "In the one spot there are up to "
                + figures.roughFlux(light.fluxThere().high()) + ". "
                + Cautions.skinHere(light.fluxThere().high())
                + " Keep hands and face out of it, never look into the mirror or through the holes, and cover all of it before"
                + " you go near.";
    }

    /** A shell beside its axis has no middle to measure from. */
    private Optional<ShellWords> shell() {
        return ShellWords.leaning(scenario, figures);
    }

    private String place() {
        return shell().map(words -> words.strings() + " (" + words.depthCounts() + ")")
                .orElseGet(() -> distance(light.meet()) + " from the middle of the dish");
    }

    private String card(FirstLight.OnCard card) {
        double before = scenario.dish().focalLengthMetres() - card.distanceMetres();
        return shell().isEmpty()
                ? figures.length(card.distanceMetres(), 3)
                : length(Math.abs(before)) + (before >= 0 ? " nearer" : " farther");
    }

    private String distance(LikelyRange range) {
        double step = figures.system() == UnitSystem.INCH ? QUARTER_INCHES : HALF_CENTIMETRES;
        String likely = figures.length(step * Math.round(range.likely() / step), 3);
        String low = figures.length(step * Math.round(range.low() / step), 3);
        String high = figures.length(step * Math.round(range.high() / step), 3);
        return likely + (low.equals(high) ? "" : " (four in five such dishes: " + FigureFormat.span(low, high) + ")");
    }

    private String span(LikelyRange range) {
        return FigureFormat.span(length(range.low()), length(range.high()));
    }

    private String length(double metres) {
        return figures.length(metres, DIGITS);
    }
}
