package simmerpoint.study.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/** A tolerance costs what it says, when a dish is built so: ribs off at one distance, read from a table, another seed. */
class DepthToleranceTest {
    private static final String DISH =
            "dish: {diameter: 1 m, focal-length: 60 cm, hub: 60 mm, surface: {cut: bent-strips, sectors: 16}}\n"
                    + "mirror: {slope-error: 3 mrad}\npan: {diameter: 18 cm, height: 10 cm}\n";
    private static final double[] RADII = {0.15, 0.3, 0.4};
    private static final TraceOptions OPTIONS =
            TraceOptions.defaults().withThreads(2).withRays(1 << 15);

    @TempDir
    Path folder;

    private Scenario read(String text) throws Exception {
        return ScenarioReader.parse("test", text, folder).scenario();
    }

    @Test
    void aToleranceCostsAFiftieth() throws Exception {
        Scenario plan = read(DISH);
        List<DepthTolerance> found =
                BuildTrace.run(plan, RADII, OPTIONS, Progress.NONE).tolerances();
        assertEquals(RADII.length, found.size());
        for (int k = 0; k < RADII.length; k++) {
            DepthTolerance tolerance = found.get(k);
            assertFalse(tolerance.isMore());
            Scenario built = read(DISH + "as-built: {ribs: " + table(k, tolerance.metres()) + "}\n");
            List<PairedWatts> watts =
                    PairedStudy.watts(List.of(plan, built), OPTIONS.withSeed(7).withRays(1 << 17), Progress.NONE);
            double share = -watts.get(1).usefulBeyond(watts.get(0)).value()
                    / watts.get(0).useful().value();
            // Two rounds of a law that is only nearly a square: a third of the loss is allowed.
            assertEquals(DepthTolerance.LOSS, share, DepthTolerance.LOSS / 3, "at " + RADII[k]);
        }
        assertTrue(found.get(1).metres() > 0.0005 && found.get(1).metres() < 0.01, found.toString());
    }

    private String table(int place, double metres) throws Exception {
        StringBuilder out = new StringBuilder("from_middle_mm");
        for (int rib = 1; rib <= 16; rib++) {
            out.append(",rib_").append(rib);
        }
        double[] all = {RADII[0], RADII[1], RADII[2], 0.5};
        for (int k = 0; k < all.length; k++) {
            double depth = (0.25 - all[k] * all[k]) / (4 * 0.6);
            out.append(String.format(Locale.ROOT, "%n%.3f", 1000 * all[k]));
            for (int rib = 0; rib < 16; rib++) {
                double up = k == place ? (rib % 4 < 2 ? metres : -metres) : 0;
                out.append(String.format(Locale.ROOT, ",%.6f", 1000 * (depth - up)));
            }
        }
        String name = "ribs" + place + ".csv";
        Files.writeString(folder.resolve(name), out.append(System.lineSeparator()));
        return name;
    }

    /** Tiles have no ribs. */
    @Test
    void aDishWithoutRibsHasNone() throws Exception {
        Scenario tiles =
                read("dish: {diameter: 1 m, focal-length: 60 cm, surface: {cut: square-tiles, tile: 10 cm}}\n");
        assertTrue(BuildTrace.run(tiles, RADII, OPTIONS, Progress.NONE)
                .tolerances()
                .isEmpty());
    }
}
