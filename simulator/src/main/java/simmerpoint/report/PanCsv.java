package simmerpoint.report;

import java.nio.charset.StandardCharsets;
import simmerpoint.answer.LevelWords;
import simmerpoint.answer.MoveWords;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.StableNumber;
import simmerpoint.quantities.Version;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.PanResult;

/** The three moves as a table: one row per move and position. Always in mm, W and kW/m², with a decimal point. */
public final class PanCsv {
    private static final int DIGITS = 6;
    private static final double MILLIMETRES = 1000;
    private static final double KILOWATTS = 1e-3;

    private final StringBuilder out = new StringBuilder(1 << 15);

    private PanCsv() {}

    /** The bytes of the file for {@code result}, in UTF-8. */
    public static byte[] bytes(PanResult result) {
        return new PanCsv().write(result).getBytes(StandardCharsets.UTF_8);
    }

    private String write(PanResult result) {
        comment("Simmerpoint " + Version.text() + " moves of the pan");
        comment("title: " + OneLine.of(result.base().scenario().title()));
        comment("seed: " + result.base().seed());
        comment(
                "offset_mm: from where the pan stands; stand_mm: from the focus; absorbed_W: taken up by the pan with the "
                        + "direct sunlight; absorbed_se_W: its standard error from sampling");
        comment(
                "peak_kW_m2: hottest place of the underside; wall_peak_kW_m2: of the wall; mean_kW_m2: mean of the underside; "
                        + "wall_share: share of the focused light on the pan that climbs its wall; middle_kW_m2: taken up by the middle");
        out.append(
                "move,offset_mm,stand_mm,absorbed_W,absorbed_se_W,heat_level,peak_kW_m2,peak_se_kW_m2,wall_peak_kW_m2,"
                        + "mean_kW_m2,wall_share,middle_kW_m2,evenness,frying\n");
        for (PanMove move : result.moves()) {
            for (PanPosition position : move.positions()) {
                row(move, position);
            }
        }
        return out.toString();
    }

    private void comment(String text) {
        out.append("# ").append(text.replace(",", ";")).append('\n');
    }

    private void row(PanMove move, PanPosition p) {
        out.append(MoveWords.key(move.move()));
        number(p.offsetMetres() * MILLIMETRES);
        number((move.presentMetres() + p.offsetMetres()) * MILLIMETRES);
        number(p.absorbed().value());
        number(p.absorbed().standardError());
        out.append(',').append(LevelWords.of(p.level()));
        number(p.peakFlux().value() * KILOWATTS);
        number(p.peakFlux().standardError() * KILOWATTS);
        number(p.wallPeakFlux() * KILOWATTS);
        number(p.meanFlux() * KILOWATTS);
        number(p.wallShare());
        number(p.middleFlux() * KILOWATTS);
        number(p.evenness());
        out.append(',').append(PanJson.text(p.frying().level())).append('\n');
    }

    private void number(double x) {
        out.append(',').append(StableNumber.of(x, DIGITS));
    }
}
