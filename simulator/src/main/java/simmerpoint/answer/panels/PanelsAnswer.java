package simmerpoint.answer.panels;

import java.util.List;
import java.util.stream.Stream;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.dish.CutTrait;
import simmerpoint.quantities.OneLine;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.study.panels.PanelFigures;
import simmerpoint.study.panels.PanelsResult;
import simmerpoint.units.UnitSystem;

/** The answer to "which of my panels send their light past the pan, and how do I turn them?". */
public final class PanelsAnswer {
    private static final int MOST_IN_SHORT = 5;
    private static final int MOST = 40;

    /** Where this much of the worst panel's light lands, it needs no naming. */
    private static final double EVEN = 0.95;

    /** A shorter lift is none, m. */
    private static final double NO_LIFT = 5e-5;

    private final PanelsResult result;
    private final FigureFormat figures;
    private final String noun;

    private PanelsAnswer(PanelsResult result, UnitSystem system) {
        this.result = result;
        figures = new FigureFormat(system);
        noun = TargetWords.of(result.scenario().target()).noun();
    }

    /** The answer in a dozen lines. */
    public static Answer brief(PanelsResult result, UnitSystem system) {
        PanelsAnswer answer = new PanelsAnswer(result, system);
        SectionBuilder out = answer.turning(MOST_IN_SHORT).add(new Item.Caution(Cautions.ALWAYS, true));
        return ShortAnswer.of(result.scenario().title(), out, NextCommand.line(NextCommand.BUDGET));
    }

    /** All of it. */
    public static Answer of(PanelsResult result, UnitSystem system) {
        PanelsAnswer answer = new PanelsAnswer(result, system);
        boolean single = result.panels().size() < 2;
        return new Answer(
                OneLine.of(result.scenario().title()),
                Stream.of(
                                Stream.of(answer.turning(MOST).build()),
                                Stream.of(answer.byHand()).filter(section -> !single),
                                Stream.of(answer.care(), answer.sure()))
                        .flatMap(part -> part)
                        .toList());
    }

    /** The panels that the whole answer names, for a picture too. */
    public static List<PanelFigures> named(PanelsResult result) {
        return result.worthTurning().stream().limit(MOST).toList();
    }

    /** Its first sentence, for a picture too. */
    public static String heading(PanelsResult result, UnitSystem system) {
        return new PanelsAnswer(result, system).heading();
    }

    private String heading() {
        if (result.panels().isEmpty()) {
            return "No sunlight reaches the panels";
        }
        if (result.panels().size() == 1) {
            return "This dish is one piece: " + share(result.worst()) + " of its light lands on the " + noun;
        }
        if (result.worst().share().value() > EVEN) {
            return "Of every panel\u2019s light at least " + share(result.worst()) + " lands on the " + noun;
        }
        return share(result.caught() / result.reflected()) + " of the panels\u2019 light lands on the " + noun + "; "
                + result.worthTurning().stream()
                        .findFirst()
                        .map(first -> "panel " + first.number() + " is most worth turning")
                        .orElse("of panel " + result.worst().number() + " only " + share(result.worst()));
    }

    private SectionBuilder turning(int most) {
        SectionBuilder out = Section.headed(heading());
        List<PanelFigures> worth = result.worthTurning();
        if (worth.isEmpty()) {
            return out.sayIf(result.panels().size() > 1, "There is no panel whose turning would surely bring more.");
        }
        out.say((worth.size() == 1 ? "One panel is" : FigureFormat.count(worth.size()) + " panels are")
                + " worth turning; together that brings " + watts(result.gain()) + " more onto the " + noun + "."
                + (worth.size() > most ? " First of all:" : ""));
        return out.add(table(worth.stream().limit(most).toList())).say(meaning() + luck());
    }

    private Item table(List<PanelFigures> rows) {
        return Columns.<PanelFigures>none()
                .with("panel", p -> String.valueOf(p.number()))
                .with("from the\nmiddle", p -> figures.length(p.fromAxisMetres(), 2))
                .with("sends", p -> watts(p.reflected()))
                .with("lands", this::share)
                .with("turned,\nlands", p -> share(p.caughtTurned() / p.reflected()))
                .with("outer\nedge", p -> lift(p.turn().outerLiftMetres()))
                .with("side\nedge", p -> lift(p.turn().sideLiftMetres()))
                .table(rows);
    }

    private String meaning() {
        return "Up is towards the sun; the side edge is the anticlockwise one, seen from the sun. The opposite edge is the"
                + " hinge.";
    }

    /** Which panels are crooked is known of no plan. */
    private String luck() {
        return result.scenario().built().hasTiltedPanels()
                ? " Which panels lean is drawn by chance: on your dish others will."
                : " No panel leans by chance here: the dish\u2019s shape calls for this.";
    }

    /** How to find and turn them on the finished dish. */
    private Section byHand() {
        return Section.headed("On the finished dish")
                .say("Cover the dish, aim it, and lay a sheet of card on the " + noun
                        + "\u2019s place. Uncover one panel and look from the side, not from in front, where its light"
                        + " falls on the card. Cover it, wedge it, and uncover it to look again, until its light lies"
                        + " in the middle; cover it and go on to the next.")
                .say(reach())
                .build();
    }

    private String reach() {
        double least = result.panels().stream().mapToDouble(this::shift).min().orElse(0);
        double most = result.panels().stream().mapToDouble(this::shift).max().orElse(0);
        return "Each degree a panel is turned moves its light by "
                + FigureFormat.span(figures.length(least, 2), figures.length(most, 2)) + ".";
    }

    /** Of the light of a panel that is turned by a degree: twice that angle times the way to the focus, m. */
    private double shift(PanelFigures panel) {
        double f = result.scenario().dish().focalLengthMetres();
        return 2
                * Math.toRadians(1)
                * Math.hypot(panel.fromAxisMetres(), f - panel.middle().z());
    }

    private Section care() {
        SectionBuilder out = Section.headed(Cautions.HEADING).add(new Item.Caution(Cautions.ALWAYS, true));
        if (result.scenario().dish().cut().has(CutTrait.PANELS)) {
            out.caution(onePanel());
        }
        return out.build();
    }

    /** A bent strip alone can light a fire. */
    private String onePanel() {
        double flux = result.strongest().flux();
        return "Even one panel alone throws up to " + figures.roughFlux(flux) + " where its light is narrowest. "
                + Cautions.skinHere(flux)
                + Hazard.ofFire(flux)
                        .map(hazard -> " " + ShortAnswer.capital(Cautions.does(hazard)) + ".")
                        .orElse("")
                + " Never reach in while a panel is uncovered.";
    }

    private Section sure() {
        return Section.headed(Cautions.HOW_SURE)
                .say(
                        "A panel is turned so that the middle of its light meets that of all panels; where the dish is aimed and"
                                + " where the " + noun
                                + " stands stays as it is (budget and pan tell about those). Worth turning is what"
                                + " gains more than two standard errors.")
                .sayIf(
                        !result.scenario().dish().cut().has(CutTrait.PANELS),
                        "A dish of one piece cannot be turned in parts.")
                .say(FigureFormat.count(result.rays()) + " rays for each of two traces, seed " + result.seed()
                        + ". An estimate.")
                .build();
    }

    private String share(PanelFigures panel) {
        return share(panel.share().value());
    }

    private static String share(double share) {
        return Double.isFinite(share) ? FigureFormat.fixed(100 * share, 0) + FigureFormat.NBSP + "%" : "nothing";
    }

    private static String watts(double watts) {
        return FigureFormat.rounded(watts, 2) + FigureFormat.NBSP + "W";
    }

    private String lift(double metres) {
        if (Math.abs(metres) < NO_LIFT) {
            return "as it is";
        }
        String size = figures.length(Math.abs(metres), 2);
        return size + (metres >= 0 ? " up" : " down");
    }
}
