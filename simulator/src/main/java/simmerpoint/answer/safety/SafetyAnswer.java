package simmerpoint.answer.safety;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.pan.Pan;
import simmerpoint.quantities.OneLine;
import simmerpoint.safety.HotPlace;
import simmerpoint.safety.SafetyResult;
import simmerpoint.safety.places.LookedAt;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.units.UnitSystem;

/** The answer to "what can it set alight or blind, and when?". */
public final class SafetyAnswer {
    private final SafetyResult result;
    private final FigureFormat figures;
    private final ReachWords reach;
    private final ParkedWords parked;
    private final boolean pan;

    private SafetyAnswer(SafetyResult result, List<Hazard> hazards, UnitSystem system) {
        this.result = result;
        figures = new FigureFormat(system);
        reach = new ReachWords(result, hazards, system);
        parked = new ParkedWords(result.parked(), figures);
        pan = result.scenario().target() instanceof Pan;
    }

    /** The answer for {@code result}, in the units of {@code system}. */
    public static Answer of(SafetyResult result, UnitSystem system) {
        return of(result, List.of(Hazard.values()), system);
    }

    /** The same with tables of these hazards alone. */
    public static Answer of(SafetyResult result, List<Hazard> hazards, UnitSystem system) {
        return new SafetyAnswer(result, hazards, system).answer();
    }

    /** The same in a dozen lines. */
    public static Answer brief(SafetyResult result, List<Hazard> hazards, UnitSystem system) {
        SafetyAnswer answer = new SafetyAnswer(result, hazards, system);
        SectionBuilder out = Section.headed(answer.reach.verdict())
                .add(answer.reach.shortTable())
                .say(answer.reach.suns())
                .say(answer.hottest())
                .say(answer.asked())
                .say(answer.parked.brief());
        return ShortAnswer.of(
                result.scenario().title(),
                out,
                result.cautionFlux(),
                Cautions.AROUND,
                "With --pdf FILE: a sheet to keep with the cooker. " + NextCommand.line(NextCommand.AIM));
    }

    private Answer answer() {
        List<Section> sections = new ArrayList<>();
        sections.add(Section.headed("What it can burn")
                .say(reach.verdictWithSun())
                .say(hottest())
                .say(hands())
                .say(ground())
                .build());
        if (pan) {
            sections.add(Section.headed("With the pan in place")
                    .add(reach.table(result.standing()))
                    .build());
        }
        sections.add(Section.headed(pan ? "With the pan taken away" : "About the focus")
                .add(reach.table(result.taken()))
                .say(
                        "Axis is away from the dish, past the pan; rim is off the axis as far out as the light goes; level is"
                                + " measured along the ground from under the focus. Each is the farthest, rounded up.")
                .build());
        if (!result.places().isEmpty()) {
            sections.add(new PlaceWords(result.places(), result.parked().leftAsAimed(), figures).section());
        }
        sections.add(parked.section());
        sections.add(new GlareWords(result, figures).section());
        result.kitchen().ifPresent(kitchen -> sections.add(new KitchenWords(kitchen, result, figures).section()));
        sections.add(Section.headed(Cautions.HEADING)
                .addAll(Cautions.itemsAround(
                        result.cautionFlux(),
                        TargetWords.of(result.scenario().target()).noun()))
                .addAll(longCautions())
                .build());
        sections.add(certainty());
        return new Answer(OneLine.of(result.scenario().title()), sections);
    }

    /** The places that the scenario asks about. */
    private List<String> asked() {
        PlaceWords words = new PlaceWords(result.places(), result.parked().leftAsAimed(), figures);
        return result.places().stream()
                .filter(LookedAt::isAsked)
                .map(words::sentence)
                .toList();
    }

    private String hottest() {
        HotPlace hot = result.taken().hottest();
        String flux = figures.roughFlux(hot.light().reflected());
        if (!pan) {
            return "At its strongest the light has " + flux + ", " + height(hot) + " above the ground.";
        }
        return "Take the pan away and the light goes on behind it, up to " + flux + " at its strongest, " + height(hot)
                + " above the ground: cover the mirror before the pan is lifted.";
    }

    private String height(HotPlace hot) {
        return figures.length(hot.place().z(), 2);
    }

    private String hands() {
        return "Between dish and focus no place is safe for a hand: reach in from behind the pan, never between it and"
                + " the mirror.";
    }

    private String ground() {
        HotPlace ground = result.taken().ground();
        double reflected = ground.light().reflected();
        return reflected < 1
                ? "While it is aimed at this sun, no light of the mirrors falls on the ground."
                : "On the ground the mirrors throw at most " + figures.roughFlux(reflected) + ".";
    }

    private static List<Item> longCautions() {
        return List.of(
                new Item.Caution(
                        "This is an estimate, not a clearance. Local codes, fire rules and licensed practice come"
                                + " first. On days of fire ban or high fire danger the mirror stays covered."),
                new Item.Caution(
                        "Never look at the focus or into the mirror: it does not hurt at the time, and damage may"
                                + " show only hours later. Sunglasses are no filter for that."),
                new Item.Caution(
                        "Never leave it uncovered. The sun moves on, and the light with it. Children and animals"
                                + " stay away as far as said above, and somebody stays with the cooker."));
    }

    private Section certainty() {
        return Section.headed(Cautions.HOW_SURE)
                .say("Light of mirrors and sun together is followed with "
                        + FigureFormat.count(result.run().rays()) + " rays into cells of space; distances have two"
                        + " standard errors added and are rounded up. Seed " + result.seed() + ".")
                .say(
                        "A surface can get no more than said here however it is turned. What the pan itself throws back, and"
                                + " scattered light, are left out; a mirror bent by wind is not this mirror.")
                .say(
                        "Times to catch fire come from tests with sun-like light, good to half in the open; times to burn skin"
                                + " from tables for bare skin. Wind, damp and colour change them.")
                .build();
    }
}
