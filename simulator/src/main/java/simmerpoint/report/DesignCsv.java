package simmerpoint.report;

import java.nio.charset.StandardCharsets;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.StableNumber;
import simmerpoint.quantities.Version;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.DesignChoice;
import simmerpoint.study.DesignResult;
import simmerpoint.study.DishSketch;

/** The dishes a search has found, one row each. Always in cm, W, kW/m² and degrees, with a decimal point. */
public final class DesignCsv {
    private static final int DIGITS = 6;

    private final StringBuilder out = new StringBuilder(1 << 12);

    private DesignCsv() {}

    /** The bytes of the file for {@code result}, in UTF-8. */
    public static byte[] bytes(DesignResult result) {
        return new DesignCsv().write(result).getBytes(StandardCharsets.UTF_8);
    }

    private String write(DesignResult result) {
        comment("Simmerpoint " + Version.text() + " dishes found");
        comment("title: " + OneLine.of(result.scenario().title()));
        comment("wanted_W: " + StableNumber.of(result.wish().watts(), DIGITS));
        comment("seed: " + result.run().seed() + "; of the check "
                + result.run().checkSeed());
        comment("rows with watts were traced anew with another seed; the others are as the search saw them");
        out.append("wanted_W,panels,cut,sectors,rings,diameter_cm,focal_length_cm,watts_W,watts_se_W,peak_kW_m2,"
                + "pan_height_cm,drift_tolerance_deg\n");
        result.front().forEach(choice -> checked(result, choice));
        for (DesignResult.Front front : result.fronts()) {
            if (front.watts() != result.wish().watts()) {
                front.sketches().forEach(sketch -> row(front.watts(), sketch, ",,,,,"));
            }
        }
        return out.toString();
    }

    private void comment(String text) {
        out.append("# ").append(text.replace(",", ";")).append('\n');
    }

    private void checked(DesignResult result, DesignChoice c) {
        row(
                result.wish().watts(),
                c.sketch(),
                "," + number(c.watts().value()) + "," + number(c.watts().standardError()) + ","
                        + number(c.peakFlux().value() / 1000) + "," + number(100 * c.panHeightMetres()) + ","
                        + c.tolerance()
                                .drift()
                                .map(Estimate::value)
                                .map(Math::toDegrees)
                                .map(DesignCsv::number)
                                .orElse(""));
    }

    private void row(double wanted, DishSketch sketch, String rest) {
        out.append(number(wanted)).append(',');
        out.append(sketch.layout().panels()).append(',');
        out.append(sketch.layout().cut().word()).append(',');
        out.append(sketch.layout().sectors()).append(',');
        out.append(sketch.layout().rings()).append(',');
        out.append(sketch.diameterCentimetres()).append(',');
        out.append(sketch.focalCentimetres()).append(rest).append('\n');
    }

    private static String number(double x) {
        return StableNumber.of(x, DIGITS);
    }
}
