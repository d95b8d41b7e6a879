package simmerpoint.answer.aim;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.ShellWords;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.setup.Aim;
import simmerpoint.study.aim.AimLead;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.aim.MisaimDirection;

/** How exactly to aim: the tolerance each way, on a sighting stick too. */
record AimTableSection(AimResult result, FigureFormat figures, TargetWords words) {
    Section section() {
        return Section.headed("How exactly to aim")
                .say(hand())
                .add(table())
                .say("Angles are counted from dead on, the shadow\u2019s tip from the foot of a stick "
                        + figures.length(result.plan().stickMetres())
                        + " long that stands "
                        + SightingStick.where(
                                ShellWords.leaning(result.scenario(), figures).isPresent())
                        + ". Range searched: up to "
                        + figures.degrees(AimTolerance.RANGE) + ", the sun above the horizon, the " + words.noun()
                        + " clear of the mirror.")
                .say(asAimed())
                .build();
    }

    private AimTolerance tolerance() {
        return result.tolerance();
    }

    private String hand() {
        String loss = SkyWords.loss(tolerance().lossShare());
        Optional<Estimate> turn = tolerance().turn();
        if (turn.isEmpty()) {
            return "Whichever way the dish is turned off the sun by hand, less than " + loss + " are lost.";
        }
        double angle = turn.get().value();
        String text = "By hand the dish must be turned at the sun to " + SkyWords.angle(angle) + tightest(angle)
                + ", or more than "
                + loss
                + " are lost" + SightingStick.words(result.plan().stickMetres(), angle, figures);
        boolean stays = result.scenario().aim().panCarriedBy() == Aim.PanCarrier.STAND;
        Optional<Estimate> drift = tolerance().drift();
        if (stays && drift.isPresent() && drift.get().value() > angle) {
            return text + " The sun may drift by " + SkyWords.angle(drift.get().value())
                    + " before as much is lost: with the " + words.noun()
                    + " on its own stand, a turn moves the spot farther than a drift.";
        }
        return text;
    }

    /** How exactly to aim, in a sentence. */
    String tightestTurn() {
        return tolerance()
                .turn()
                .map(turn -> "Aim to within " + SkyWords.angle(turn.value()) + tightest(turn.value())
                        + SightingStick.words(result.plan().stickMetres(), turn.value(), figures))
                .orElseGet(this::hand);
    }

    /** Which way it is, where another way allows twice as much. */
    private String tightest(double angle) {
        List<MisaimDirection> turns = Stream.of(MisaimDirection.values())
                .filter(MisaimDirection::isTurn)
                .toList();
        boolean uneven = turns.stream()
                .anyMatch(way ->
                        tolerance().angle(way).map(Estimate::value).orElse(Double.POSITIVE_INFINITY) > 2 * angle);
        return turns.stream()
                .filter(way -> uneven
                        && tolerance()
                                .angle(way)
                                .filter(a -> a.value() == angle)
                                .isPresent())
                .findFirst()
                .map(way -> " at the tightest (" + SkyWords.off(way) + ")")
                .orElse("");
    }

    private Item table() {
        double stick = result.plan().stickMetres();
        return Columns.<MisaimDirection>none()
                .with("what is off", SkyWords::off)
                .with(
                        SkyWords.loss(tolerance().lossShare()) + "\nlost at",
                        way -> tolerance().angle(way).map(SkyWords::angle).orElse("never"))
                .with("shadow\noff by", way -> cell(way, angle -> figures.length(AimLead.shadow(stick, angle), 2)))
                .table(List.of(MisaimDirection.values()));
    }

    private String cell(MisaimDirection way, DoubleFunction<String> words) {
        return tolerance().angle(way).map(angle -> words.apply(angle.value())).orElse("");
    }

    private Optional<String> asAimed() {
        if (result.scenario().aim().isDeadOn()) {
            return Optional.empty();
        }
        return Optional.of(
                "As the scenario has it (" + AimOffWords.how(result.times(), figures) + ") the " + words.noun()
                        + " gets " + figures.plainWatts(result.asAimed().useful()) + ", "
                        + AimOffWords.compared(result.times(), figures) + ".");
    }
}
