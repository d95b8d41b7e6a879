package simmerpoint.report;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import simmerpoint.answer.CompareAnswer;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.VariantNames;
import simmerpoint.quantities.Version;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.compare.Comparison;

/**
 * Compared cookers as one JSON object in UTF-8: {@code rows}, the best first, each with {@code file}, {@code title} and
 * {@code varied} (value as typed by full path of the key).
 *
 * <p>{@code difference_power_W}: absorbed watts beyond those of the first row, its {@code _se} from replicates that share
 * their samples; {@code difference_seen}: whether it passes {@code seen_errors} of them. {@code drift_tolerance_deg}: how far
 * the sun may drift from a dead-on aim before {@code tolerance_loss} of the watts are lost, null if that never happens within
 * {@code tolerance_range_deg}; {@code drift_tolerance_min}: how long the sun at its fastest takes for it. {@code boil} as in
 * the answer of pan, null for a bare disc. The same scenarios and seed give the same bytes but for {@code run}, which comes
 * last.
 */
public final class CompareJson {
    private CompareJson() {}

    /** The bytes of the file for {@code comparison}, ending with a line break. */
    public static byte[] bytes(Comparison comparison) {
        VariantNames names = new VariantNames(comparison.variants());
        return JsonObject.bytes(json -> {
            json.text("title", CompareAnswer.title(comparison));
            json.text("version", Version.text());
            json.whole("seed", comparison.seed());
            json.number("seen_errors", ComparedRow.SEEN_ERRORS);
            json.number("tolerance_loss", AimTolerance.USUAL_LOSS);
            json.number("tolerance_range_deg", Math.rint(Math.toDegrees(AimTolerance.RANGE)));
            json.list("rows", comparison.rows(), (each, row) -> row(each, row, names));
            json.object("run", run -> {
                run.whole("rays", comparison.run().rays());
                run.whole("threads", comparison.run().threads());
                run.number("trace_seconds", comparison.run().traceSeconds());
            });
        });
    }

    private static void row(JsonObject json, ComparedRow row, VariantNames names) throws IOException {
        json.text("name", names.name(row.variant()));
        json.text("file", OneLine.of(row.variant().file()));
        json.text("title", OneLine.of(row.variant().scenario().title()));
        json.object("varied", varied -> {
            for (Map.Entry<String, String> e : row.variant().varied().entrySet()) {
                varied.text(e.getKey(), OneLine.of(e.getValue()));
            }
        });
        json.estimate("absorbed_power_W", row.absorbed());
        json.estimate("difference_power_W", row.difference());
        json.flag("difference_seen", row.isSeenToDiffer());
        json.estimate("caught_power_W", row.ledger().caught());
        json.estimate("peak_flux_W_m2", row.peakFlux());
        json.whole("panels", row.panels());
        json.estimate("drift_tolerance_deg", scaled(row.drift(), Math.toDegrees(1)));
        json.estimate("drift_tolerance_min", scaled(row.driftSeconds(), 1.0 / 60));
        if (row.boil().isPresent()) {
            json.object("boil", answer -> PanJson.boil(answer, row.boil().get()));
        } else {
            json.nothing("boil");
        }
    }

    private static Estimate scaled(Optional<Estimate> e, double factor) {
        return e.map(x -> x.times(factor)).orElse(Estimate.exact(Double.NaN));
    }
}
