package simmerpoint.safety.places;

import java.util.Optional;
import java.util.stream.Stream;
import simmerpoint.geometry.Vec;
import simmerpoint.safety.field.Yard;
import simmerpoint.scenario.Scenario;

/** Which way the lit side of a thing looks. Level ways are those of the yard, see {@link Yard}. */
public enum Facing {
    /** Whichever way gets most. */
    WORST("worst"),
    /** Like a table. */
    UP("up"),
    /** Like the underside of a shelf. */
    DOWN("down"),
    /** Level, towards the sun. */
    SUN("towards the sun"),
    /** Level, away from the sun: a wall on the sun's side, seen from the dish. */
    AWAY("away from the sun"),
    /** Level, to the left of whoever faces the sun. */
    LEFT("left"),
    /** Level, to the right of whoever faces the sun. */
    RIGHT("right"),
    /** Towards the focus of the dish. */
    FOCUS("towards the focus");

    private final String word;

    Facing(String word) {
        this.word = word;
    }

    /** Its name in a scenario. */
    public String word() {
        return word;
    }

    /** All names. */
    public static Stream<String> words() {
        return Stream.of(values()).map(Facing::word);
    }

    /** The one with that name, which there is. */
    public static Facing named(String word) {
        return Stream.of(values())
                .filter(facing -> facing.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no facing " + word));
    }

    /** The way the lit side looks at a place of the yard, of length 1; empty for the worst. */
    public Optional<Vec> normal(Scenario scenario, Vec place) {
        return switch (this) {
            case WORST -> Optional.empty();
            case UP -> Optional.of(new Vec(0, 0, 1));
            case DOWN -> Optional.of(new Vec(0, 0, -1));
            case SUN -> Optional.of(new Vec(1, 0, 0));
            case AWAY -> Optional.of(new Vec(-1, 0, 0));
            case LEFT -> Optional.of(new Vec(0, -1, 0));
            case RIGHT -> Optional.of(new Vec(0, 1, 0));
            case FOCUS -> {
                Vec way = Yard.of(scenario)
                        .place(new Vec(0, 0, scenario.dish().focalLengthMetres()))
                        .minus(place);
                yield way.length() > 0 ? Optional.of(way.times(1 / way.length())) : Optional.empty();
            }
        };
    }
}
