package simmerpoint.answer.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.quantities.OneLine;
import simmerpoint.trial.TrialNote;
import simmerpoint.trial.TrialResult;
import simmerpoint.trial.fit.FlawLikelihood;
import simmerpoint.trial.fit.FlawPair;
import simmerpoint.trial.fit.TrialFit;
import simmerpoint.trial.power.PowerTest;
import simmerpoint.trial.power.ProtocolTest;
import simmerpoint.trial.power.TestCondition;
import simmerpoint.trial.power.TestInterval;
import simmerpoint.units.UnitSystem;

/** How good a built cooker is and what is wrong with it. */
public final class TrialAnswer {
    static final Item.Caution CAUTION = new Item.Caution(
            "Focused sunlight blinds and burns: read the thermometer from the side, never with your face"
                    + " over the mirror.");
    private static final double MINUTE = 60;
    private static final int PAIRS = 2;

    /** A flaw less likely is not worth a line. */
    private static final double WORTH_A_LINE = 0.005;

    private final TrialResult result;
    private final TrialWords words;
    private final TrialFlawWords flaws;

    private TrialAnswer(TrialResult result, UnitSystem units) {
        this.result = result;
        words = new TrialWords(result, units);
        flaws = new TrialFlawWords(new FigureFormat(units));
    }

    /** In a dozen lines. */
    public static Answer brief(TrialResult result, UnitSystem units) {
        TrialAnswer answer = new TrialAnswer(result, units);
        return ShortAnswer.of(
                result.scenario().scenario().title(),
                answer.head().add(CAUTION),
                NextCommand.line(NextCommand.BUDGET, NextCommand.PAN));
    }

    /** All of it. */
    public static Answer of(TrialResult result, UnitSystem units) {
        return new TrialAnswer(result, units).whole();
    }

    private SectionBuilder head() {
        SectionBuilder out = Section.headed(ShortAnswer.capital(words.verdict()));
        result.fit().ifPresent(fit -> out.say(words.power(fit)));
        return out.caution(words.disagreement())
                .figure(words.powerName(), words.powerFigure())
                .figure("heat loss", words.lossFigure())
                .figure("likeliest flaw", words.flaw())
                .figure("not told from it", words.rivals())
                .figure("measure next", words.next())
                .say(important());
    }

    /** Notes without which the figures would be misread. */
    private List<String> important() {
        return result.notes().stream()
                .filter(n -> switch (n.kind()) {
                    case AIR_OF_SCENARIO, WIND_OF_SCENARIO, BEAM_AS_SHARE, OTHER_ARRANGEMENT -> false;
                    default -> true;
                })
                .map(TrialWords::note)
                .distinct()
                .toList();
    }

    private Answer whole() {
        List<Section> sections = new ArrayList<>();
        sections.add(head().build());
        sections.add(new Section(Cautions.HEADING, List.of(CAUTION)));
        result.power().ifPresent(power -> sections.add(intervals(power)));
        result.power().ifPresent(power -> sections.add(conditions(power)));
        result.protocol().ifPresent(protocol -> sections.add(protocol(protocol)));
        result.fit().ifPresent(fit -> sections.add(flaws(fit)));
        sections.add(howSure());
        return new Answer(OneLine.of(result.scenario().scenario().title()), sections);
    }

    private Section intervals(PowerTest power) {
        SectionBuilder out = Section.headed("The standard\u2019s test");
        if (power.intervals().isEmpty()) {
            return out.say("No interval of ten minutes lies below the boil.").build();
        }
        out.add(Columns.<TestInterval>none()
                .with("from\nmin", i -> FigureFormat.fixed(i.startSeconds() / MINUTE, 0))
                .with(
                        "water\n°C",
                        i -> FigureFormat.span(
                                FigureFormat.fixed(i.interval().startCelsius(), 1),
                                FigureFormat.fixed(i.interval().endCelsius(), 1)))
                .with("above air\nK", i -> FigureFormat.fixed(i.interval().difference(), 0))
                .with(
                        "light\nW/m²",
                        i -> Double.isNaN(i.lightSpread())
                                ? "-"
                                : FigureFormat.fixed(i.interval().irradiance(), 0))
                .with("into water\nW", i -> FigureFormat.fixed(i.interval().watts(), 0))
                .with("at 700\nW", i -> FigureFormat.fixed(i.interval().standardisedWatts(), 0))
                .with("counts", i -> power.used().contains(i) ? "yes" : "no")
                .table(power.intervals()));
        power.line()
                .ifPresent(line -> out.say("The line through those that count: "
                        + FigureFormat.fixed(line.interceptWatts(), 0) + "\u00a0W at the air\u2019s temperature, "
                        + FigureFormat.fixed(line.wattsPerKelvin(), 2) + "\u00a0W for each kelvin above it, R² "
                        + FigureFormat.fixed(line.determination(), 3) + "; at 50\u00a0K it is the figure above."));
        return out.sayIf(
                        !power.used().stream().allMatch(TestInterval::isKept),
                        "Fewer than three intervals keep the standard\u2019s limits of water and light, so all of them count.")
                .sayIf(
                        power.basis() == PowerTest.Basis.BEAM,
                        "The standard asks for all sunlight on a plane that faces the sun. Here only the beam was measured, so"
                                + " this is another figure, larger by the share that the beam is of all light.")
                .sayIf(
                        power.basis() == PowerTest.Basis.NOTHING,
                        "Without measured sunlight watts are as they were that day and cannot be compared with another"
                                + " cooker\u2019s.")
                .build();
    }

    private static Section conditions(PowerTest power) {
        return Section.headed("What the standard asks (from memory)")
                .add(Columns.<TestCondition.Check>none()
                        .with("asked", c -> ConditionWords.asked(c.condition()))
                        .with("found", ConditionWords::found)
                        .with("", ConditionWords::verdict)
                        .table(power.checks()))
                .build();
    }

    private Section protocol(ProtocolTest protocol) {
        SectionBuilder out = Section.headed("Losses and optics")
                .say("The pan loses " + words.perKelvin(protocol)
                        + (protocol.fromCooling()
                                ? ", by its cooling without sun."
                                : ", by the slope of the line above."));
        protocol.factors()
                .ifPresent(f -> out.say("Of the light through the dish\u2019s aperture "
                        + TrialFlawWords.percent(f.opticalFactor())
                        + " heats the pan; loss factor " + FigureFormat.fixed(f.lossFactor(), 1)
                        + "\u00a0W/(m²\u00a0K) of the pan\u2019s outside, time constant "
                        + FigureFormat.fixed(f.timeConstantSeconds() / MINUTE, 0)
                        + "\u00a0min (protocol of Mullick, Kandpal and Kumar 1991, from memory)."));
        return out.build();
    }

    private Section flaws(TrialFit fit) {
        List<FlawLikelihood> worth = fit.flaws().stream()
                .filter(f -> f.probability() >= WORTH_A_LINE)
                .toList();
        SectionBuilder out = Section.headed("What is wrong with it")
                .figure(TrialWords.NO_FLAW, TrialFlawWords.percent(fit.noFlaw()));
        worth.forEach(f -> out.figure(flaws.sized(f), TrialFlawWords.percent(f.probability())));
        fit.pairs().stream()
                .limit(PAIRS)
                .filter(p -> p.probability() >= WORTH_A_LINE)
                .forEach(p -> out.figure(pair(p), TrialFlawWords.percent(p.probability())));
        return out.say(apart(fit))
                .say(words.next().map(next -> "To tell them apart: " + next + "."))
                .build();
    }

    private static String pair(FlawPair pair) {
        return "both " + TrialFlawWords.plain(pair.first()) + " and " + TrialFlawWords.plain(pair.second());
    }

    private static Optional<String> apart(TrialFit fit) {
        if (fit.likeliest().isEmpty() || fit.rivals().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of("These logs cannot tell \u201c"
                + TrialFlawWords.plain(fit.flaws().get(0).flaw()) + "\u201d from "
                + String.join(
                        " or ",
                        fit.rivals().stream()
                                .map(f -> "\u201c" + TrialFlawWords.plain(f.flaw()) + "\u201d")
                                .toList())
                + ".");
    }

    private Section howSure() {
        SectionBuilder out = Section.headed(Cautions.HOW_SURE)
                .say(
                        "Heat counts as the standard counts it: that of the water alone, with 4186\u00a0J/(kg\u00a0K). Intervals"
                                + " of 95\u00a0% follow Student\u2019s law.");
        result.fit()
                .ifPresent(fit ->
                        out.say("128 cookers drawn from the doubts of the scenario are heated by the light of each"
                                + " log; probabilities are by Bayes\u2019 rule with Gaussian laws fitted to them. Before the trial nothing"
                                + " wrong counts as 1 in 2, one flaw as 4 in 10, two as 1 in 10, all flaws alike. The curves fit the"
                                + " logs to "
                                + FigureFormat.fixed(fit.curves().get(0).scatter(), 1) + "\u00a0K"
                                + (fit.scatter() > 1.5
                                        ? "; they scatter " + FigureFormat.fixed(fit.scatter(), 1)
                                                + " times as much as thermometers and gusts explain."
                                        : ".")));
        return out.say(result.notes().stream()
                        .map((TrialNote note) -> TrialWords.note(note))
                        .distinct()
                        .toList())
                .build();
    }
}
