package simmerpoint.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import simmerpoint.answer.Words;
import simmerpoint.pan.Pan;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.Ledger;
import simmerpoint.target.Spot;
import simmerpoint.target.SpotEllipse;

/**
 * A traced result as one JSON object in UTF-8. Every figure {@code name} has its standard error as {@code name_se}; a
 * figure that does not exist (a radius that is never reached, the centre of no light) is null, and so is its error. The
 * same scenario and seed give the same bytes but for the object {@code run}, which comes last.
 */
public final class JsonReport {
    private final JsonGenerator json;

    private JsonReport(JsonGenerator json) {
        this.json = json;
    }

    /** The bytes of the file for {@code result}, ending with a line break. */
    public static byte[] bytes(TraceResult result) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(4096);
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            DefaultIndenter lines = new DefaultIndenter("  ", "\n");
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(lines));
            new JsonReport(json).write(result);
            json.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private void write(TraceResult result) throws IOException {
        boolean isPan = result.scenario().target() instanceof Pan;
        json.writeStartObject();
        json.writeStringField("title", Words.oneLine(result.scenario().title()));
        json.writeStringField("version", Version.text());
        json.writeNumberField("seed", result.seed());
        json.writeNumberField("replicates", result.replicates());
        json.writeBooleanField("precision_reached", result.precisionReached());
        json.writeStringField("target", isPan ? "pan" : "plane");
        json.writeStringField("frame", frame(isPan));
        json.writeNumberField("panels", result.panels());
        number("outline_area_m2", result.outlineArea());
        number("aperture_area_m2", result.apertureArea());
        ledger(result.ledger());
        spot(result.spot());
        run(result.run());
        json.writeEndObject();
    }

    private static String frame(boolean isPan) {
        return isPan
                ? "origin: middle of the underside; x: level, away from the sun; y: the dish's +y; z: up"
                : "origin: middle of the disc; y: the dish's +y; z: the disc's normal, away from the dish; x = y cross z "
                        + "(square to the axis: towards the dish's upper edge)";
    }

    private void ledger(Ledger ledger) throws IOException {
        estimate("outline_power_W", ledger.outline());
        estimate("gap_power_W", ledger.gap());
        estimate("incident_power_W", ledger.incident());
        estimate("shaded_power_W", ledger.shaded());
        estimate("mirror_loss_power_W", ledger.mirrorLoss());
        estimate("scattered_power_W", ledger.scattered());
        estimate("reflected_power_W", ledger.reflected());
        estimate("missed_power_W", ledger.missed());
        estimate("underside_power_W", ledger.underside());
        estimate("wall_power_W", ledger.wall());
        estimate("lid_power_W", ledger.lid());
        estimate("caught_power_W", ledger.caught());
        estimate("direct_on_pan_power_W", ledger.directOnPan());
        estimate("absorbed_power_W", ledger.absorbed());
    }

    private void spot(Spot spot) throws IOException {
        estimate("intercept_factor", spot.interceptFactor());
        estimate("mean_concentration", spot.meanConcentration());
        estimate("evenness", spot.evenness());
        estimate("peak_flux_W_m2", spot.peakFlux());
        number("peak_disc_radius_m", spot.peakDiscRadius());
        pair("peak_center_m", spot.peakX(), spot.peakY());
        pair("spot_centroid_m", spot.centroidX().value(), spot.centroidY().value());
        pair(
                "spot_centroid_m_se",
                spot.centroidX().standardError(),
                spot.centroidY().standardError());
        radius("radius_50_m", spot.radius50());
        radius("radius_90_m", spot.radius90());
        radius("radius_95_m", spot.radius95());
        ellipse(spot.ellipse());
    }

    private void ellipse(Optional<SpotEllipse> ellipse) throws IOException {
        if (ellipse.isEmpty()) {
            json.writeNullField("spot_ellipse");
            return;
        }
        json.writeObjectFieldStart("spot_ellipse");
        number("long_sigma_m", ellipse.get().longSigma());
        number("short_sigma_m", ellipse.get().shortSigma());
        number("angle_rad", ellipse.get().angleRadians());
        json.writeEndObject();
    }

    private void run(TraceResult.RunInfo run) throws IOException {
        json.writeObjectFieldStart("run");
        json.writeNumberField("rays", run.rays());
        json.writeNumberField("threads", run.threads());
        number("trace_seconds", run.traceSeconds());
        json.writeEndObject();
    }

    private void radius(String name, Optional<Estimate> radius) throws IOException {
        estimate(name, radius.orElse(new Estimate(Double.NaN, Double.NaN)));
    }

    private void estimate(String name, Estimate e) throws IOException {
        number(name, e.value());
        number(name + "_se", Double.isFinite(e.value()) ? e.standardError() : Double.NaN);
    }

    private void pair(String name, double x, double y) throws IOException {
        json.writeArrayFieldStart(name);
        element(x);
        element(y);
        json.writeEndArray();
    }

    private void number(String name, double x) throws IOException {
        json.writeFieldName(name);
        element(x);
    }

    private void element(double x) throws IOException {
        if (Double.isFinite(x)) {
            json.writeNumber(StableNumber.of(x));
        } else {
            json.writeNull();
        }
    }
}
