package simmerpoint.answer.pan;

import java.util.Optional;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeightWords;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.heat.HeatLevel;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.pan.BestPlace;
import simmerpoint.study.pan.LevelStretch;
import simmerpoint.study.pan.MoveStudy.Move;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.pan.SimmerPlace;
import simmerpoint.uncertainty.LikelyRange;

/** Where to put the pan for a simmer, for most heat, and what else can be done. */
record PanPlaceSection(PanResult result, FigureFormat figures, MoveWords lengths) {
    Section section() {
        SectionBuilder out = Section.headed("Where to put the pan");
        result.simmer()
                .ifPresentOrElse(place -> out.say(simmer(place)).say(fineness(place)), () -> out.say(noSimmer()));
        return out.say(cover())
                .say(mostHeat())
                .say(new FiveCentimetreRule(result, figures, lengths).sentences())
                .build();
    }

    /** The one thing to do: how to come to a simmer, or why there is none. */
    String recommendation() {
        return result.simmer()
                .map(place -> "For a simmer "
                        + lengths.inShort(place.move(), place.position().offsetMetres()) + ": "
                        + figures.plainWatts(place.position().cookingPower()) + ", hot spot "
                        + figures.roughFlux(place.position().hottestFlux()) + " instead of "
                        + figures.roughFlux(here().hottestFlux()) + ". Keep within "
                        + lengths.margin(
                                place.stretch().toMetres() - place.stretch().fromMetres())
                        + outOfReach(place.move(), place.position().offsetMetres())
                                .map(words -> ". There it stands " + words)
                                .orElse("")
                        + ".")
                .orElseGet(this::noSimmer);
    }

    private PanPosition here() {
        return result.here();
    }

    /** Whether one can cook where the pan then stands. */
    private Optional<String> outOfReach(Move move, double offset) {
        return new HeightWords(result.base().scenario().heights(), figures).outOfReach(result.height(move, offset));
    }

    private String simmer(SimmerPlace place) {
        PanPosition there = place.position();
        String already = here().level() == HeatLevel.SIMMER ? "Where it stands it simmers already. " : "";
        return already + "For a simmer with the least hot spot "
                + lengths.instruction(place.move(), there.offsetMetres())
                + ": " + figures.plainWatts(there.cookingPower())
                + " go into the water there" + LikelyWords.behind(place.likely())
                + ", and the hottest spot of underside and wall gets "
                + figures.plainFlux(new Estimate(there.hottestFlux(), 0.05 * there.hottestFlux())) + " ("
                + figures.plainFlux(new Estimate(here().hottestFlux(), 0.02 * here().hottestFlux()))
                + " where it stands). In the file: stand: {"
                + place.move().key() + ": " + fileLength(place) + "}."
                + outOfReach(place.move(), there.offsetMetres())
                        .map(words -> " But there it stands " + words
                                + ", and no place for a simmer along these moves is in reach.")
                        .orElse("");
    }

    private String fileLength(SimmerPlace place) {
        double present = place.move().of(result.base().scenario().stand());
        return lengths.typed(present + place.position().offsetMetres());
    }

    private String fineness(SimmerPlace place) {
        LevelStretch stretch = place.stretch();
        double offset = place.position().offsetMetres();
        return "How exactly to set it: " + side(place, offset - stretch.fromMetres(), stretch.before(), -1) + "; "
                + side(place, stretch.toMetres() - offset, stretch.after(), 1) + ".";
    }

    private String side(SimmerPlace place, double distance, Optional<HeatLevel> beyond, int sign) {
        String far = lengths.alone(distance) + " " + MoveWords.way(place.move(), sign);
        return beyond.map(level -> far + " the level changes to \u201c" + LevelWords.of(level) + "\u201d")
                .orElse("up to at least " + far + " it still simmers");
    }

    private String noSimmer() {
        boolean cool = result.moves().stream()
                .flatMap(m -> m.stretches().stream())
                .allMatch(s -> s.level().compareTo(HeatLevel.SIMMER) < 0);
        LikelyRange begins = result.heat().beginsWithPower(HeatLevel.SIMMER);
        if (cool) {
            return "It never simmers: at the best place along the three moves the cooking power is "
                    + figures.plainWatts(result.best().position().cookingPower())
                    + ", and this pan, lid and wind need "
                    + range(begins)
                    + " of it for a simmer. A bigger or better mirror, a lid, a darker or smaller pan or shelter from "
                    + "the wind would help.";
        }
        return "No place along the three moves gives a simmer that could be set by hand: cover part of the mirror instead.";
    }

    private static String range(LikelyRange watts) {
        return FigureFormat.rounded(watts.low(), 2) + "\u00a0to\u00a0" + FigureFormat.rounded(watts.high(), 2)
                + "\u00a0W";
    }

    private Optional<String> cover() {
        if (here().level().compareTo(HeatLevel.BOIL) < 0) {
            return Optional.empty();
        }
        return result.openShareForSimmer()
                .map(open -> "Or leave the pan where it stands and cover part of the mirror: with about "
                        + 5 * Math.round(20 * (1 - open))
                        + "\u00a0% of it covered, evenly all round, the water simmers.");
    }

    /** Where it gets most, if a move there is worth it, in short. */
    Optional<String> moreHeat() {
        BestPlace best = result.best();
        return Optional.of(best).filter(place -> place.isWorthAMove(here())).map(place -> {
            PanPosition there = place.position();
            return "For most heat " + lengths.instruction(place.move(), there.offsetMetres()) + ": "
                    + figures.plainWatts(there.cookingPower()) + " instead of "
                    + figures.plainWatts(here().cookingPower()) + " as given"
                    + outOfReach(place.move(), there.offsetMetres())
                            .map(words -> "; there it stands " + words)
                            .orElse("")
                    + ".";
        });
    }

    private String mostHeat() {
        BestPlace best = result.best();
        if (!best.isWorthAMove(here())) {
            return "For most heat leave the pan where it stands: no single move brings more than "
                    + figures.percent(BestPlace.WORTH) + " above that.";
        }
        PanPosition there = best.position();
        return "For most heat " + lengths.instruction(best.move(), there.offsetMetres()) + ": "
                + figures.plainWatts(there.cookingPower()) + " go into the water" + LikelyWords.behind(best.likely())
                + " instead of " + figures.plainWatts(here().cookingPower()) + zone(best) + ". There "
                + figures.percent(there.wallShare()) + " of the focused light falls on the wall."
                + outOfReach(best.move(), there.offsetMetres())
                        .map(words -> " There it stands " + words + ".")
                        .orElse("");
    }

    /** How finely that place must be set. */
    private String zone(BestPlace best) {
        double at = best.position().offsetMetres();
        return " (" + lengths.alone(Math.min(at - best.fromMetres(), best.toMetres() - at))
                + " either way costs less than " + figures.percent(BestPlace.ZONE) + ")";
    }
}
