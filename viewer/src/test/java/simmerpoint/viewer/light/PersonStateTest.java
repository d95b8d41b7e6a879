package simmerpoint.viewer.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.units.UnitSystem;

/** The person in the light, without a window. */
class PersonStateTest {
    private static final double FAR = 20;

    private final LightFound found = LightScenes.found();
    private final LightChoice choice = new LightChoice();

    private PersonState state() {
        return PersonState.of(found, choice, -FAR, FAR);
    }

    private void put(double place) {
        choice.personProperty().set(Optional.of(place));
    }

    @Test
    void atFirstItStandsAsNearAsIsSafe() {
        PersonState state = state();
        assertEquals(found.light().people(), state.person().gap(), 1e-9);
        assertTrue(
                state.person().light().together() < 1.05 * Hazard.DISCOMFORT.wattsPerSquareMetre(),
                state.person().toString());
        assertTrue(
                state.words(UnitSystem.METRIC).contains("from the focus, on the sun\u2019s side"),
                state.words(UnitSystem.METRIC));
    }

    @Test
    void nearTheFocusItIsBurntAndTheWordsSaySo() {
        double focus = state().person().towardsSun() - state().person().gap() - 0.18;
        put(focus + 0.1);
        String words = state().words(UnitSystem.METRIC);
        assertTrue(words.startsWith("At the focus. "), words);
        assertTrue(words.contains("Skin burns there within seconds. Dark clothes catch fire"), words);
        put(focus - 3);
        words = state().words(UnitSystem.INCH);
        assertTrue(words.contains("\u00a0in from the focus, on the dish\u2019s side"), words);
        assertTrue(words.endsWith("No light of the mirrors reaches this person."), words);
    }

    @Test
    void thePanKeepsLightFromWhoStandsBehindIt() {
        double near = state().person().towardsSun() - 0.7;
        put(near);
        double without = state().person().light().together();
        choice.panTakenProperty().set(false);
        double with = state().person().light().together();
        assertTrue(with < without, with + " and " + without);
    }

    @Test
    void itStaysWithinThePicture() {
        put(100);
        assertEquals(2, PersonState.of(found, choice, -1, 2).person().towardsSun(), 0);
    }

    @Test
    void stepsAreFiveCentimetresOrTwoInches() {
        assertEquals(0.05, PersonState.step(UnitSystem.METRIC, false), 1e-12);
        assertEquals(0.25, PersonState.step(UnitSystem.METRIC, true), 1e-12);
        assertEquals(0.0508, PersonState.step(UnitSystem.INCH, false), 1e-12);
    }
}
