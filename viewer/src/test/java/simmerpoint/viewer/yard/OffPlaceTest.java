package simmerpoint.viewer.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.units.UnitSystem;

class OffPlaceTest {
    private static final double FOCUS_HEIGHT = 1.25;

    private final Scenario example = ScenarioReader.builtIn().scenario().withAim(Aim.PERFECT);

    private String words(double raisedMetres) {
        return new OffPlace(UnitSystem.METRIC)
                .words(example.withStand(new Stand(0, 0, raisedMetres, 0)), FOCUS_HEIGHT + raisedMetres)
                .replace('\u00a0', ' ');
    }

    /** The example may be cooked at from 40 to 130 cm. */
    @Test
    void saysWhereNobodyCanCook() {
        assertEquals("", words(0));
        assertEquals("Pan raised 3 cm", words(0.03));
        assertEquals(
                "Pan raised 15 cm. The pan stands too high to cook at, above 130 cm (140 cm above the ground).",
                words(0.15));
        assertEquals(
                "Pan lowered 90 cm. The pan stands too low to cook at, below 40 cm (35 cm above the ground).",
                words(-0.9));
    }

    @Test
    void saysWhatIsMovedAndWhichWay() {
        Scenario moved = example.withStand(new Stand(-0.04, 0.02, 0, -0.01));
        assertEquals(
                "Pan 4 cm nearer the dish, 1 cm to the left; dish slid back 2 cm",
                new OffPlace(UnitSystem.METRIC).words(moved, FOCUS_HEIGHT).replace('\u00a0', ' '));
    }
}
