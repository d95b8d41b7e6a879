package simmerpoint.study.aim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.TraceOptions;

class FirstLightTest {
    private static final TraceOptions OPTIONS = TraceOptions.defaults().withThreads(2);

    /** A smooth dish with next to no blur, and the sun a point. */
    private static final Map<String, String> SHARP = Map.of(
            "dish.surface.cut", "smooth",
            "mirror.panel-tilt", "0 mrad",
            "mirror.slope-error", "1e-3 mrad",
            "mirror.beam-spread", "0 mrad",
            "mirror.wide-share", "0",
            "sun.shape.half-angle", "1e-3 mrad");

    private static FirstLight of(Map<String, String> changes) throws ScenarioException {
        return FirstLight.of(ScenarioReader.builtIn().with(changes), OPTIONS).orElseThrow();
    }

    /**
     * Of a paraboloid of focal length f every ray runs straight to the focus: so holes at r leave spots 2r·|f − z|/(f − r²/4f) apart on a
     * card at z. Each is the hole made smaller by the same share across and by r²/2f(f − r²/4f) more than that outwards (its
     * derivative by r), so that about √0.8 of the mean of both widths holds four fifths (closed forms, derived here; some hundred rays a
     * hole are good to a few hundredths of it).
     */
    @Test
    void spotsOfThePerfectDish() throws ScenarioException {
        FirstLight light = of(SHARP);
        double f = 0.8;
        double r = light.holes().apartMetres() / 2;
        assertEquals(0.75 * 0.6, r, 0.01);
        assertEquals(0.1, light.holes().diameterMetres(), 1e-12);
        assertEquals(f, light.meet().likely(), 1e-4);
        for (FirstLight.OnCard card : light.cards()) {
            double shrunk = Math.abs(f - card.distanceMetres()) / (f - r * r / (4 * f));
            assertEquals(2 * r * shrunk, card.apart().likely(), 0.01 * 2 * r * shrunk + 1e-4);
            double longer = 1 + r * r / (2 * f * (f - r * r / (4 * f)));
            assertEquals(0.1 * shrunk * Math.sqrt(0.8 * longer), card.width().likely(), 0.006 * shrunk + 1e-4);
        }
    }

    /** Rays that pass two holes of a tenth of a metre: their watts by area, beam and reflectance (all four in closed form). */
    @Test
    void wattsAreThoseOfTheHoles() throws ScenarioException {
        FirstLight light = of(SHARP);
        double watts = 2 * Math.PI * 0.05 * 0.05 * 850 * 0.85 * (1 - 0.03) * (1 - 0.02);
        assertEquals(watts, light.watts().likely(), 0.1 * watts);
        assertTrue(light.watts().low() < watts && watts < light.watts().high());
    }

    /** Panels glued crooked by chance move the place where the spots meet, and more of that moves it more. */
    @Test
    void crookedPanelsWidenTheRange() throws ScenarioException {
        Map<String, String> crooked = new HashMap<>(SHARP);
        crooked.put("dish.surface.cut", "flat-rings");
        crooked.put("mirror.panel-tilt", "2 mrad");
        double little = of(crooked).meet().width();
        crooked.put("mirror.panel-tilt", "10 mrad");
        double much = of(crooked).meet().width();
        assertTrue(little > 0.002 && much > 2.5 * little, little + " m, then " + much + " m");
    }
}
