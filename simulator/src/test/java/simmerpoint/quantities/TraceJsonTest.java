package simmerpoint.quantities;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.report.SampleResults;
import simmerpoint.study.trace.TraceResult;

/** Read back by a general library. */
class TraceJsonTest {
    private static final List<String> TRACED = List.of(
            "outline_power_W",
            "gap_power_W",
            "incident_power_W",
            "shaded_power_W",
            "mirror_loss_power_W",
            "scattered_power_W",
            "reflected_power_W",
            "missed_power_W",
            "underside_power_W",
            "wall_power_W",
            "lid_power_W",
            "caught_power_W",
            "direct_on_pan_power_W",
            "absorbed_power_W",
            "cooking_power_as_given_W",
            "standard_cooking_power_W",
            "intercept_factor",
            "mean_concentration",
            "evenness",
            "peak_flux_W_m2",
            "radius_50_m",
            "radius_90_m",
            "radius_95_m");

    private static JsonNode read(TraceResult result) throws IOException {
        return new ObjectMapper().readTree(TraceQuantities.DOCUMENT.json(result));
    }

    @Test
    void everyFieldOfTheContractIsThere() throws IOException {
        JsonNode json = read(SampleResults.tight());
        for (String name : TRACED) {
            assertTrue(json.path(name).isNumber(), name);
            assertTrue(json.path(name + "_se").isNumber(), name + "_se");
        }
        for (String name : List.of("outline_area_m2", "aperture_area_m2", "peak_disc_radius_m", "seed", "replicates")) {
            assertTrue(json.path(name).isNumber(), name);
        }
        for (String name : List.of("peak_center_m", "spot_centroid_m", "spot_centroid_m_se")) {
            assertEquals(2, json.path(name).size(), name);
        }
        for (String name : List.of("long_sigma_m", "short_sigma_m", "angle_rad")) {
            assertTrue(json.path("spot_ellipse").path(name).isNumber(), name);
        }
        for (String name : List.of("rays", "threads", "trace_seconds")) {
            assertTrue(json.path("run").path(name).isNumber(), name);
            assertFalse(json.has(name), name);
        }
        assertTrue(
                json.path("version").asText().matches("[0-9]+\\.[0-9]+.*"),
                json.path("version").asText());
        assertTrue(json.path("frame").asText().contains("away from the sun"));
    }

    @Test
    void figuresAreThoseOfTheResult() throws IOException {
        TraceResult result = SampleResults.lopsided();
        JsonNode json = read(result);
        assertEquals(
                result.ledger().caught().value(), json.path("caught_power_W").asDouble());
        assertEquals(
                result.ledger().wall().standardError(),
                json.path("wall_power_W_se").asDouble());
        assertEquals(
                result.spot().centroidX().value(),
                json.path("spot_centroid_m").path(0).asDouble());
        assertEquals(result.spot().peakY(), json.path("peak_center_m").path(1).asDouble());
        assertEquals(
                result.maps().wall().orElseThrow().power(),
                json.path("wall_power_W").asDouble(),
                1e-9);
    }

    @Test
    void whatDoesNotExistIsNull() throws IOException {
        JsonNode json = read(SampleResults.dark());
        for (String name : List.of("radius_50_m", "radius_50_m_se", "radius_95_m", "evenness", "spot_ellipse")) {
            assertTrue(json.has(name) && json.path(name).isNull(), name);
        }
        assertTrue(json.path("spot_centroid_m").path(0).isNull());
        assertTrue(read(SampleResults.wide()).path("radius_95_m").isNull());
        assertTrue(read(SampleResults.wide()).path("radius_90_m").isNumber());
    }

    @Test
    void onlyRunDiffersBetweenRuns() throws IOException {
        ObjectNode one = (ObjectNode) read(SampleResults.onThreads(1, 0.5));
        ObjectNode two = (ObjectNode) read(SampleResults.onThreads(16, 0.07));
        assertFalse(one.equals(two));
        one.remove("run");
        two.remove("run");
        assertEquals(one.toString(), two.toString());
        String text =
                new String(TraceQuantities.DOCUMENT.json(SampleResults.onThreads(1, 0.5)), StandardCharsets.UTF_8);
        String other =
                new String(TraceQuantities.DOCUMENT.json(SampleResults.onThreads(16, 0.07)), StandardCharsets.UTF_8);
        assertEquals(text.substring(0, text.indexOf("\"run\"")), other.substring(0, other.indexOf("\"run\"")));
        assertArrayEquals(
                TraceQuantities.DOCUMENT.json(SampleResults.tight()),
                TraceQuantities.DOCUMENT.json(SampleResults.tight()));
    }

    @Test
    void anyTitleIsQuoted() throws IOException {
        JsonNode json = read(SampleResults.with("a \"b\" \\ <ß> \u0001 \ud83d\ude00", 0.02, 100));
        assertEquals("a \"b\" \\ <ß> \ud83d\ude00", json.path("title").asText());
    }

    @Property(seed = "42")
    void numbersReadBackExactly(@ForAll double x) {
        assertEquals(x == 0 ? 0.0 : x, Double.parseDouble(StableNumber.of(x)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.1", "850", "1200", "1E-9", "1.5E22", "-0.00012"})
    void numbersAreWrittenAsAPersonWould(String text) {
        assertEquals(text, StableNumber.of(Double.parseDouble(text)));
    }
}
