package simmerpoint.heat.losses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.heat.Pans;

class DryWallFinTest {
    private static final int CELLS = 2000;

    /** Textbook efficiencies of a fin, tanh(x)/x. */
    @ParameterizedTest
    @CsvSource({"0, 1", "1e-5, 1", "0.5, 0.92423", "1, 0.76159", "2, 0.48201", "10, 0.1"})
    void efficiencyIsThatOfTheTextbook(double x, double efficiency) {
        assertEquals(efficiency, DryWallFin.efficiency(x), 1e-5);
    }

    /**
     * Heat that a wall lit by 60 W passes on, against 2000 slices of it solved one from the next: k·t·T″ = h·(T − air) − light
     * ÷ area, hot end given, far end closed. Same coefficient, apart from the closed form.
     */
    @ParameterizedTest
    @CsvSource({"0.01, 98", "0.05, 98", "0.1, 60", "0.1, 20"})
    void finMeetsSlices(double conductance, double celsius) {
        double height = 0.07;
        double light = 60;
        PanFace face = PanFace.wall(Pans.teaPan(true), height, 0.87, Pans.KITCHEN, 1);
        double kelvin = celsius + 273.15;
        double h = face.convectionCoefficient(kelvin) + face.radiationCoefficient(kelvin);
        double lost =
                new DryWallFin(face, height, conductance).at(kelvin, light).total();
        double passedOn = light - lost;
        assertEquals(slices(conductance, height, face.area() / height, h, light, celsius - 20), passedOn, 0.02);
    }

    /** Flow out of the hot end, W, by shooting from the closed end (the equation is linear: two shots are enough). */
    private static double slices(
            double conductance, double height, double round, double h, double light, double endAboveAir) {
        double[] cold = shot(conductance, height, round, h, light, 0);
        double[] warm = shot(conductance, height, round, h, light, 100);
        double share = (endAboveAir - cold[0]) / (warm[0] - cold[0]);
        return cold[1] + share * (warm[1] - cold[1]);
    }

    private static double[] shot(
            double conductance, double height, double round, double h, double light, double farAboveAir) {
        double step = height / CELLS;
        double above = farAboveAir;
        double flow = 0;
        for (int k = 0; k < CELLS; k++) {
            double middle = above - flow / (conductance * round) * step / 2;
            flow += step * (light / height - h * round * middle);
            above = middle - flow / (conductance * round) * step / 2;
        }
        return new double[] {above, flow};
    }

    @Test
    void thickWallsKeepMoreAndBrimfulPansHaveNone() {
        PanFace face = PanFace.wall(Pans.teaPan(true), 0.07, 0.87, Pans.KITCHEN, 1);
        double thin = new DryWallFin(face, 0.07, 0.005).at(293.15, 60).total();
        double thick = new DryWallFin(face, 0.07, 1).at(293.15, 60).total();
        assertTrue(thin > thick && thick > 0 && thin < 60, thin + " and " + thick + " W of 60");
        PanFace none = PanFace.wall(Pans.teaPan(true), 0, 0.87, Pans.KITCHEN, 1);
        assertEquals(0, new DryWallFin(none, 0, 0.05).at(370, 0).total());
    }
}
