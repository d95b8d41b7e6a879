package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.scenario.variants.Variants;
import simmerpoint.scenario.variants.VariedKey;
import simmerpoint.study.compare.CompareStudy;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.compare.Comparison;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/** What is known of compared dishes beforehand, through the whole of compare: file, varied keys, engine. */
class CompareTruthTest {
    private static final String SECTORS = "dish.surface.sectors";
    private static final TraceOptions OPTIONS =
            TraceOptions.defaults().withRays(1 << 14).withThreads(2).withSeed(61);

    @TempDir
    Path folder;

    private List<Variant> variants(String text, String... typed) throws IOException, ScenarioException {
        List<VariedKey> keys = new ArrayList<>();
        for (String each : typed) {
            keys.add(VariedKey.parse(each));
        }
        return Variants.of(List.of(ScenarioReader.values("base.yaml", text, folder)), keys);
    }

    private static String cooker(String cut) {
        return "dish: {diameter: 1.2 m, focal-length: 0.8 m, hub: 6 cm, surface: {cut: " + cut + "}}\n"
                + "mirror: {material: own figures, reflectance: 0.85, slope-error: 5 mrad}\n"
                + "pan: {diameter: 24 cm, height: 11 cm}\n";
    }

    /** The outline of a smooth dish holds that of every cut, and its spot is the smallest. Four standard errors. */
    @Test
    void aSmoothDishBeatsEveryCut() throws Exception {
        Comparison c = CompareStudy.run(
                variants(
                        cooker("smooth"),
                        "dish.surface.cut=flat-rings,bent-strips,square-tiles,hexagon-tiles,smooth",
                        SECTORS + "=12,24",
                        "dish.surface.rings=6",
                        "dish.surface.tile=8 cm"),
                OPTIONS,
                Progress.NONE);
        assertEquals(7, c.rows().size());
        assertEquals("smooth", c.best().variant().varied().get("dish.surface.cut"));
        for (ComparedRow row : c.rows().subList(1, c.rows().size())) {
            Estimate d = row.difference();
            assertTrue(d.value() < -4 * d.standardError(), row.variant().varied() + ": " + d);
        }
    }

    /**
     * Finer panels follow the bowl better and fill its outline better; none is glued askew here, for that luck is drawn anew
     * for every number of panels. Each step may lose by chance no more than 4 standard errors of the paired difference.
     */
    @ParameterizedTest
    @ValueSource(strings = {"bent-strips, sectors: 24", "flat-rings, sectors: 24, rings: 6"})
    void moreSectorsNeverLose(String cut) throws Exception {
        List<Variant> variants = variants(cooker(cut), SECTORS + "=6,8,12,16,24,25,32,48,64,96,192");
        List<PairedWatts> watts =
                PairedStudy.watts(variants.stream().map(Variant::scenario).toList(), OPTIONS, Progress.NONE);
        for (int k = 1; k < watts.size(); k++) {
            Estimate gain = watts.get(k).usefulBeyond(watts.get(k - 1));
            assertTrue(
                    gain.value() >= -4 * gain.standardError(),
                    variants.get(k).varied() + " against the one before: " + gain);
        }
    }

    /**
     * A strip between two ribs at ±β about its middle, β = π/n, is straight from rib to rib, so it is a parabolic cylinder:
     * on the ribs z = r²/4f, in the middle plane x = r·cos β, hence z = x²/(4·f·cos²β), focal length fc = f·cos²β. Light
     * parallel to the axis is turned in the plane square to the cylinder's straight lines only and crosses the plane z = fc
     * on its axis, at the same y at which it came down: the strip draws a bright line along y. Seen along the axis the
     * strip is a triangle whose width at the middle is 0 and at the rim 2·W, W = a·sin β, with its straight sides |y| = x·tan β
     * and x up to a·cos β. At a height y it is a·cos β − |y|/tan β long, so light falls off linearly along the line from
     * the middle to W, and the share within R of the middle is the integral of 1 − |y|/W: F = 1 − (1 − R/W)². Derived here. Four standard errors, and 1e-6 for the sun's width.
     */
    @ParameterizedTest
    @ValueSource(ints = {6, 8, 12, 16, 24, 32})
    void shareOfTheLightOfAStripThatLandsOnADisc(int n) throws Exception {
        String down = String.format(Locale.ROOT, "%.9f m", -0.5 * Math.pow(Math.sin(Math.PI / n), 2));
        Comparison c = CompareStudy.run(
                variants(
                        "dish: {diameter: 1.2 m, focal-length: 0.5 m, surface: {cut: bent-strips, sectors: 24}}\n"
                                + "mirror: {material: own figures, reflectance: 1, slope-error: 0 mrad}\n"
                                + "sun: {shape: {kind: uniform-disc, half-angle: 0.001 mrad}}\n",
                        SECTORS + "=" + n,
                        "stand.pull-back=" + down,
                        "plane.disc=100 mm,180 mm"),
                OPTIONS.withRays(1 << 12),
                Progress.NONE);
        double end = 0.6 * Math.sin(Math.PI / n);
        for (ComparedRow row : c.rows()) {
            double radius = row.variant().scenario().target().radiusMetres();
            double wanted = radius < end ? 1 - Math.pow(1 - radius / end, 2) : 1;
            double reflected = row.ledger().reflected().value();
            Estimate share = row.ledger().caught().times(1 / reflected);
            Check.near("n " + n + " within " + radius, wanted, share, 1e-6);
            assertEquals(n, row.panels());
        }
    }
}
