package simmerpoint.report;

import java.nio.charset.StandardCharsets;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.StableNumber;
import simmerpoint.quantities.Version;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.design.DesignChoice;
import simmerpoint.study.design.DesignResult;
import simmerpoint.study.design.DishCandidate;

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
        comment("wanted_W: " + StableNumber.of(result.goal().watts(), DIGITS));
        comment("seed: " + result.run().seed() + "; of the check "
                + result.run().checkSeed());
        comment("rows with watts were traced anew with another seed; the others are as the search saw them");
        out.append("wanted_W,panels,cut,sectors,rings,diameter_cm,focal_length_cm,watts_W,watts_se_W,peak_kW_m2,"
                + "pan_height_cm,drift_tolerance_deg\n");
        result.front().forEach(choice -> checked(result, choice));
        for (DesignResult.Front front : result.fronts()) {
            if (front.watts() != result.goal().watts()) {
                front.candidates().forEach(candidate -> row(front.watts(), candidate, ",,,,,"));
            }
        }
        return out.toString();
    }

    private void comment(String text) {
        out.append("# ").append(text.replace(",", ";")).append('\n');
    }

    private void checked(DesignResult result, DesignChoice c) {
        row(
                result.goal().watts(),
                c.candidate(),
                "," + number(c.watts().value()) + "," + number(c.watts().standardError()) + ","
                        + number(c.peakFlux().value() / 1000) + "," + number(100 * c.panHeightMetres()) + ","
                        + c.tolerance()
                                .drift()
                                .map(Estimate::value)
                                .map(Math::toDegrees)
                                .map(DesignCsv::number)
                                .orElse(""));
    }

    private void row(double wanted, DishCandidate candidate, String rest) {
        out.append(number(wanted)).append(',');
        out.append(candidate.layout().panels()).append(',');
        out.append(candidate.layout().cut().word()).append(',');
        out.append(candidate.layout().sectors()).append(',');
        out.append(candidate.layout().rings()).append(',');
        out.append(candidate.diameterCentimetres()).append(',');
        out.append(candidate.focalCentimetres()).append(rest).append('\n');
    }

    private static String number(double x) {
        return StableNumber.of(x, DIGITS);
    }
}
