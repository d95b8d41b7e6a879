package simmerpoint.trial.spot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.target.FluxMap;

class CardStudyTest {
    private static final TraceOptions OPTIONS = TraceOptions.defaults().withRays(131_072);
    private static final double[] DISTANCES = {0.72, 0.80, 0.90};

    /** Widths of another dish, traced with another seed, tell its figures within three of their standard deviations. */
    @Test
    void anotherDishIsToldByItsSpot() throws Exception {
        CheckedScenario read = ScenarioReader.read(Path.of("../scenarios/tea-kitchen.yaml"));
        CheckedScenario truth =
                read.with(java.util.Map.of("mirror.slope-error", "9 mrad", "dish.focal-length", "82 cm"));
        CardResult exact =
                CardStudy.run(truth, readings(new double[] {0.1, 0.1, 0.1}), OPTIONS.withSeed(5), Progress.NONE);
        double[] widths =
                exact.points().stream().mapToDouble(CardResult.Point::planned).toArray();
        CardResult found = CardStudy.run(read, readings(widths), OPTIONS, Progress.NONE);
        assertEquals(0.009, found.slopeError().value(), 3 * found.slopeError().standardError());
        assertEquals(0.82, found.focalLength().value(), 3 * found.focalLength().standardError());
        assertTrue(found.misfit() < 1, () -> found.toString());
        assertTrue(found.slopeError().value() > 0.006, () -> "" + found.slopeError());
    }

    /** Photographs of another dish, traced with another seed and written as a camera would, tell its figures too, and look like its spot. */
    @Test
    @Tag("slow")
    void anotherDishIsToldByPhotographs(@TempDir Path folder) throws Exception {
        CheckedScenario read = ScenarioReader.read(Path.of("../scenarios/tea-kitchen.yaml"));
        double[] distances = {0.76, 0.82, 0.88};
        List<SpotMap> truth = new CardLight(read.values(), OPTIONS.withSeed(5), distances).maps(0.009, 0.82, distances);
        StringBuilder table = new StringBuilder("from_middle_cm,photo,pixels_per_cm\n");
        for (int k = 0; k < distances.length; k++) {
            String name = "spot" + k + ".png";
            ImageIO.write(photo(truth.get(k)), "png", folder.resolve(name).toFile());
            double pixels = 0.01 / truth.get(k).cell();
            table.append(100 * distances[k])
                    .append(',')
                    .append(name)
                    .append(',')
                    .append(pixels)
                    .append('\n');
        }
        Path card = Files.writeString(folder.resolve("card.csv"), table);
        CardResult found = CardStudy.run(read, CardTable.read(card), OPTIONS, Progress.NONE);
        assertEquals(0.009, found.slopeError().value(), 3 * found.slopeError().standardError());
        assertEquals(0.82, found.focalLength().value(), 3 * found.focalLength().standardError());
        assertTrue(found.slopeError().value() > 0.007, () -> "" + found.slopeError());
        assertTrue(found.misfit() < 1.5, () -> "" + found.misfit());
        for (CardResult.Point point : found.photographed()) {
            SpotComparison maps = point.maps().orElseThrow();
            assertTrue(maps.elsewhere() < 0.15, () -> "" + maps.elsewhere());
            assertEquals(1, Arrays.stream(maps.measured().light()).sum(), 1e-9);
        }
        double fitted = elsewhere(found, SpotComparison::elsewhere);
        double planned = elsewhere(found, SpotComparison::elsewherePlanned);
        assertTrue(fitted < 0.8 * planned, () -> fitted + " of " + planned);
    }

    /**
     * Off the focus the light of a good mirror fills the cone from rim to focus, so by similar triangles it is at most as wide as the dish
     * times the distance off, in focal depths behind the rim: D·(d − f)/(f − D²/16f).
     */
    @Test
    void theCardIsWideEnoughForTheWholeCone() throws Exception {
        CheckedScenario read = ScenarioReader.read(Path.of("../scenarios/tea-kitchen.yaml"))
                .with(java.util.Map.of("mirror.slope-error", "0 mrad", "mirror.panel-tilt", "0 mrad"));
        double focal = read.scenario().dish().focalLengthMetres();
        double diameter = read.scenario().dish().diameterMetres();
        double distance = 1.9 * focal;
        double cone = diameter * 0.9 * focal / (focal - diameter * diameter / 16 / focal);
        double[] distances = {distance};
        SpotMap map = new CardLight(read.values(), OPTIONS, distances)
                .maps(0, focal, distances)
                .get(0);
        assertTrue(map.columns() * map.cell() > cone, () -> map.columns() * map.cell() + " m for " + cone);
    }

    private static double elsewhere(CardResult found, ToDoubleFunction<SpotComparison> share) {
        return found.photographed().stream()
                .mapToDouble(p -> share.applyAsDouble(p.maps().orElseThrow()))
                .sum();
    }

    /** Brightness in the curve of sRGB (IEC 61966-2-1, from memory), the brightest four fifths of full. */
    private static BufferedImage photo(SpotMap map) {
        BufferedImage image = new BufferedImage(map.columns(), map.rows(), BufferedImage.TYPE_INT_RGB);
        for (int k = 0; k < map.light().length; k++) {
            double light = 0.8 * map.light()[k] / map.most();
            double c = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
            int v = (int) Math.round(255 * c);
            image.setRGB(k % map.columns(), k / map.columns(), v << 16 | v << 8 | v);
        }
        return image;
    }

    /** The dish's upper edge is up in a map of the card, and the right of whoever stands behind it right: cells counted by hand. */
    @Test
    void mapsAreTheRightWayRound() {
        FluxMap map = new FluxMap(2, 3, 0.1, 0.1, 0, 0, new double[] {1, 2, 3, 4, 5, 6}, new double[6]);
        SpotMap seen = SpotMap.of(map);
        assertEquals(3, seen.columns());
        // First axis (towards the upper edge) has two cells, second (to the right) three: the upper row is first = 1.
        assertArrayEquals(new double[] {2, 4, 6, 1, 3, 5}, seen.light());
    }

    /** Half of the light lies in the same cell, the rest elsewhere (by hand). */
    @Test
    void lightElsewhereIsHalfOfAllDifferences() {
        SpotMap one = new SpotMap(new double[] {0.5, 0.5, 0, 0}, 4, 1);
        SpotMap other = new SpotMap(new double[] {0, 0.5, 0.25, 0.25}, 4, 1);
        assertEquals(0.5, one.elsewhere(other), 1e-12);
        assertEquals(0, one.elsewhere(one), 1e-12);
    }

    private static List<CardReading> readings(double[] widths) {
        List<CardReading> readings = new ArrayList<>();
        for (int k = 0; k < widths.length; k++) {
            readings.add(new CardReading(k + 2, DISTANCES[k], widths[k], Optional.empty()));
        }
        return readings;
    }
}
