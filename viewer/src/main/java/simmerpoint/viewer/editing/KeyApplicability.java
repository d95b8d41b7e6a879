package simmerpoint.viewer.editing;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.cut.Cuts;
import simmerpoint.scenario.keys.CutKeys;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.viewer.document.DocumentState;

/** Which keys have a meaning for the cut, sun, sky and vessel that are chosen. What is typed or wrong is always shown. */
final class KeyApplicability {
    private static final Set<String> KITCHEN = Set.of("pan", "air", "heat-levels");

    private KeyApplicability() {}

    /** Why the key has no meaning now; empty if it has one. */
    static Optional<String> whyNot(Key key, DocumentState state) {
        if (state.pending().typed().containsKey(key.path())
                || state.wrongAt(key.path()).isPresent()) {
            return Optional.empty();
        }
        Optional<String> stranger = stranger(key, state);
        if (stranger.isPresent() || state.typed(key.path()).isPresent()) {
            return stranger;
        }
        Optional<String> zone = ZoneKeys.zoneOf(key.path())
                .filter(name -> !state.hasSection(ZoneKeys.section(name)))
                .map(name -> "only where the scenario has the zone " + name);
        if (zone.isPresent()) {
            return zone;
        }
        return vessel(key, state).or(() -> surface(key, state)).or(() -> outdoors(key, state));
    }

    private static Optional<String> stranger(Key key, DocumentState state) {
        Optional<Key> chooser = Keys.chooserOf(key.section()).flatMap(Keys::find);
        if (chooser.isEmpty() || key.onlyFor().isEmpty()) {
            return Optional.empty();
        }
        return ChosenWord.word(state, chooser.get())
                .filter(word -> !key.onlyFor().contains(word))
                .map(word -> "only with the " + KeyLabels.label(chooser.get()) + " "
                        + String.join(" or ", new TreeSet<>(key.onlyFor())));
    }

    private static Optional<String> vessel(Key key, DocumentState state) {
        boolean disc = state.hasSection("plane");
        if (disc && KITCHEN.contains(key.section())) {
            return Optional.of("only with a pan, not with a bare disc");
        }
        boolean ofDisc = key.section().equals("plane");
        return !disc && ofDisc ? Optional.of("only with a bare disc instead of the pan") : Optional.empty();
    }

    /** What a surface does not have cannot be said of it. */
    private static Optional<String> surface(Key key, DocumentState state) {
        String cut = ChosenWord.word(state, "dish.surface.cut");
        if (!CutKeys.inapplicable(cut).contains(key.path())) {
            return Optional.empty();
        }
        if (CutKeys.isOfRibs(key.path())) {
            return Optional.of("only with ribs, as of flat-rings and bent-strips");
        }
        if (cut.equals("smooth")) {
            return Optional.of("not with a smooth dish");
        }
        boolean shell =
                Cuts.find(cut).filter(kind -> kind.has(CutTrait.OWN_SIZE)).isPresent();
        return Optional.of(
                shell ? "not with an " + cut + ", whose own measures are enough" : "the file with the panels says it");
    }

    private static Optional<String> outdoors(Key key, DocumentState state) {
        boolean timed = state.hasSection("when");
        String section = key.section();
        if (timed && section.equals("sun")) {
            return Optional.of("place, day and time say where the sun stands, and the sky how strong it is");
        }
        if (!timed && section.equals("when")) {
            return Optional.of("only with the sun of a day and place");
        }
        boolean placeless = section.equals("sky") && !state.hasSection("place") && !timed;
        return placeless ? Optional.of("only with a place") : Optional.empty();
    }
}
