package simmerpoint.viewer.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.drawing.cooker.YardPlace;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.setup.SideView.Place;
import simmerpoint.units.UnitSystem;

/** The hand's inverse is held against the forward drawing: what was taken hold of comes to lie where the hand went. */
class MovesTest {
    private static final double EXACT = 1e-9;

    private static Scenario moved(String elevation, Map<String, String> more) throws ScenarioException {
        Map<String, String> all = new java.util.HashMap<>(more);
        all.put("sun.elevation", elevation);
        return Yards.example(all);
    }

    private static Place pan(Scenario scenario) {
        return new YardPlace(scenario).of(scenario.setup().target().origin());
    }

    @ParameterizedTest
    @ValueSource(strings = {"12°", "50°", "90°"})
    void aPanPulledAlongTheAxisFollowsTheHand(String elevation) throws ScenarioException {
        Scenario before = moved(elevation, Map.of("stand.pull-back", "2 cm", "stand.slide", "7 cm"));
        Scenario after = moved(elevation, Map.of("stand.pull-back", "9 cm", "stand.slide", "7 cm"));
        assertEquals(0.09, Moves.moved(Handle.PULL_BACK, before, pan(before), pan(after)), EXACT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"12°", "50°", "90°"})
    void aRaisedPanFollowsTheHand(String elevation) throws ScenarioException {
        Scenario before = moved(elevation, Map.of("stand.raise", "-1 cm"));
        Scenario after = moved(elevation, Map.of("stand.raise", "5 cm"));
        assertEquals(0.05, Moves.moved(Handle.RAISE, before, pan(before), pan(after)), EXACT);
        assertEquals(pan(before).towardsSunMetres(), pan(after).towardsSunMetres(), EXACT);
    }

    @Test
    void aSlidDishFollowsTheHandAndThePanStays() throws ScenarioException {
        Scenario before = moved("40°", Map.of("stand.slide", "3 cm"));
        Scenario after = moved("40°", Map.of("stand.slide", "11 cm"));
        Place from = new YardPlace(before).mount();
        Place to = new YardPlace(after).mount();
        assertTrue(to.towardsSunMetres() < from.towardsSunMetres(), "back is away from the sun");
        assertEquals(0.11, Moves.moved(Handle.SLIDE, before, from, to), EXACT);
        assertEquals(pan(before).towardsSunMetres(), pan(after).towardsSunMetres(), EXACT);
        assertEquals(pan(before).heightMetres(), pan(after).heightMetres(), EXACT);
    }

    @Test
    void aTurnedDishFollowsTheHand() throws ScenarioException {
        Scenario before = moved("50°", Map.of("aim.turn.up", "1°", "aim.mount", "10 cm"));
        Scenario after = moved("50°", Map.of("aim.turn.up", "-4°", "aim.mount", "10 cm"));
        Vec rim = new Vec(0.6, 0, 0.1125);
        Place from = new YardPlace(before).of(before.setup().dish().toParent(rim));
        Place to = new YardPlace(after).of(after.setup().dish().toParent(rim));
        assertEquals(Math.toRadians(-4), Moves.moved(Handle.TURN, before, from, to), EXACT);
    }

    @Test
    void theSunFollowsTheHand() throws ScenarioException {
        Scenario before = moved("50°", Map.of("aim.mount", "10 cm"));
        Scenario after = moved("31°", Map.of("aim.mount", "10 cm"));
        Place from = new YardPlace(before).of(new Vec(0, 0, 1.4));
        Place to = new YardPlace(after).of(new Vec(0, 0, 1.4));
        assertEquals(Math.toRadians(31), Moves.moved(Handle.SUN, before, from, to), EXACT);
    }

    @ParameterizedTest
    @EnumSource(Handle.class)
    void whatIsTypedIsReadAsTheSameValue(Handle handle) throws ScenarioException {
        Scenario example = Yards.example(Map.of());
        for (UnitSystem system : UnitSystem.values()) {
            double step = Moves.step(handle, system, true);
            double value = Moves.snapped(handle, Moves.value(handle, example) + 1.37 * step, system);
            Scenario read = Yards.example(Moves.change(handle, example, value, system));
            assertEquals(value, Moves.value(handle, read), 1e-7);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "TURN | aim.turn.up | -6.3° | Dish turned down 6.3°",
                "TURN | aim.turn.up | 2° | Dish turned up 2°",
                "TURN | aim.turn.up | 0° | Dish not turned",
                "RAISE | stand.raise | -3 cm | Lowered 3 cm",
                "RAISE | stand.raise | 0 cm | Raise 0 cm",
                "SLIDE | stand.slide | -2.5 cm | Slid forward 2.5 cm",
                "PULL_BACK | stand.pull-back | 4 cm | Pull-back 4 cm",
                "PULL_BACK | stand.pull-back | -4 cm | Pull-back \u22124 cm, towards the dish"
            })
    void whereThingsStandIsSaidInWordsNotSigns(Handle handle, String key, String value, String words)
            throws ScenarioException {
        String said = Moves.words(handle, Yards.example(Map.of(key, value)), UnitSystem.METRIC);
        assertEquals(words, said.replace('\u00a0', ' '));
    }

    @Test
    void valuesStayWhereTheKeyAllowsThem() {
        assertEquals(10, Moves.allowed(Handle.PULL_BACK, 12), EXACT);
        assertEquals(Math.toRadians(90), Moves.allowed(Handle.SUN, 2), EXACT);
        assertTrue(Moves.allowed(Handle.SUN, -1) > 0);
        assertEquals(Math.toRadians(-30), Moves.allowed(Handle.TURN, -1), EXACT);
    }

    /** A sun of place and day is moved by the clock; the minute found is the nearest, so the height fits to a minute's 0.25°. */
    @Test
    void theClockMovesASunOfPlaceAndDay() throws ScenarioException {
        Map<String, String> there = Map.of(
                "place.latitude", "47.3° N",
                "place.longitude", "8.5° E",
                "place.zone", "UTC+1",
                "when.date", "2026-06-21",
                "when.time", "09:00");
        Scenario morning = ScenarioOfPlace.read(there);
        double wanted = Math.toRadians(30);
        Map<String, String> change = Moves.change(Handle.SUN, morning, wanted, UnitSystem.METRIC);
        Map<String, String> then = new java.util.HashMap<>(there);
        then.putAll(change);
        Scenario after = ScenarioOfPlace.read(then);
        assertEquals(30, Math.toDegrees(after.sun().elevationRadians()), 0.25);
        assertTrue(change.get("when.time").compareTo("12:00") < 0, "still in the morning: " + change);
        Map<String, String> noon = Moves.change(Handle.SUN, morning, Math.toRadians(89), UnitSystem.METRIC);
        assertTrue(noon.get("when.time").startsWith("12:"), "as high as it climbs: " + noon);
    }
}
