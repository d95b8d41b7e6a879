package simmerpoint.heat.losses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import simmerpoint.heat.Pans;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;

class ConvectionTest {
    /** Air at 333.15 K, 1 atm: Incropera et al., table A.4 (from memory). */
    private static final double CONDUCTIVITY = 0.0287;

    private static final double VISCOSITY = 1.896e-5;
    private static final double DIFFUSIVITY = 2.69e-5;
    private static final double PRANDTL = 0.7202;

    /** Within the 2 to 3 % that Sutherland's law promises. */
    @Test
    void airIsThatOfTheTable() {
        AirFilm air = AirFilm.at(333.15, 101_325);
        assertEquals(CONDUCTIVITY, air.conductivity(), 0.03 * CONDUCTIVITY);
        assertEquals(VISCOSITY, air.viscosity(), 0.02 * VISCOSITY);
        assertEquals(DIFFUSIVITY, air.diffusivity(), 0.03 * DIFFUSIVITY);
        assertEquals(0.71, air.prandtl(), 0.03);
    }

    /** Thin air at 3000 m: viscosity and diffusivity as 1/density, conductivity unchanged (kinetic theory). */
    @Test
    void thinAirSpreadsFaster() {
        AirFilm low = AirFilm.at(333.15, 101_325);
        AirFilm high = AirFilm.at(333.15, 101_325 / 2.0);
        assertEquals(low.conductivity(), high.conductivity(), 1e-15);
        assertEquals(2, high.viscosity() / low.viscosity(), 1e-12);
        assertEquals(2, high.diffusivity() / low.diffusivity(), 1e-12);
    }

    /** Worked outside this project from Churchill and Chu 1975: wall 0.12 m high, 100 °C in air of 20 °C. */
    @Test
    void wallInStillAir() {
        AirFilm film = new AirFilm(333.15, CONDUCTIVITY, VISCOSITY, DIFFUSIVITY);
        double rayleigh = film.rayleigh(80, 0.12);
        assertEquals(7.97850e6, rayleigh, 1e-4 * 7.97850e6);
        assertEquals(29.3312, Convection.wall(rayleigh, PRANDTL), 1e-3);
        assertEquals(7.0150, Convection.wall(rayleigh, PRANDTL) * CONDUCTIVITY / 0.12, 1e-3);
        assertEquals(-80, -film.rayleigh(-80, 0.12) / film.rayleigh(1, 0.12), 1e-9);
    }

    /** Worked outside this project from Churchill and Bernstein 1977: diameter 0.2 m, 2 m/s. */
    @Test
    void wallInWind() {
        AirFilm film = new AirFilm(333.15, CONDUCTIVITY, VISCOSITY, DIFFUSIVITY);
        double reynolds = film.reynolds(2, 0.2);
        assertEquals(21_097, reynolds, 1);
        double nusselt = Convection.windAcrossCylinder(reynolds, PRANDTL);
        assertEquals(82.2686, nusselt, 1e-3);
        assertEquals(11.8056, nusselt * CONDUCTIVITY / 0.2, 1e-3);
    }

    /**
     * Wind of 2 m/s along a face: the plate rules of McAdams, 5.7 + 3.8 v, and Watmuff et al. 1977, 2.8 + 3.0 v (both from
     * memory), give 13.3 and 8.8 W/(m² K); ours for a smooth face must lie in their region or a little below.
     */
    @Test
    void lidInWindIsNearThePlateRules() {
        PanFace lid =
                PanFace.level(PanFace.Kind.LID, Pans.teaPan(true), 0.9, new Surroundings(20, 2, 0, 0.5, false), 1);
        double h = lid.convectionCoefficient(373.15);
        assertTrue(h > 8 && h < 14, "lid in wind " + h + " W/(m² K)");
    }

    /** Two plate laws of McAdams 1954 meet near 5e6; Pohlhausen's ends at 5e5. */
    @Test
    void levelFacesFollowTheirLaws() {
        assertEquals(0.54 * Math.pow(1e6, 0.25), Convection.lid(1e6), 1e-12);
        assertEquals(0.15 * 1000, Convection.lid(1e9), 1e-9);
        assertEquals(Convection.lid(1e6) / 2, Convection.underside(1e6), 1e-9);
        assertEquals(0.664 * 100 * Math.cbrt(0.7), Convection.windAlongPlate(1e4, 0.7), 1e-9);
        assertTrue(Convection.windAlongPlate(5.001e5, 0.7) >= Convection.windAlongPlate(4.999e5, 0.7));
    }

    @Test
    void stillAirAndWindAddUpToLessThanTheirSum() {
        assertEquals(Math.cbrt(2), Convection.combined(1, 1), 1e-12);
        assertEquals(7, Convection.combined(7, 0), 1e-12);
        assertEquals(7, Convection.combined(0, 7), 1e-12);
    }

    /** Stefan and Boltzmann: emissivity 0.9 from 100 to 20 °C, 612.547 W/m² (derived). */
    @Test
    void radiationIsExact() {
        PanFace lid = PanFace.level(PanFace.Kind.LID, Pans.teaPan(true), 0.9, Pans.KITCHEN, 1);
        assertEquals(612.547, lid.at(373.15).radiationWatts() / lid.area(), 1e-4 * 612.547);
        assertEquals(7.65684, lid.radiationCoefficient(373.15), 1e-3);
    }

    /** A black wall loses 14 to 15 W/(m² K) in still air and 16 to 21 in 2 m/s: sums of the lines above (derived). */
    @Test
    void blackWallLosesWhatTheSumSays() {
        ThermalPan vessel = Pans.teaPan(true);
        PanFace still = PanFace.wall(vessel, 0.11, 0.9, Pans.KITCHEN, 1);
        PanFace windy = PanFace.wall(vessel, 0.11, 0.9, new Surroundings(20, 2, 0, 0.5, false), 1);
        assertEquals(14.5, still.at(373.15).dry() / still.area() / 80, 0.5);
        assertEquals(18.5, windy.at(373.15).dry() / windy.area() / 80, 2.5);
    }

    /** Swinbank 1963: a clear sky is some 10 to 20 K colder than mild air; a roof is as warm as the air. */
    @Test
    void openSkyIsColderThanTheAir() {
        Surroundings open = Surroundings.outdoors(20, 0, 0);
        assertEquals(277.1, open.skyKelvin(), 0.1);
        assertEquals(293.15, Pans.KITCHEN.skyKelvin(), 1e-12);
        assertTrue(open.wallRadiantKelvin() > open.skyKelvin() && open.wallRadiantKelvin() < open.airKelvin());
    }
}
