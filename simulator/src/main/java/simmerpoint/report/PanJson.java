package simmerpoint.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import simmerpoint.answer.MoveWords;
import simmerpoint.answer.Words;
import simmerpoint.heat.BoilAnswer;
import simmerpoint.heat.Cooking;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.LevelAnswer;
import simmerpoint.setup.Stand;
import simmerpoint.study.LevelBorder;
import simmerpoint.study.PanMove;
import simmerpoint.study.PanPosition;
import simmerpoint.study.PanResult;
import simmerpoint.study.SimmerPlace;

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
    private final JsonGenerator json;
    private final JsonFigures figures;

    private PanJson(JsonGenerator json, JsonFigures figures) {
        this.json = json;
        this.figures = figures;
    }

    /** The bytes of the file for {@code result}, ending with a line break. */
    public static byte[] bytes(PanResult result) {
        return JsonFigures.bytes((json, figures) -> new PanJson(json, figures).write(result));
    }

    private void write(PanResult result) throws IOException {
        json.writeStringField(
                "title", Words.oneLine(result.base().scenario().title()));
        json.writeStringField("version", Version.text());
        json.writeNumberField("seed", result.base().seed());
        stand(result.base().scenario().stand());
        here(result);
        simmer(result.simmer());
        figures.number("open_share_for_simmer", result.openShareForSimmer().orElse(Double.NaN));
        json.writeArrayFieldStart("moves");
        for (PanMove move : result.moves()) {
            move(move);
        }
        json.writeEndArray();
        run(result.run());
    }

    private void stand(Stand stand) throws IOException {
        json.writeObjectFieldStart("stand");
        figures.number("pull_back_m", stand.pullBackMetres());
        figures.number("slide_m", stand.slideMetres());
        figures.number("raise_m", stand.raiseMetres());
        figures.number("side_m", stand.sideMetres());
        json.writeEndObject();
    }

    private void here(PanResult result) throws IOException {
        PanPosition here = result.here();
        Cooking cooking = result.cooking();
        json.writeObjectFieldStart("here");
        position(here);
        LevelAnswer level = result.levels().levelWithSpread(here.absorbedByFace());
        json.writeStringField("heat_level_lowest", text(level.lowest()));
        json.writeStringField("heat_level_highest", text(level.highest()));
        figures.number("water_kg", result.kitchen().contents().waterKilograms());
        figures.number("start_C", result.kitchen().contents().startCelsius());
        figures.number("boiling_C", cooking.boilingCelsius());
        figures.range("settles_C", cooking.settles(here.absorbedByFace()));
        boil(cooking.boil(here.absorbedByFace()));
        figures.range("steam_kg_h", cooking.steam(here.absorbedByFace()).all());
        json.writeObjectFieldStart("level_begins_W");
        for (HeatLevel each : HeatLevel.values()) {
            if (each != HeatLevel.TOO_COOL) {
                figures.range(text(each), result.begins(each));
            }
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private void boil(BoilAnswer answer) throws IOException {
        json.writeObjectFieldStart("boil");
        if (answer instanceof BoilAnswer.Boils boils) {
            json.writeStringField("answer", "boils");
            figures.range("seconds", boils.seconds());
        } else if (answer instanceof BoilAnswer.MayBoil may) {
            json.writeStringField("answer", "may boil");
            figures.number("share", may.share());
            figures.number("soonest_seconds", may.soonestSeconds());
        } else {
            json.writeStringField("answer", "never");
        }
        json.writeEndObject();
    }

    private void simmer(Optional<SimmerPlace> place) throws IOException {
        if (place.isEmpty()) {
            json.writeNullField("simmer");
            return;
        }
        json.writeObjectFieldStart("simmer");
        json.writeStringField("move", MoveWords.key(place.get().move()));
        figures.number("from_m", place.get().stretch().fromMetres());
        figures.number("to_m", place.get().stretch().toMetres());
        position(place.get().position());
        json.writeEndObject();
    }

    private void move(PanMove move) throws IOException {
        json.writeStartObject();
        json.writeStringField("move", MoveWords.key(move.move()));
        figures.number("stand_m", move.presentMetres());
        json.writeArrayFieldStart("borders");
        for (LevelBorder border : move.borders()) {
            json.writeStartObject();
            figures.number("offset_m", border.offsetMetres());
            figures.number("low_m", border.lowMetres());
            figures.number("high_m", border.highMetres());
            json.writeStringField("before", text(border.before()));
            json.writeStringField("after", text(border.after()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("positions");
        for (PanPosition position : move.positions()) {
            json.writeStartObject();
            position(position);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void position(PanPosition p) throws IOException {
        figures.number("offset_m", p.offsetMetres());
        figures.estimate("absorbed_power_W", p.absorbed());
        json.writeStringField("heat_level", text(p.level()));
        figures.estimate("peak_flux_W_m2", p.peakFlux());
        figures.number("wall_peak_flux_W_m2", p.wallPeakFlux());
        figures.number("mean_flux_W_m2", p.meanFlux());
        figures.number("peak_to_mean", p.peakToMean());
        figures.number("underside_share", p.undersideShare());
        figures.number("wall_share", p.wallShare());
        figures.number("middle_flux_W_m2", p.middleFlux());
        figures.number("evenness", p.evenness());
        json.writeStringField("frying", text(p.frying().level()));
        json.writeStringField("frying_spread", text(p.frying().spread()));
    }

    static String text(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void run(PanResult.RunInfo run) throws IOException {
        json.writeObjectFieldStart("run");
        json.writeNumberField("rays", run.rays());
        json.writeNumberField("threads", run.threads());
        figures.number("trace_seconds", run.traceSeconds());
        figures.number("move_seconds", run.moveSeconds());
        json.writeEndObject();
    }
}
