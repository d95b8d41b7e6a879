package simmerpoint.answer.aim;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.quantities.OneLine;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimTimes;
import simmerpoint.study.paired.PairedTrace;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.units.UnitSystem;

/** The answer to "how exactly must I aim, and how long before I must aim again?". */
public final class AimAnswer {
    private AimAnswer() {}

    /** The answer for {@code result}, in the units of {@code system}. */
    public static Answer of(AimResult result, UnitSystem system) {
        return of(result, system, "the command pan tells where.");
    }

    /** The same for a reader who has the answer about the pan's place beside it, not a command line. */
    public static Answer withoutHint(AimResult result, UnitSystem system) {
        return of(result, system, "the part on the pan\u2019s place tells where.");
    }

    private static Answer of(AimResult result, UnitSystem system, String panHint) {
        return new Answer(
                OneLine.of(result.scenario().title()),
                List.of(
                        AimAgainSection.of(result, system, panHint),
                        AimTableSection.of(result, system),
                        new Section(Cautions.HEADING, cautions(result)),
                        sure(result)));
    }

    /** When to aim again in a few words, for a place where one line is seen all the time. */
    public static String brief(AimTimes times) {
        return AimAgainSection.brief(times);
    }

    private static List<Item> cautions(AimResult result) {
        PairedTrace deadOn = result.deadOn();
        Estimate peak = deadOn.trace().spot().peakFlux();
        String noun = TargetWords.of(result.scenario().target()).noun();
        List<Item> items = new ArrayList<>();
        items.add(new Item.Caution(
                "Aim by the shadow of a stick. Never look along the dish\u2019s axis or along the stick at the sun, and never "
                        + "into the mirror to see whether it is aimed."));
        items.add(new Item.Caution("While the dish turns or waits for the sun, light lands beside the " + noun
                + ": on handles, stand, and whatever is behind. Keep all that burns away from there."));
        items.addAll(Cautions.items(
                Math.max(peak.value() + 2 * peak.standardError(), MaximumFlux.of(deadOn.trace())), noun));
        return items;
    }

    private static Section sure(AimResult result) {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Sentence(
                "\u00b1 is one standard error from sampling; differences come from the same rays and are surer than "
                        + "the figures themselves. Beam and the sun\u2019s height stay those of the aiming, the sky is "
                        + "clear, nothing but the sun moves; how well a hand aims is not in here."));
        if (result.scenario().built().mirror().panelTiltRadians() > 0) {
            items.add(new Item.Sentence("Panels glued askew fall otherwise in every dish built with the same care: "
                    + "another seed is another such dish."));
        }
        AimResult.RunInfo run = result.run();
        items.add(new Item.Sentence(FigureFormat.count(run.rays()) + " rays dead on, "
                + FigureFormat.count(run.curveRays()) + " for each point of the curves, "
                + FigureFormat.count(run.mapRays())
                + " for each of the " + FigureFormat.count(run.aims()) + " aims of the maps, whose light was cast "
                + FigureFormat.count(run.casts()) + " times; seed "
                + result.options().seed() + "."));
        return new Section(Cautions.HOW_SURE, items);
    }
}
