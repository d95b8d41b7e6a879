package simmerpoint.heat.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaterContactTest {
    /** 0.15 k (g β ΔT/(ν α))^⅓ worked out apart from this project with the same properties of water. */
    @ParameterizedTest
    @CsvSource({"60, 5, 685", "60, 10, 863", "60, 20, 1087", "90, 5, 867", "90, 10, 1092", "90, 20, 1376"})
    void waterMovesByItself(double celsius, double kelvin, double coefficient) {
        assertEquals(coefficient, WaterContact.freeConvection(celsius, kelvin), 0.01 * coefficient);
    }

    /** Incropera et al., example 10.1 (from memory): polished copper at 118 °C, 836 kW/m². */
    @ParameterizedTest
    @CsvSource({"18, 0.0128, 836.43e3"})
    void waterBoilsAsInTheTextbook(double excess, double constant, double flux) {
        assertEquals(flux, WaterContact.boiling(excess, constant), 1e-4 * flux);
        assertEquals(836e3, WaterContact.boiling(excess, constant), 1e3);
    }

    /** Excess at 20, 50 and 100 kW/m² by Rohsenow's law, worked out apart from this project. */
    @ParameterizedTest
    @CsvSource({
        "0.0132, 20e3, 5.35",
        "0.0132, 50e3, 7.26",
        "0.0132, 100e3, 9.14",
        "0.0080, 20e3, 3.24",
        "0.0080, 50e3, 4.40",
        "0.0080, 100e3, 5.54"
    })
    void aFewKelvinAreEnoughToBoil(double constant, double flux, double excess) {
        double found = new BrentSolver(1e-9).solve(200, t -> WaterContact.boiling(t, constant) - flux, 0, 50);
        assertEquals(excess, found, 0.006);
    }
}
