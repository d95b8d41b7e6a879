package simmerpoint.answer.aim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.setup.Aim;
import simmerpoint.study.aim.AimLead;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.aim.MisaimDirection;
import simmerpoint.units.UnitSystem;

/** How exactly to aim: the tolerance each way, on a sighting stick too. */
final class AimTableSection {
    private final AimResult result;
    private final AimTolerance tolerance;
    private final FigureFormat figures;
    private final TargetWords words;
    private final List<Item> items = new ArrayList<>();

    private AimTableSection(AimResult result, UnitSystem system) {
        this.result = result;
        tolerance = result.tolerance();
        figures = new FigureFormat(system);
        words = TargetWords.of(result.scenario().target());
    }

    static Section of(AimResult result, UnitSystem system) {
        AimTableSection section = new AimTableSection(result, system);
        section.build();
        return new Section("How exactly to aim", section.items);
    }

    private void build() {
        say(hand());
        items.add(table());
        say("Angles are counted from dead on, the shadow\u2019s tip from the foot of a stick "
                + figures.length(result.plan().stickMetres())
                + " long that stands on the dish along its axis. Looked at: up to "
                + figures.degrees(AimTolerance.RANGE) + ", the sun above the horizon, the " + words.noun()
                + " clear of the mirror.");
        asAimed().ifPresent(this::say);
    }

    private void say(String text) {
        items.add(new Item.Sentence(text));
    }

    private String hand() {
        String loss = SkyWords.loss(tolerance.lossShare());
        Optional<Estimate> turn = tolerance.turn();
        if (turn.isEmpty()) {
            return "Whichever way the dish is turned off the sun by hand, less than " + loss + " are lost.";
        }
        double angle = turn.get().value();
        String text = "By hand the dish must be turned at the sun to " + SkyWords.angle(angle) + tightest(angle)
                + ", or more than "
                + loss
                + " are lost: on a stick " + figures.length(result.plan().stickMetres())
                + " long the shadow\u2019s tip must come within "
                + figures.length(AimLead.shadow(result.plan().stickMetres(), angle), 2) + " of its foot.";
        boolean stays = result.scenario().aim().panCarriedBy() == Aim.PanCarrier.STAND;
        Optional<Estimate> drift = tolerance.drift();
        if (stays && drift.isPresent() && drift.get().value() > angle) {
            return text + " The sun may drift by " + SkyWords.angle(drift.get().value())
                    + " before as much is lost: with the " + words.noun()
                    + " on its own stand, a turn moves the spot farther than a drift.";
        }
        return text;
    }

    /** Which way it is, where another way allows twice as much. */
    private String tightest(double angle) {
        List<MisaimDirection> turns = Stream.of(MisaimDirection.values())
                .filter(MisaimDirection::isTurn)
                .toList();
        boolean uneven = turns.stream()
                .anyMatch(
                        way -> tolerance.angle(way).map(Estimate::value).orElse(Double.POSITIVE_INFINITY) > 2 * angle);
        return turns.stream()
                .filter(way -> uneven
                        && tolerance.angle(way).filter(a -> a.value() == angle).isPresent())
                .findFirst()
                .map(way -> " at the tightest (" + SkyWords.off(way) + ")")
                .orElse("");
    }

    private Item table() {
        List<List<String>> rows = new ArrayList<>();
        for (MisaimDirection way : MisaimDirection.values()) {
            rows.add(row(way));
        }
        String lost = SkyWords.loss(tolerance.lossShare()) + "\nlost at";
        return new Item.Table(List.of("what is off", lost, "shadow\noff by", "the sun\ntakes"), rows);
    }

    private List<String> row(MisaimDirection way) {
        Optional<Estimate> angle = tolerance.angle(way);
        if (angle.isEmpty()) {
            return List.of(SkyWords.off(way), "never", "", "");
        }
        double radians = angle.get().value();
        String takes =
                way.isTurn() ? "" : SkyWords.minutes(radians / result.way().radiansPerMinute());
        return List.of(
                SkyWords.off(way),
                SkyWords.angle(angle.get()),
                figures.length(AimLead.shadow(result.plan().stickMetres(), radians), 2),
                takes);
    }

    private Optional<String> asAimed() {
        Aim aim = result.scenario().aim();
        boolean off = aim.turnUpRadians() != 0
                || aim.turnSideRadians() != 0
                || aim.driftUpRadians() != 0
                || aim.driftSideRadians() != 0;
        if (!off) {
            return Optional.empty();
        }
        return Optional.of(
                "As the scenario has it (" + AimOffWords.how(result.times(), figures) + ") the " + words.noun()
                        + " gets " + figures.plainWatts(result.asAimed().absorbed()) + ", "
                        + AimOffWords.compared(result.times(), figures) + ".");
    }
}
