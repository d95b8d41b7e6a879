package simmerpoint.viewer.yard;

import java.util.Map;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.SideView.Place;
import simmerpoint.units.UnitSystem;

/** What a hand does in the yard, as edits of the scenario: takes hold, moves, lets go or takes back; or steps by keys. */
final class Hand {
    private final YardEdits edits;
    private Optional<Handle> held = Optional.empty();
    private Scenario start;
    private Place from;
    private UnitSystem system;
    private Map<String, String> last = Map.of();

    Hand(YardEdits edits) {
        this.edits = edits;
    }

    /** What is held. */
    Optional<Handle> held() {
        return held;
    }

    /** Whether anything is held. */
    boolean holds() {
        return held.isPresent();
    }

    /** Takes hold of something at a place of the yard. */
    void take(Handle handle, Scenario now, Place place, UnitSystem units) {
        if (holds()) {
            letGo();
        }
        held = Optional.of(handle);
        start = now;
        from = place;
        system = units;
        last = Map.of();
        edits.begin();
    }

    /** Moves what is held; to round values if {@code snaps}. */
    void move(Place to, boolean snaps) {
        if (!holds()) {
            return;
        }
        Handle handle = held.get();
        double value = Moves.moved(handle, start, from, to);
        double wanted = Moves.allowed(handle, snaps ? Moves.snapped(handle, value, system) : value);
        Map<String, String> change = Moves.change(handle, start, wanted, system);
        boolean untouched = last.isEmpty() && Math.abs(value - Moves.value(handle, start)) < 1e-12;
        if (!untouched && !change.equals(last)) {
            last = change;
            edits.change(change);
        }
    }

    /** Leaves it where it is. */
    void letGo() {
        held = Optional.empty();
        edits.end();
    }

    /** Puts it back where it was. */
    void cancel() {
        held = Optional.empty();
        edits.cancel();
    }

    /** One step by a key, upwards or downwards in value. */
    void step(Handle handle, Scenario now, int way, boolean large, UnitSystem units) {
        double value = Moves.value(handle, now) + way * Moves.step(handle, units, large);
        edits.begin();
        edits.change(Moves.change(handle, now, Moves.allowed(handle, Moves.snapped(handle, value, units)), units));
        edits.end();
    }

    /** Which way a key moves a handle's value: things go the way the arrow points. 0 for other keys. */
    static int way(Handle handle, KeyCode code) {
        int right = handle == Handle.SLIDE ? -1 : 1;
        return switch (code) {
            case UP -> handle == Handle.SLIDE ? 0 : 1;
            case DOWN -> handle == Handle.SLIDE ? 0 : -1;
            case RIGHT -> handle == Handle.PULL_BACK || handle == Handle.SLIDE ? right : 0;
            case LEFT -> handle == Handle.PULL_BACK || handle == Handle.SLIDE ? -right : 0;
            default -> 0;
        };
    }
}
