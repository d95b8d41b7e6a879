package simmerpoint.heat.losses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.PanCover;
import simmerpoint.heat.Pans;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;

class CoveredFaceTest {
    private static final double HOT = 373.15;

    private static ThermalPan in(PanCover cover) {
        return Pans.teaPan(true).with(Optional.of(cover), 1);
    }

    private static PanFace lid(PanCover cover, double wind) {
        return PanFace.level(PanFace.Kind.LID, in(cover), 0.93, new Surroundings(20, wind, 0, 0.5, false), 1);
    }

    /**
     * Loss through one cover of glass above a level plate by S. A. Klein's formula for collectors, as in Duffie and Beckman, Solar
     * Engineering of Thermal Processes, section 6.4 (from memory; their example of 6.6 W/(m² K) comes out as 6.64), with the
     * convection that our cover has outside. It is said to be good to 0.3 W/(m² K); ours to 8 %.
     */
    @ParameterizedTest
    @CsvSource({"0", "1", "4"})
    void aGlassAboveALidLosesWhatACollectorLoses(double wind) {
        PanFace face = lid(PanCover.GLASS_BOWL, wind);
        PanFace bare = lid(PanCover.GLASS_BOWL, wind);
        CoveredFace covered = new CoveredFace(
                face,
                PanCover.GLASS_BOWL,
                new PanFace(
                        PanFace.Kind.LID,
                        bare.area(),
                        bare.stillLength(),
                        bare.windLength(),
                        PanCover.GLASS_BOWL.emissivity(),
                        bare.radiantKelvin(),
                        bare.surroundings(),
                        1,
                        Optional.empty()));
        double skin = covered.skinKelvin(HOT);
        double outside = covered.perArea(HOT).convectionWatts() / (skin - 293.15);
        double klein = klein(HOT, 293.15, outside, 0.93, PanCover.GLASS_BOWL.emissivity());
        assertEquals(klein, face.at(HOT).dry() / face.area() / 80, 0.08 * klein);
    }

    /** Their example, 45°, is met with C times 1 − 0.000051 · 45²; a level plate has C = 520. */
    private static double klein(double plate, double air, double wind, double black, double glass) {
        double f = (1 + 0.089 * wind - 0.1166 * wind * black) * 1.07866;
        double e = 0.430 * (1 - 100 / plate);
        double convection = 1 / (1 / (520 / plate * Math.pow((plate - air) / (1 + f), e)) + 1 / wind);
        double radiation = 5.67e-8
                * (plate + air)
                * (plate * plate + air * air)
                / (1 / (black + 0.00591 * wind) + (1 + f + 0.133 * black) / glass - 1);
        return convection + radiation;
    }

    /** A cover costs light and saves heat: Fresnel lets (1 − R)/(1 + R) through, 0.8989 for an index of 1.6 (derived). */
    @ParameterizedTest
    @EnumSource(PanCover.class)
    void coversSaveHeatMostInWind(PanCover cover) {
        Surroundings windy = new Surroundings(20, 3, 0, 0.5, false);
        double bare = losses(Pans.teaPan(true), windy);
        double covered = losses(in(cover), windy);
        assertTrue(covered < 0.6 * bare, cover + ": " + covered + " of " + bare + " W");
        double calm = losses(in(cover), Pans.KITCHEN) / losses(Pans.teaPan(true), Pans.KITCHEN);
        assertTrue(covered / bare < calm && calm < 0.85, cover + " in calm air " + calm);
        assertEquals(0.8989, PanCover.BAG.transmittance(), 1e-4);
        assertTrue(PanCover.GLASS_BOWL.transmittance() < PanCover.BAG.transmittance());
    }

    private static double losses(ThermalPan pan, Surroundings around) {
        return new PanLosses(pan, 2, around, LossFactors.LIKELY)
                .at(95, AbsorbedLight.NOTHING)
                .total();
    }

    /** No warmer than the air, nothing is lost; as hot as it, coefficients stay finite. */
    @Test
    void nothingIsLostAtTheAirsTemperature() {
        PanFace face = lid(PanCover.BAG, 1);
        assertEquals(0, face.at(293.15).dry(), 1e-4);
        assertTrue(face.convectionCoefficient(293.15) > 0 && face.radiationCoefficient(293.15) > 0);
    }

    /** The narrow opening of a kettle leaks as much less as it is smaller; open, its shoulder loses as a lid does. */
    @Test
    void aKettleLosesLittleSteam() {
        ThermalPan pan = Pans.teaPan(true);
        ThermalPan kettle = pan.with(Optional.empty(), 0.1);
        assertEquals(0.1 * steam(pan), steam(kettle), 1e-9);
        double wide = steam(Pans.teaPan(false));
        double narrow = steam(Pans.teaPan(false).with(Optional.empty(), 0.1));
        assertEquals(0.1 * wide, narrow, 1e-9);
        assertTrue(losses(Pans.teaPan(false).with(Optional.empty(), 0.1), Pans.KITCHEN)
                < 0.6 * losses(Pans.teaPan(false), Pans.KITCHEN));
    }

    private static double steam(ThermalPan pan) {
        return new PanLosses(pan, 2, Pans.KITCHEN, LossFactors.LIKELY)
                .at(95, AbsorbedLight.NOTHING)
                .steamWatts();
    }
}
