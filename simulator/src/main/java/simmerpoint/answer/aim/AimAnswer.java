package simmerpoint.answer.aim;

import java.util.stream.Stream;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.quantities.OneLine;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimTimes;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.units.UnitSystem;

/** The answer to "how exactly must I aim, and how long before I must aim again?". */
public final class AimAnswer {
    private static final String BY_SHADOW =
            "Aim by the shadow of a stick. Never look along the dish\u2019s axis or along the stick at the "
                    + "sun, and never into the mirror to see whether it is aimed.";

    private AimAnswer() {}

    /** The answer for {@code result}, in the units of {@code system}. */
    public static Answer of(AimResult result, UnitSystem system) {
        return of(result, system, "the command pan tells where.");
    }

    /** The same in a dozen lines. */
    public static Answer brief(AimResult result, UnitSystem system) {
        FigureFormat figures = new FigureFormat(system);
        TargetWords words = TargetWords.of(result.scenario().target());
        AimAgainSection again = new AimAgainSection(result, figures, words, "");
        SectionBuilder out = Section.headed(brief(result.times()));
        if (AimOffWords.brings(result.times())) {
            out.say(again.shell())
                    .say(again.onAverage())
                    .say(again.when())
                    .say(AimOffWords.sentence(result.times(), figures))
                    .say(again.aheadInShort())
                    .say(new AimTableSection(result, figures, words).tightestTurn());
        } else {
            out.say(again.nothing());
        }
        out.caution(BY_SHADOW);
        return ShortAnswer.of(
                result.scenario().title(),
                out,
                hottest(result),
                Cautions.at(words.noun()),
                words.isPan()
                        ? NextCommand.line(NextCommand.PAN, NextCommand.DAY, NextCommand.BUDGET)
                        : NextCommand.line(NextCommand.BUDGET));
    }

    /** The same for a reader who has the answer about the pan's place beside it, not a command line. */
    public static Answer withoutHint(AimResult result, UnitSystem system) {
        return of(result, system, "the part on the pan\u2019s place tells where.");
    }

    private static Answer of(AimResult result, UnitSystem system, String panHint) {
        FigureFormat figures = new FigureFormat(system);
        TargetWords words = TargetWords.of(result.scenario().target());
        return new Answer(
                OneLine.of(result.scenario().title()),
                Stream.of(
                                Stream.of(new AimAgainSection(result, figures, words, panHint).section()),
                                Stream.of(new AimTableSection(result, figures, words))
                                        .filter(table -> AimOffWords.brings(result.times()))
                                        .map(AimTableSection::section),
                                result
                                        .firstLight()
                                        .map(light -> new FirstLightSection(light, result.scenario(), figures, words)
                                                .section())
                                        .stream(),
                                Stream.of(cautions(result, words.noun()), sure(result)))
                        .flatMap(part -> part)
                        .toList());
    }

    /**
     * When to aim again and for what loss in a few words, for a place where one line is seen all the time; for a dish that is
     * aimed off, that it must be turned first.
     */
    public static String brief(AimTimes times) {
        if (!AimOffWords.brings(times)) {
            return "Aimed dead on, the "
                    + TargetWords.of(times.scenario().target()).noun() + " gains nothing";
        }
        String interval = SkyWords.minutes(times.deadOnInterval().minutes());
        boolean again = times.minutes().isPresent();
        if (AimOffWords.isOff(times)) {
            return "Aimed off now: aim anew, then " + (again ? "every " : "not for ") + interval;
        }
        return again
                ? "Aim again every " + interval + " or lose "
                        + SkyWords.loss(times.plan().lossShare())
                : "For " + interval + " the dish need not be aimed again";
    }

    private static Section cautions(AimResult result, String noun) {
        return Section.headed(Cautions.HEADING)
                .caution(BY_SHADOW)
                .caution("While the dish turns or waits for the sun, light lands beside the " + noun
                        + ": on handles, stand, and whatever is behind. Keep anything that burns away from there.")
                .addAll(Cautions.items(hottest(result), noun))
                .build();
    }

    private static double hottest(AimResult result) {
        Estimate peak = result.deadOn().trace().spot().peakFlux();
        return Math.max(
                peak.value() + 2 * peak.standardError(),
                MaximumFlux.of(result.deadOn().trace()));
    }

    private static Section sure(AimResult result) {
        AimResult.RunInfo run = result.run();
        return Section.headed(Cautions.HOW_SURE)
                .say(
                        "\u00b1 is one standard error from sampling; differences come from the same rays and are surer than "
                                + "the figures themselves. Beam and the sun\u2019s height stay those of the aiming, the sky is "
                                + "clear, nothing but the sun moves; how well a hand aims is not in here.")
                .sayIf(
                        result.scenario().built().hasTiltedPanels(),
                        "No two dishes are glued alike: another seed is another dish built with the same care.")
                .say(FigureFormat.count(run.rays()) + " rays dead on, " + FigureFormat.count(run.curveRays())
                        + " for each point of the curves" + (result.maps().isEmpty() ? "" : maps(run)) + "; seed "
                        + result.options().seed() + ".")
                .build();
    }

    private static String maps(AimResult.RunInfo run) {
        return ", " + FigureFormat.count(run.mapRays()) + " for each of the " + FigureFormat.count(run.aims())
                + " aims of the maps, whose light was cast " + FigureFormat.count(run.casts()) + " times";
    }
}
