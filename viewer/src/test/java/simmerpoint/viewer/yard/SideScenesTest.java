package simmerpoint.viewer.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioReader;
import simmerpoint.setup.Stand;
import simmerpoint.study.LightSample;
import simmerpoint.units.UnitSystem;

class SideScenesTest {
    private final Scenario example = ScenarioReader.builtIn().scenario();

    private Optional<String> trouble(double raisedMetres) {
        return new SideScenes()
                .of(
                        example.withStand(new Stand(0, 0, raisedMetres, 0)),
                        LightSample.NONE,
                        Optional.empty(),
                        UnitSystem.METRIC)
                .panTrouble()
                .map(words -> words.replace('\u00a0', ' '));
    }

    /** The example's pan stands 125 cm high and may be cooked at from 40 to 130 cm. */
    @Test
    void saysWhereNobodyCanCook() {
        assertEquals(Optional.empty(), trouble(0));
        assertEquals(
                Optional.of("The pan stands too high to cook at, above 130 cm (140 cm above the ground)."),
                trouble(0.15));
        assertEquals(
                Optional.of("The pan stands too low to cook at, below 40 cm (35 cm above the ground)."), trouble(-0.9));
        assertEquals(Optional.of("The pan would stand in the ground: raise it, or raise the tripod."), trouble(-1.3));
    }
}
