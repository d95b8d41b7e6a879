package simmerpoint.viewer.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.document.ScenarioDocument;

class KeyModelTest {
    private final ScenarioDocument document = new ScenarioDocument();
    private final ObjectProperty<UnitSystem> units = new SimpleObjectProperty<>(UnitSystem.METRIC);

    private KeyModel model(String path) {
        return new KeyModel(Keys.find(path).orElseThrow(), document, units);
    }

    @Test
    void unitsChangeWhatIsShownAndNotWhatWasTyped() {
        KeyModel model = model("dish.diameter");
        assertEquals("1.20 m", model.state().shown());
        units.set(UnitSystem.INCH);
        assertEquals("47 1/4 in", model.state().shown());
        assertEquals("1.20 m", model.state().inTheFile());
        assertEquals("0.394\u00a0in to 328\u00a0ft", model.allowed());
        model.enter("47 1/4 in");
        model.enter("47.25 in");
        assertFalse(document.dirtyProperty().get());
        model.enter("48 in");
        assertEquals(Optional.of("48 in"), document.state().typed("dish.diameter"));
        units.set(UnitSystem.METRIC);
        assertEquals("1.219 m", model.state().shown());
        assertEquals("48 in", model.state().inTheFile());
        assertEquals(1.2192, document.readProperty().get().scenario().dish().diameterMetres(), 1e-12);
    }

    @Test
    void aBareNumberGetsTheUnitThatStoodThere() {
        KeyModel model = model("dish.diameter");
        model.enter("1.5");
        assertEquals("1.5 m", model.state().shown());
        units.set(UnitSystem.INCH);
        model.enter(" 40 ");
        assertEquals(Optional.of("40 in"), document.state().typed("dish.diameter"));
        model("sun.elevation").enter("33");
        assertEquals(Optional.of("33°"), document.state().typed("sun.elevation"));
        model("dish.surface.sectors").enter("30");
        assertEquals(Optional.of("30"), document.state().typed("dish.surface.sectors"));
        model("title").enter("42");
        assertEquals("42", document.titleProperty().get());
    }

    /** An inch rule has sixteenths and a jug has quarters; a fraction goes into the file as its decimal figure, which is exact. */
    @Test
    void fractionsAreTakenAndShown() {
        units.set(UnitSystem.INCH);
        KeyModel model = model("dish.diameter");
        model.enter("36 3/8");
        assertEquals(Optional.of("36.375 in"), document.state().typed("dish.diameter"));
        assertEquals("36 3/8 in", model.state().shown());
        assertEquals(
                36.375 * 0.0254, document.readProperty().get().scenario().dish().diameterMetres(), 1e-12);
        model.enter("3 ft 1/2 in");
        assertEquals("36 1/2 in", model.state().shown());
        model.enter("35½");
        assertEquals("35 1/2 in", model.state().shown());
        KeyModel water = model("pan.water");
        assertEquals("2.11 qt", water.state().shown());
        water.enter("2 1/4");
        assertEquals(Optional.of("2.25 qt"), document.state().typed("pan.water"));
        assertEquals("2 1/4 qt", water.state().shown());
        document.undo();
        assertEquals(Optional.of("2 l"), document.state().typed("pan.water"));
    }

    /** A doubt behind ± stays with the number, and in other units too. */
    @Test
    void aDoubtStays() {
        KeyModel model = model("dish.diameter");
        model.enter("1.5 ± 0.01");
        assertEquals(Optional.of("1.5 m ± 0.01"), document.state().typed("dish.diameter"));
        units.set(UnitSystem.INCH);
        assertEquals("59.06 in ± 0.39 in", model.state().shown());
        assertFalse(model.state().isWrong());
        model("mirror.reflectance").enter("0.85 ± 0.03");
        assertEquals("0.85 ± 0.03", model("mirror.reflectance").state().shown());
    }

    /** Who types 90 where 1.20 m stood means centimetres: 90 m would be 75 times as wide. */
    @Test
    void aLargeBareNumberIsInCentimetres() {
        KeyModel model = model("dish.diameter");
        model.enter("90");
        assertEquals("90 cm", model.state().shown());
        model.enter("2");
        assertEquals(Optional.of("2 cm"), document.state().typed("dish.diameter"));
        model.enter("1.1 m");
        model.enter("2");
        assertEquals(Optional.of("2 m"), document.state().typed("dish.diameter"));
        model.enter("150");
        assertEquals(Optional.of("150 cm"), document.state().typed("dish.diameter"));
    }

    @Test
    void aWrongValueStaysAsTypedWithItsSentence() {
        KeyModel model = model("dish.hub");
        model.enter("wide");
        assertEquals("wide", model.state().shown());
        assertTrue(model.state().wrong().startsWith("wide is not a length"));
        units.set(UnitSystem.INCH);
        assertEquals("wide", model.state().shown());
        assertTrue(model.state().quantity().isEmpty());
        document.undo();
        assertEquals("", model.state().wrong());
    }

    @Test
    void nothingMeansTheDefault() {
        KeyModel model = model("dish.hub");
        model.enter("");
        assertFalse(model.state().given());
        assertEquals("", model.state().shown());
        assertEquals("0 mm", model.state().otherwise());
        units.set(UnitSystem.INCH);
        assertEquals("0 in", model.state().otherwise());
        KeyModel needed = model("dish.diameter");
        needed.enter(" ");
        assertTrue(
                needed.state().wrong().contains("nothing here"), needed.state().wrong());
    }

    /** Figures of the catalogue's household mirror and the usual water of a pan show where the file says nothing. */
    @Test
    void showsWhatHoldsWhereNothingIsGiven() {
        document.change(Map.of("mirror.material", "household mirror"));
        document.reset("mirror.reflectance");
        KeyModel model = model("mirror.reflectance");
        double reflectance = document.readProperty().get().scenario().mirror().reflectance();
        assertEquals(Double.toString(reflectance), model.state().otherwise());
        assertEquals(reflectance, model.state().quantity().orElseThrow().si());
        KeyModel water = model("pan.water");
        assertEquals("to two fifths of the pan's height", water.state().otherwise());
        water.reset();
        assertTrue(water.state().otherwise().matches("[0-9.]+ l"), water.state().otherwise());
    }
}
