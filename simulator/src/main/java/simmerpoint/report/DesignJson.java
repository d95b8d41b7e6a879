package simmerpoint.report;

import java.io.IOException;
import java.util.Map;
import simmerpoint.answer.LevelWords;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.design.DesignChoice;
import simmerpoint.study.design.DesignLimits;
import simmerpoint.study.design.DesignResult;
import simmerpoint.study.design.DishCandidate;

/**
 * A search for a design as one JSON object in UTF-8, the object {@code run} last: all else is the same for the same
 * scenario, wishes and seed.
 */
public final class DesignJson {
    private DesignJson() {}

    /** The bytes of the file for {@code result}. */
    public static byte[] bytes(DesignResult result) {
        return JsonObject.bytes(json -> {
            json.text("title", OneLine.of(result.scenario().title()));
            json.text("version", Version.text());
            json.whole("seed", result.run().seed());
            json.whole("check_seed", result.run().checkSeed());
            json.number("wanted_power_W", result.goal().watts());
            if (result.goal().level().isPresent()) {
                json.text(
                        "wanted_heat_level", LevelWords.of(result.goal().level().get()));
            }
            json.list("front", result.front(), DesignJson::choice);
            json.list("fronts", result.fronts(), (each, front) -> {
                each.number("wanted_power_W", front.watts());
                each.list("dishes", front.candidates(), DesignJson::candidate);
            });
            if (result.bound().isPresent()) {
                json.object(
                        "most_within_limits",
                        bound -> choice(bound, result.bound().get()));
            }
            json.list("binding_limits", result.loosened().entrySet(), DesignJson::loosened);
            json.object("run", run -> {
                run.whole("dishes", result.run().dishes());
                run.whole("search_rays", result.run().searchRays());
                run.whole("check_rays", result.run().checkRays());
                run.whole("threads", result.run().threads());
                run.number("seconds", result.run().seconds());
            });
        });
    }

    private static void loosened(JsonObject json, Map.Entry<DesignLimits.Limit, DishCandidate> entry)
            throws IOException {
        json.text("limit", entry.getKey().name().toLowerCase(java.util.Locale.ROOT));
        json.object("without_it", dish -> candidate(dish, entry.getValue()));
    }

    private static void choice(JsonObject json, DesignChoice choice) throws IOException {
        candidate(json, choice.candidate());
        json.estimate("absorbed_power_W", choice.watts());
        json.estimate("peak_flux_W_m2", choice.peakFlux());
        json.number("pan_height_m", choice.panHeightMetres());
        if (choice.largestPanel().isPresent()) {
            json.number("largest_panel_rim_m", choice.largestPanel().get().rimMetres());
            json.number("largest_panel_rib_m", choice.largestPanel().get().ribMetres());
        }
        json.estimate("drift_tolerance_rad", choice.tolerance().drift().orElse(new Estimate(Double.NaN, Double.NaN)));
    }

    private static void candidate(JsonObject json, DishCandidate candidate) throws IOException {
        json.whole("panels", candidate.layout().panels());
        json.text("cut", candidate.layout().cut().word());
        json.whole("sectors", candidate.layout().sectors());
        json.whole("rings", candidate.layout().rings());
        json.number("diameter_m", candidate.diameterCentimetres() / 100.0);
        json.number("focal_length_m", candidate.focalCentimetres() / 100.0);
    }
}
