package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.dish.cut.MeasuredRibs;
import simmerpoint.drawing.output.Paper;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CutPlan;

/** The form for measured ribs is read back as ribs that are as planned, to the rounding of its numbers. */
class RibFormTest {
    private static final String DISH =
            "dish: {diameter: 900 mm, focal-length: 450 mm, hub: 60 mm, surface: {cut: bent-strips, sectors: 9}}\n";

    @TempDir
    Path folder;

    @Test
    void whatIsPlannedIsReadBackAsPlanned() throws Exception {
        CutPlan plan = CutPlan.of(ScenarioReader.parse("test", DISH, folder), UnitSystem.METRIC);
        for (UnitSystem units : UnitSystem.values()) {
            Files.write(
                    folder.resolve("ribs.csv"),
                    CutFiles.of(plan, Paper.A4, units).ribs().get());
            MeasuredRibs ribs =
                    (MeasuredRibs) ScenarioReader.parse("test", DISH + "as-built: {ribs: ribs.csv}\n", folder)
                            .scenario()
                            .dish()
                            .cut();
            assertEquals(9, ribs.heights().size());
            // Distances are rounded to 0.05 mm where the curve rises by up to a half.
            ribs.heights().forEach(rib -> rib.forEach(height -> assertEquals(0, height, 8e-5)));
        }
    }
}
