package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.heat.PanCover;
import simmerpoint.heat.ThermalPan;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;

/** Pots in a second skin, kettles, and what a bare plane stands on. */
class PanShapesTest {
    private static final String DISH = "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\n";

    private static Scenario read(String rest) throws ScenarioException {
        return ScenarioReader.parse("t.yaml", DISH + rest, Path.of("")).scenario();
    }

    private static TraceResult trace(String rest) throws ScenarioException {
        return TraceStudy.run(read(rest), TraceOptions.defaults().withRays(1L << 13), Progress.NONE);
    }

    @Test
    void aCoverAndAnOpeningAreRead() throws ScenarioException {
        ThermalPan plain = vessel("pan: {diameter: 24 cm}");
        assertEquals(Optional.empty(), plain.cover());
        assertEquals(1, plain.openShare(), 0);
        ThermalPan bowl = vessel("pan: {diameter: 24 cm, cover: glass bowl, opening: 12 cm}");
        assertEquals(Optional.of(PanCover.GLASS_BOWL), bowl.cover());
        assertEquals(0.25, bowl.openShare(), 1e-12);
    }

    private static ThermalPan vessel(String rest) throws ScenarioException {
        return read(rest).cooking().orElseThrow().vessel();
    }

    /** Its light is what the cover lets through of all of it, and what a fryer asks is not answered. */
    @Test
    void aCoverTakesItsShareOfTheLight() throws ScenarioException {
        TraceResult bare = trace("pan: {diameter: 24 cm}");
        TraceResult bag = trace("pan: {diameter: 24 cm, cover: bag}");
        double share = PanCover.BAG.transmittance();
        assertEquals(
                share * bare.ledger().absorbed().value(),
                bag.ledger().absorbed().value(),
                1e-9);
        assertTrue(bare.plate().isPresent() && bag.plate().isEmpty());
    }

    @Test
    void thePlateIsWorkedOutOnce() throws ScenarioException {
        TraceResult bare = trace("pan: {diameter: 24 cm}");
        assertSame(
                bare.plate().orElseThrow(),
                bare.withAimAgain(Optional.empty()).plate().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pan: {diameter: 24 cm, cover: bag, lid: off}|pan.cover: a second skin needs a closed pan",
                "pan: {diameter: 24 cm, opening: 30 cm}|pan.opening: 30 cm is wider than the pan",
                "plane: {disc: 20 cm} + stand: {grate: {bars: 3}}|stand.grate.bars: a bare disc has no stand",
                "plane: {disc: 20 cm} + stand: {arm: {width: 25 mm}}|stand.arm.width: a bare disc has no stand"
            })
    void refusesWhatDoesNotGoTogether(String text, String words) {
        ScenarioException e = assertThrows(ScenarioException.class, () -> read(text.replace(" + ", "\n")));
        assertTrue(e.getMessage().contains(words), e.getMessage());
    }
}
