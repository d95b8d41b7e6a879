package simmerpoint.heat.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.heat.HeatLevelThresholds;
import simmerpoint.heat.PanContents;
import simmerpoint.heat.Pans;
import simmerpoint.heat.Surroundings;
import simmerpoint.uncertainty.LikelyRange;

class HeatLevelModelTest {
    private static final AbsorbedLight PATTERN = new AbsorbedLight(0.85, 0.05, 0.05, 0.05);
    private static final List<HeatLevel> ABOVE_COOL =
            List.of(HeatLevel.KEEP_WARM, HeatLevel.SIMMER, HeatLevel.BOIL, HeatLevel.FAST_BOIL);

    private static HeatLevelModel levels(CookingModel cooking) {
        return new HeatLevelModel(cooking, HeatLevelThresholds.USUAL);
    }

    @Test
    void levelChangesAtTheWattsWhereItBegins() {
        for (boolean lidOn : new boolean[] {true, false}) {
            HeatLevelModel levels = levels(Pans.tea(2, lidOn));
            HeatLevel below = HeatLevel.TOO_COOL;
            for (HeatLevel level : ABOVE_COOL) {
                double watts = levels.likelyThresholdWatts(level, PATTERN);
                assertEquals(below, levels.level(PATTERN.scaledTo(watts - 0.01)), "below " + watts + " W");
                assertEquals(level, levels.level(PATTERN.scaledTo(watts + 0.01)), "above " + watts + " W");
                assertEquals(0, levels.spareWatts(level, PATTERN.scaledTo(watts)), 1e-6);
                below = level;
            }
        }
    }

    /** What the level says is what the water does: settles at the border's temperature, or makes the border's steam. */
    @Test
    void bordersAreWhatTheWaterDoes() {
        CookingModel cooking = Pans.tea(2, true);
        HeatLevelModel levels = levels(cooking);
        AbsorbedLight warm = PATTERN.scaledTo(levels.likelyThresholdWatts(HeatLevel.KEEP_WARM, PATTERN));
        AbsorbedLight simmer = PATTERN.scaledTo(levels.likelyThresholdWatts(HeatLevel.SIMMER, PATTERN));
        AbsorbedLight boil = PATTERN.scaledTo(levels.likelyThresholdWatts(HeatLevel.BOIL, PATTERN));
        AbsorbedLight fast = PATTERN.scaledTo(levels.likelyThresholdWatts(HeatLevel.FAST_BOIL, PATTERN));
        assertEquals(60, cooking.settlingCelsius(warm).likely(), 1e-5);
        // Water boiling test, version 4 (from memory): a simmer stays within 6 K of local boiling.
        assertEquals(
                cooking.boilingCelsius() - 6, cooking.settlingCelsius(simmer).likely(), 1e-5);
        double area = Math.PI * 0.12 * 0.12;
        assertEquals(6 * area, cooking.steamRates(boil).boiled().likely(), 1e-6);
        assertEquals(20 * area, cooking.steamRates(fast).boiled().likely(), 1e-6);
    }

    @Test
    void coolestLevelBeginsAtNothing() {
        HeatLevelModel levels = levels(Pans.tea(2, true));
        assertEquals(0, levels.thresholdWatts(HeatLevel.TOO_COOL, PATTERN).high());
        assertEquals(HeatLevel.TOO_COOL, levels.level(AbsorbedLight.NOTHING));
        assertThrows(IllegalArgumentException.class, () -> levels.spareWatts(HeatLevel.TOO_COOL, PATTERN));
    }

    /** Without a lid a simmer takes 2 to 5 times the power (four published kitchen measurements, our reading). */
    @Test
    void lidSavesMostOfTheSimmer() {
        double lid = levels(Pans.tea(2, true)).likelyThresholdWatts(HeatLevel.SIMMER, PATTERN);
        double open = levels(Pans.tea(2, false)).likelyThresholdWatts(HeatLevel.SIMMER, PATTERN);
        assertTrue(open / lid > 2 && open / lid < 5, open + " W without, " + lid + " W with a lid");
    }

    /**
     * A lidded pan of 1 to 5 litres simmers on 100 to 250 W (losses of 1.3 to 3 W/K by 80 K, derived); the standard for
     * electric hobs allows no more than some 240 W per kg for it (IEC 60350-2, from memory).
     */
    @Test
    void liddedPanSimmersOnALowFlame() {
        CookingModel indoors = new CookingModel(Pans.teaPan(true), new PanContents(2, 20), Pans.KITCHEN);
        double watts = levels(indoors).likelyThresholdWatts(HeatLevel.SIMMER, PATTERN);
        assertTrue(watts > 100 && watts < 250, watts + " W");
    }

    @Test
    void windTakesMoreAndMountainsLess() {
        PanContents two = new PanContents(2, 20);
        double still = levels(new CookingModel(Pans.teaPan(true), two, Surroundings.outdoors(20, 0, 0)))
                .likelyThresholdWatts(HeatLevel.BOIL, PATTERN);
        double windy = levels(new CookingModel(Pans.teaPan(true), two, Surroundings.outdoors(20, 4, 0)))
                .likelyThresholdWatts(HeatLevel.BOIL, PATTERN);
        double high = levels(new CookingModel(Pans.teaPan(true), two, Surroundings.outdoors(20, 0, 3000)))
                .likelyThresholdWatts(HeatLevel.BOIL, PATTERN);
        assertTrue(windy > 1.2 * still && high < still, still + " W still, " + windy + " windy, " + high + " high");
    }

    @Test
    void spreadOfLossesIsSpreadOfLevels() {
        HeatLevelModel levels = levels(Pans.tea(2, true));
        LikelyRange watts = levels.thresholdWatts(HeatLevel.BOIL, PATTERN);
        assertTrue(watts.low() < 0.9 * watts.likely() && watts.high() > 1.1 * watts.likely(), watts.toString());
        HeatLevelRange answer = levels.levelWithSpread(PATTERN.scaledTo(watts.likely() + 1));
        assertEquals(HeatLevel.BOIL, answer.likely());
        assertEquals(HeatLevel.SIMMER, answer.lowest());
        assertTrue(answer.highest().compareTo(HeatLevel.BOIL) >= 0);
    }

    @Test
    void tableCanBeChanged() {
        CookingModel cooking = Pans.tea(2, true);
        HeatLevelThresholds brisk = new HeatLevelThresholds(75, 3, 10, 30);
        for (HeatLevel level : ABOVE_COOL) {
            assertTrue(
                    new HeatLevelModel(cooking, brisk).likelyThresholdWatts(level, PATTERN)
                            > levels(cooking).likelyThresholdWatts(level, PATTERN),
                    level.toString());
        }
        assertThrows(IllegalArgumentException.class, () -> new HeatLevelThresholds(60, 6, 6, 6));
        assertThrows(IllegalArgumentException.class, () -> new HeatLevelThresholds(60, Double.NaN, 6, 20));
    }

    /** A dry wall and a lid lose part of their light, so light there is worth less than light on the underside. */
    @Test
    void lightOnTheWallIsWorthLess() {
        HeatLevelModel levels = levels(Pans.tea(1, true));
        double below = levels.likelyThresholdWatts(HeatLevel.SIMMER, AbsorbedLight.onUnderside(1));
        double wall = levels.likelyThresholdWatts(HeatLevel.SIMMER, new AbsorbedLight(0.5, 0, 0.5, 0));
        double lid = levels.likelyThresholdWatts(HeatLevel.SIMMER, new AbsorbedLight(0.9, 0, 0, 0.1));
        assertTrue(wall > below && lid > below, below + ", " + wall + ", " + lid + " W");
    }
}
