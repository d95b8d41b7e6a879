package simmerpoint.study.pan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.balance.CookingModel;
import simmerpoint.heat.balance.HeatLevelModel;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.uncertainty.LikelyRange;

/** Borders on a made curve of watts, 900·exp(−(x ÷ 0.15)²) W on the underside: all places have a closed form (derived here). */
class BorderSearchTest {
    private static final double WIDTH = 0.15;
    private static final double MOST = 900;

    private static AbsorbedLight hill(double x) {
        return AbsorbedLight.onUnderside(MOST * Math.exp(-x * x / (WIDTH * WIDTH)));
    }

    private static HeatLevelModel levels() {
        CookingSetup k = CookingSetup.usual(new Pan(0.24, 0.11, new Finish("black", 0.9)));
        return new HeatLevelModel(new CookingModel(k.vessel(), k.contents(), k.around()), k.levels());
    }

    private static double[] grid() {
        double[] x = new double[41];
        Arrays.setAll(x, k -> -0.4 + 0.02 * k);
        return x;
    }

    private static double place(double watts) {
        return WIDTH * Math.sqrt(Math.log(MOST / watts));
    }

    @Test
    void bordersLieWhereTheWattsAreThoseAtWhichTheLevelBegins() {
        HeatLevelModel levels = levels();
        List<LevelBorder> borders = new BorderSearch(grid(), BorderSearchTest::hill, levels).borders();
        List<HeatLevel> down = List.of(HeatLevel.FAST_BOIL, HeatLevel.BOIL, HeatLevel.SIMMER, HeatLevel.KEEP_WARM);
        List<HeatLevel> reached = down.stream()
                .filter(l -> levels.likelyThresholdWatts(l, AbsorbedLight.onUnderside(1)) < MOST)
                .toList();
        assertEquals(2 * reached.size(), borders.size());
        for (int k = 0; k < reached.size(); k++) {
            LevelBorder border = borders.get(reached.size() + k);
            LikelyRange watts = levels.thresholdWatts(reached.get(k), AbsorbedLight.onUnderside(1));
            assertEquals(reached.get(k), border.before());
            assertEquals(place(watts.likely()), border.offsetMetres(), 1e-5);
            assertEquals(place(watts.low()), border.highMetres(), 1e-5);
            if (watts.high() < MOST) {
                assertEquals(place(watts.high()), border.lowMetres(), 1e-5);
            }
            LevelBorder mirrored = borders.get(reached.size() - 1 - k);
            assertEquals(-border.offsetMetres(), mirrored.offsetMetres(), 1e-5);
            assertEquals(reached.get(k), mirrored.after());
        }
    }

    @Test
    void anEndThatIsNowhereIsInfinite() {
        HeatLevelModel levels = levels();
        LikelyRange boil = levels.thresholdWatts(HeatLevel.BOIL, AbsorbedLight.onUnderside(1));
        double most = 0.5 * (boil.likely() + boil.high());
        DoubleFunction<AbsorbedLight> low = x -> hill(x).times(most / MOST);
        LevelBorder boils = new BorderSearch(grid(), low, levels)
                .borders().stream()
                        .filter(b -> b.after() == HeatLevel.BOIL)
                        .findFirst()
                        .orElseThrow();
        assertEquals(Double.POSITIVE_INFINITY, boils.highMetres());
        assertTrue(boils.lowMetres() < boils.offsetMetres());
    }

    @Test
    void levelLightHasNoBorders() {
        assertEquals(List.of(), new BorderSearch(grid(), x -> AbsorbedLight.onUnderside(300), levels()).borders());
    }
}
