package simmerpoint.answer.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.safety.parked.ParkedHour;
import simmerpoint.safety.parked.ParkedWay;
import simmerpoint.safety.places.LookedAt;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.safety.risk.Stuff;

/**
 * What light falls on things at named places, and what to do, in words.
 *
 * @param places that somebody asks about
 * @param left the dish left as it was aimed, if it was followed through a day
 * @param figures in the reader's units
 */
record PlaceWords(List<LookedAt> places, Optional<ParkedWay> left, FigureFormat figures) {
    private static final double SOON = 1.5;
    private static final double IN_SECONDS = 90;
    private static final double ON_GROUND = 0.005;

    Section section() {
        return Section.headed("Things in the light")
                .say(places.stream().map(this::sentence).toList())
                .say(leftAlone())
                .sayIf(
                        places.stream().anyMatch(LookedAt::smoulders),
                        "Shield what is in the light with bare metal, shiny side out and an air gap behind it, or move it"
                                + " out of the light. Metal in the light gets hot: it burns hands and what touches it.")
                .build();
    }

    /** What gets more light than while it is aimed, once the sun has moved on. */
    private List<String> leftAlone() {
        List<String> told = new ArrayList<>();
        for (int k = 0; k < places.size() && left.isPresent(); k++) {
            LookedAt at = places.get(k);
            left.get()
                    .worstFor(k)
                    .filter(hour -> at.isAsked())
                    .ifPresent(hour ->
                            told.add(alone(at, hour, hour.spot().things().get(places.indexOf(at)))));
        }
        return told;
    }

    private String alone(LookedAt at, ParkedHour hour, double flux) {
        LookedAt then = at.in(flux);
        return ShortAnswer.capital(at.name()) + " with the dish left alone as it was aimed: at most "
                + figures.roughFlux(flux)
                + " (" + TimeWords.date(hour.time().toLocalDate()) + ", " + TimeWords.clock(hour.time()) + "); "
                + harm(then) + ".";
    }

    String sentence(LookedAt at) {
        String light = light(at);
        return ShortAnswer.capital(at.name()) + " (" + made(at) + "): " + light + "; " + harm(at) + ".";
    }

    /** "25 seconds", "3 min". */
    static String after(double seconds) {
        return seconds < IN_SECONDS
                ? FigureFormat.rounded(Math.max(1, seconds), seconds < 10 ? 1 : 2) + "\u00a0seconds"
                : HeatWords.time(seconds);
    }

    private String light(LookedAt at) {
        double least = 1;
        if (at.standing().reflected() < least && at.taken().reflected() < least) {
            return at.worst() < least ? "lies in the shade" : "gets no light of the mirrors";
        }
        String with = figures.roughFlux(at.standing().together());
        String without = figures.roughFlux(at.taken().together());
        return with.equals(without)
                ? "gets " + with + ", with the pan in place or without it"
                : "gets " + with + " with the pan in place, " + without + " without it";
    }

    private String made(LookedAt at) {
        return at.stuff().word() + ", "
                + (at.place().z() < ON_GROUND
                        ? "on the ground"
                        : figures.length(at.place().z(), 2) + " above the ground");
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
                : "within " + after(seconds);
        return switch (at.stuff()) {
            case SKIN -> "it is burnt " + within;
            case WOOD -> "it chars " + within;
            default -> "it catches fire " + within;
        };
    }
}
