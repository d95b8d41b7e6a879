package simmerpoint.study.likely;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.mirror.MaterialCatalogue;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.doubts.ScenarioDoubts;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.uncertainty.Quantiles;

/**
 * Cookers that others built and measured, written from what is published, with typical doubts for all the rest: what was measured
 * lies in the range of four in five. The files name what is published and what is our choice.
 */
class MeasuredCookersTest {
    private static LikelyRange likely(String file) throws Exception {
        Path path = Path.of("src/test/resources/simmerpoint/measured", file);
        CheckedScenario read = ScenarioReader.read(path);
        return LikelyStudy.run(read, LikelyStudy.FOR_SHARES, TraceOptions.defaults(), Progress.NONE)
                .power();
    }

    /**
     * Watts as published: J. Renewable Energy 2021, article 8944722, 182 W; C. Arenas 2007, Renewable Energy 32, 257-266, 175 W;
     * H. H. Öztürk 2004, Solar Energy 77, 67-71, 78.1 W at best, and for a like cooker J. Energy Eng. 133 (2007), 53-62, 124.5 W at
     * 50 K; B. Aidan 2014, IOSR J. Applied Physics 6(5), 46-50, 96.5 W at 50 K; all from abstracts. 45 % of the 668 W on the film on a
     * shell are 301 W.
     */
    @ParameterizedTest
    @CsvSource({
        "foil-dish.yaml, 182",
        "folding-reflector.yaml, 175",
        "hand-built.yaml, 78.1",
        "hand-built.yaml, 96.5",
        "hand-built.yaml, 124.5",
        "film-on-shell.yaml, 301"
    })
    void liesAmongFourInFive(String file, double watts) throws Exception {
        LikelyRange likely = likely(file);
        assertTrue(likely.low() <= watts && watts <= likely.high(), watts + " W outside " + likely);
    }

    /** Net watts into the water of such cookers when it has a temperature. */
    private static LikelyRange at(String file, double celsius) throws Exception {
        CheckedScenario read = ScenarioReader.read(Path.of("src/test/resources/simmerpoint/measured", file));
        TraceOptions options = TraceOptions.defaults();
        CookerDraws draws = CookerDraws.of(ScenarioDoubts.of(read), LikelyStudy.FOR_SHARES, options);
        double[] watts = draws
                .each(
                        cooker -> cooker.scenario()
                                .cooking()
                                .orElseThrow()
                                .cooking()
                                .pot(cooker.losses())
                                .waterHeatWatts(celsius, FewRayTrace.absorbed(cooker, options)),
                        Progress.NONE)
                .stream()
                .flatMap(Optional::stream)
                .mapToDouble(w -> w)
                .toArray();
        return new Quantiles(watts).likelyRange();
    }

    /**
     * The low end of the same test, H. H. Öztürk 2004, abstract: 20.9 W and an efficiency of 2.8 %, from 10 to 14 o'clock with water of 60 °C
     * in the mean. Such a test runs from cold water to the boil, and the nearer it is the less goes into the water: 5 K below boiling
     * 20.9 W lie among four in five such cookers, and so do 2.8 % of the 474 W on the aperture.
     *
     * <p>What would decide it: the water's temperature when 20.9 and when 78.1 W were measured. If 78.1 W (15.7 %) was the best at the
     * mean of 60 °C, its pot took up about 160 of 474 W and caught 0.42 of the reflected light, not 0.74 as here: a slope error of the
     * whole dish of 75 mrad, where foil on card has 25. No figure for springback, slope or spot of a hand-made dish was found in print, so
     * none is put in.
     */
    @Test
    void theLowEndIsThatOfHotWater() throws Exception {
        LikelyRange hot = at("hand-built.yaml", 95);
        assertTrue(hot.low() <= 20.9 && 20.9 <= hot.high(), hot.toString());
        assertTrue(hot.low() <= 0.028 * 474 && 0.028 * 474 <= hot.high(), hot.toString());
        assertTrue(hot.high() < at("hand-built.yaml", 60).high());
    }

    /** No real build brings more than 0.7 of the light on its aperture: mirror 0.85 × pot 0.92 × caught 0.95, less what it loses. */
    @Test
    void nobodyGetsMoreThanThereIs() throws Exception {
        assertTrue(likely("film-on-shell.yaml").high() < 0.7 * 668);
    }

    /**
     * Wrinkles of foil that lies in a bowl, derived: a strip's edges at s from its middle are too long by s²/2R² of themselves, R the
     * bowl's radius of curvature, 2f ÷ cos² of the slope in the mean of both directions; a wave of slope m takes up m²/4. So the
     * mean square of the slope along the strip is w²/12R². With 15 mrad of the board, per axis.
     */
    @Test
    void foilInABowlWrinkles() {
        double f = 0.67;
        double strip = 0.30;
        double board = 0.015;
        double u = Math.pow(0.9 / (2 * f), 2);
        double meanSquare = strip * strip / 12 / (4 * f * f) / (1 + u);
        double perAxis = Math.sqrt((meanSquare + 2 * board * board) / 2);
        double slope = MaterialCatalogue.find("kitchen foil laid in a bowl")
                .orElseThrow()
                .slopeErrorRadians();
        assertEquals(perAxis, slope, 0.002);
    }
}
