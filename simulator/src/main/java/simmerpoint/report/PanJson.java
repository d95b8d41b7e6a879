package simmerpoint.report;

import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import simmerpoint.answer.LevelWords;
import simmerpoint.answer.MoveWords;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.heat.LikelyRange;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.setup.Stand;
import simmerpoint.study.pan.LevelBorder;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.pan.SimmerPlace;
import simmerpoint.study.trace.HeatResult;

/**
 * Where the pan stands for what, as one JSON object in UTF-8.
 *
 * <p>Fields: {@code stand} (m from the focus), {@code here} (the pan as it stands) with {@code boil} and {@code
 * level_begins_W}, {@code simmer} (the recommended place, or null), {@code open_share_for_simmer}, {@code moves}: each with
 * {@code move}, {@code stand_m} (how far along it the pan stands), {@code borders} and {@code positions}. An {@code offset_m}
 * is counted from where the pan stands. {@code absorbed_power_W} is what the pan takes up, direct sunlight included; {@code
 * peak_flux_W_m2} lands on the hottest place of the underside, {@code wall_peak_flux_W_m2} on that of the wall; {@code
 * middle_flux_W_m2} is taken up by the inner half of the underside's radius. Ranges (low, likely, high) hold four in five
 * pans; an end that is nowhere is null. The same scenario and seed give the same bytes but for {@code run}, which comes last.
 */
public final class PanJson {
    private PanJson() {}

    /** The bytes of the file for {@code result}, ending with a line break. */
    public static byte[] bytes(PanResult result) {
        return JsonObject.bytes(json -> write(json, result));
    }

    private static void write(JsonObject json, PanResult result) throws IOException {
        json.text("title", OneLine.of(result.base().scenario().title()));
        json.text("version", Version.text());
        json.whole("seed", result.base().seed());
        json.object("stand", stand -> stand(stand, result.base().scenario().stand()));
        json.object("here", here -> here(here, result));
        if (result.simmer().isPresent()) {
            json.object("simmer", place -> simmer(place, result.simmer().get()));
        } else {
            json.nothing("simmer");
        }
        json.number("open_share_for_simmer", result.openShareForSimmer().orElse(Double.NaN));
        json.list("moves", result.moves(), PanJson::move);
        json.object("run", run -> {
            run.whole("rays", result.run().rays());
            run.whole("threads", result.run().threads());
            run.number("trace_seconds", result.run().traceSeconds());
            run.number("move_seconds", result.run().moveSeconds());
        });
    }

    private static void stand(JsonObject json, Stand stand) throws IOException {
        json.number("pull_back_m", stand.pullBackMetres());
        json.number("slide_m", stand.slideMetres());
        json.number("raise_m", stand.raiseMetres());
        json.number("side_m", stand.sideMetres());
    }

    private static void here(JsonObject json, PanResult result) throws IOException {
        PanPosition here = result.here();
        HeatResult heat = result.heat();
        position(json, here);
        HeatLevelRange level = heat.levelRange();
        json.text("heat_level_low", LevelWords.of(level.lowest()));
        json.text("heat_level_high", LevelWords.of(level.highest()));
        json.number("water_kg", result.kitchen().contents().waterKilograms());
        json.number("start_C", result.kitchen().contents().startCelsius());
        json.number("boiling_C", heat.boilingCelsius());
        range(json, "settles_C", heat.settlesCelsius());
        json.object("boil", answer -> boil(answer, heat.boil()));
        range(json, "steam_kg_h", heat.steam().all());
        json.object("level_begins_W", begins -> {
            for (HeatLevel each : Arrays.asList(HeatLevel.values()).subList(1, HeatLevel.values().length)) {
                range(begins, each.name().toLowerCase(Locale.ROOT), heat.begins(each));
            }
        });
    }

    private static void range(JsonObject json, String name, LikelyRange range) throws IOException {
        json.object(name, ends -> {
            ends.number("low", range.low());
            ends.number("likely", range.likely());
            ends.number("high", range.high());
        });
    }

    /** Whether and when it boils, and where it settles. */
    static void boil(JsonObject json, BoilingOutcome answer) throws IOException {
        if (answer instanceof BoilingOutcome.Boils boils) {
            json.text("answer", "boils");
            range(json, "seconds", boils.seconds());
        } else if (answer instanceof BoilingOutcome.MayBoil may) {
            json.text("answer", "may boil");
            json.number("share", may.share());
            json.number("soonest_seconds", may.soonestSeconds());
        } else {
            json.text("answer", "never");
        }
    }

    private static void simmer(JsonObject json, SimmerPlace place) throws IOException {
        json.text("move", MoveWords.key(place.move()));
        json.number("from_m", place.stretch().fromMetres());
        json.number("to_m", place.stretch().toMetres());
        position(json, place.position());
    }

    private static void move(JsonObject json, PanMove move) throws IOException {
        json.text("move", MoveWords.key(move.move()));
        json.number("stand_m", move.presentMetres());
        json.list("borders", move.borders(), PanJson::border);
        json.list("positions", move.positions(), PanJson::position);
    }

    private static void border(JsonObject json, LevelBorder border) throws IOException {
        json.number("offset_m", border.offsetMetres());
        json.number("low_m", border.lowMetres());
        json.number("high_m", border.highMetres());
        json.text("before", LevelWords.of(border.before()));
        json.text("after", LevelWords.of(border.after()));
    }

    private static void position(JsonObject json, PanPosition p) throws IOException {
        json.number("offset_m", p.offsetMetres());
        json.estimate("absorbed_power_W", p.absorbed());
        json.text("heat_level", LevelWords.of(p.level()));
        json.estimate("peak_flux_W_m2", p.peakFlux());
        json.number("wall_peak_flux_W_m2", p.wallPeakFlux());
        json.number("mean_flux_W_m2", p.meanFlux());
        json.number("peak_to_mean", p.peakToMean());
        json.number("underside_share", p.undersideShare());
        json.number("wall_share", p.wallShare());
        json.number("middle_flux_W_m2", p.middleFlux());
        json.number("evenness", p.evenness());
        json.text("frying", text(p.frying().level()));
        json.text("frying_spread", text(p.frying().spread()));
    }

    static String text(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
