package simmerpoint.answer.trial;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.quantities.OneLine;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.trial.spot.CardResult;
import simmerpoint.trial.spot.SpotComparison;
import simmerpoint.trial.spot.SpotPhoto;
import simmerpoint.trial.spot.SpotProfile;
import simmerpoint.units.UnitSystem;

/** The spot on a card, and what it says of the mirror. */
public final class CardAnswer {
    private static final double FAR = 2;
    private static final Item.Caution CAUTION = new Item.Caution(
            "Focused sunlight blinds and burns: a card in the focus catches fire within seconds. Take damp card or a sheet of"
                    + " metal, and cover most of the mirror while you draw. Stand to the side and look at the card only from there,"
                    + " never towards the mirror or into the focus, with dark glasses or without.");

    private final CardResult result;
    private final FigureFormat figures;
    private final Scenario scenario;

    private CardAnswer(CardResult result, UnitSystem units) {
        this.result = result;
        figures = new FigureFormat(units);
        scenario = result.scenario().scenario();
    }

    /** In a dozen lines. */
    public static Answer brief(CardResult result, UnitSystem units) {
        CardAnswer answer = new CardAnswer(result, units);
        return ShortAnswer.of(
                scenarioTitle(result),
                answer.said(false).add(CAUTION),
                NextCommand.line(NextCommand.TRACE, NextCommand.BUDGET));
    }

    /** With how it was worked out. */
    public static Answer of(CardResult result, UnitSystem units) {
        CardAnswer answer = new CardAnswer(result, units);
        return new Answer(
                OneLine.of(scenarioTitle(result)),
                List.of(answer.said(true).build(), answer.howSure(), new Section("Take care", List.of(CAUTION))));
    }

    private static String scenarioTitle(CardResult result) {
        return result.scenario().scenario().title();
    }

    private SectionBuilder said(boolean whole) {
        return Section.headed("By its spot the mirror has a slope error of " + milliradians(result.slopeError())
                        + " and a focal length of " + length(result.focalLength()))
                .say("Planned: " + FigureFormat.milliradians(scenario.mirror().slopeErrorRadians()) + " and "
                        + figures.length(scenario.dish().focalLengthMetres(), 3) + ".")
                .add(Columns.<CardResult.Point>none()
                        .with(
                                "card from\nthe middle",
                                p -> figures.length(p.reading().distance(), 3))
                        .with("spot\nmeasured", p -> figures.length(p.reading().width(), 3))
                        .with("planned", p -> figures.length(p.planned(), 3))
                        .with("fitted", p -> figures.length(p.fitted(), 3))
                        .table(result.points()))
                .say(whole ? photographs() : elsewhere())
                .say(saturated())
                .say(misfit());
    }

    /** How well whole photographs agree with the traced light. */
    private List<String> photographs() {
        return result.photographed().stream()
                .map(point -> {
                    SpotComparison maps = point.maps().orElseThrow();
                    SpotProfile seen = point.reading().photo().orElseThrow().profile();
                    return "The photograph at " + figures.length(point.reading().distance(), 3)
                            + ": half of the light within " + figures.length(seen.radius50(), 2)
                            + " of its centre (fitted "
                            + figures.length(maps.fitted().radius50(), 2) + "), nine tenths within "
                            + figures.length(seen.radius90(), 2) + " ("
                            + figures.length(maps.fitted().radius90(), 2) + "); "
                            + TrialFlawWords.percent(maps.elsewhere())
                            + " of it lies elsewhere than traced, " + TrialFlawWords.percent(maps.elsewherePlanned())
                            + " beside the dish as planned. Its centre lies " + centre(seen) + ".";
                })
                .toList();
    }

    /** The same in a sentence. */
    private List<String> elsewhere() {
        return result.photographed().isEmpty()
                ? List.of()
                : List.of("Of the light in the photographs " + span(SpotComparison::elsewhere)
                        + " lies elsewhere than traced, " + span(SpotComparison::elsewherePlanned)
                        + " beside the dish as planned.");
    }

    private String span(ToDoubleFunction<SpotComparison> share) {
        DoubleSummaryStatistics all = result.photographed().stream()
                .mapToDouble(p -> share.applyAsDouble(p.maps().orElseThrow()))
                .summaryStatistics();
        String least = TrialFlawWords.percent(all.getMin());
        String most = TrialFlawWords.percent(all.getMax());
        return least.equals(most) ? least : least + " to " + most;
    }

    private String centre(SpotProfile seen) {
        return figures.length(Math.abs(seen.x()), 2) + (seen.x() < 0 ? " left and " : " right and ")
                + figures.length(Math.abs(seen.y()), 2)
                + (seen.y() < 0 ? " above" : " below") + " the middle of the picture";
    }

    private String milliradians(Estimate e) {
        return FigureFormat.withError(e.times(1000), "mrad");
    }

    private String length(Estimate e) {
        return figures.length(e);
    }

    private Optional<String> saturated() {
        double most = result.points().stream()
                .flatMap(p -> p.reading().photo().stream())
                .mapToDouble(SpotPhoto::saturated)
                .max()
                .orElse(0);
        return most > SpotPhoto.TOO_MANY
                ? Optional.of("Up to " + TrialFlawWords.percent(most)
                        + " of the bright half of a photograph is saturated, so its"
                        + " spot looks wider than it is and counts little here: take it again with a shorter exposure.")
                : Optional.empty();
    }

    private Optional<String> misfit() {
        return result.misfit() > FAR
                ? Optional.of(
                        "The widths fit no dish of this kind well (" + FigureFormat.fixed(result.misfit(), 1)
                                + " times what a pencil explains): look for panels glued askew, or measure the distances again.")
                : Optional.empty();
    }

    private Section howSure() {
        return Section.headed("How sure this is")
                .say(
                        "A width is that of the spot where it is half as bright as in its middle, on a card square to the axis, the dish"
                                + " aimed dead on. Measured widths count as good to 3 mm and 5 %. Of a photograph the radii that hold a"
                                + " tenth to nine tenths of its light are fitted, each good to 5 %, all together as much as three"
                                + " figures. If part of the mirror was covered, say so by dish.covered. Panel tilt is as planned: panels glued more"
                                + " askew look like a rougher mirror here. Before, the slope error was doubted by a factor of 1.6 and the"
                                + " focal length by 3 %.")
                .build();
    }
}
