package simmerpoint.answer.safety;

import java.util.List;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.safety.places.LookedAt;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.safety.risk.Stuff;

/**
 * What light falls on things at named places, and what to do, in words.
 *
 * @param places that somebody asks about
 * @param figures in the reader's units
 */
record PlaceWords(List<LookedAt> places, FigureFormat figures) {
    private static final double SOON = 1.5;

    Section section() {
        return Section.headed("Things in the light")
                .say(places.stream().map(this::sentence).toList())
                .sayIf(
                        places.stream().anyMatch(LookedAt::smoulders),
                        "Shield what is in the light with bare metal, shiny side out and an air gap behind it, or move it"
                                + " out of the light. Metal in the light gets hot: it burns hands and what touches it.")
                .build();
    }

    String sentence(LookedAt at) {
        String light = at.standing().together() < 1 && at.taken().together() < 1
                ? "lies in the shade"
                : "gets " + figures.roughFlux(at.standing().together()) + " with the pan in place, "
                        + figures.roughFlux(at.taken().together()) + " without it";
        return ShortAnswer.capital(at.name()) + " (" + made(at) + "): " + light + "; " + harm(at) + ".";
    }

    private String made(LookedAt at) {
        return at.stuff().word() + ", " + figures.length(at.place().z(), 2) + " above the ground";
    }

    private static String harm(LookedAt at) {
        if (at.stuff() == Stuff.STONE) {
            return at.worst() > Hazard.PAIN.wattsPerSquareMetre() ? "it gets too hot to touch" : "it stays as it is";
        }
        if (at.harmed().isEmpty()) {
            return at.smoulders() ? "left for long it can smoulder" : "no harm is known from so much light";
        }
        double seconds = at.harmed().getAsDouble();
        String within = at.stuff().isSooner(at.worst()) || seconds < SOON
                ? "within about 2\u00a0seconds"
                : "within " + HeatWords.time(seconds);
        return switch (at.stuff()) {
            case SKIN -> "it is burnt " + within;
            case WOOD -> "it chars " + within;
            default -> "it catches fire " + within;
        };
    }
}
