package simmerpoint.answer.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.safety.eyes.RetinalMetric;
import simmerpoint.safety.parked.ParkedHour;
import simmerpoint.safety.parked.ParkedWay;
import simmerpoint.safety.places.Facing;
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
    private static final double LEAST_SUNS = 0.05;
    private static final double ON_GROUND = 0.005;

    Section section() {
        return Section.headed("Things in the light")
                .say(places.stream().map(this::sentence).toList())
                .say(places.stream()
                        .filter(LookedAt::isAsked)
                        .flatMap(at -> eyes(at).stream())
                        .toList())
                .say(leftAlone())
                .sayIf(
                        places.stream().anyMatch(LookedAt::smoulders),
                        "Shield what is in the light with bare metal, shiny side out and an air gap behind it, or move it"
                                + " out of the light. Metal in the light gets hot: it burns hands and what touches it.")
                .build();
    }

    /** What eyes there see. */
    private Optional<String> eyes(LookedAt at) {
        double suns = at.seen().radians() / RetinalMetric.SUN;
        if (suns < LEAST_SUNS) {
            return Optional.empty();
        }
        String what = switch (at.seen().harm()) {
            case NONE -> "no harm is known from a glance";
            case AFTER_IMAGE -> "a glance leaves an after-image";
            case DAMAGE -> "one glance may damage them for good";
        };
        return Optional.of("Eyes at the " + at.name() + " see a patch of the mirror " + FigureFormat.rounded(suns, 2)
                + " suns wide and " + figures.percent(at.seen().suns()) + " as bright as the sun: " + what
                + " (an indication).");
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
                        : figures.length(at.place().z(), 2) + " above the ground")
                + (at.facing() == Facing.WORST ? "" : ", facing " + at.facing().word());
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
                : "within " + TimeWords.after(seconds);
        return switch (at.stuff()) {
            case SKIN -> "it is burnt " + within;
            case WOOD -> "it chars " + within;
            default -> "it catches fire " + within;
        };
    }
}
