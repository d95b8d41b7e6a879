package simmerpoint.report;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import simmerpoint.answer.CompareAnswer;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.StableNumber;
import simmerpoint.quantities.VariantNames;
import simmerpoint.quantities.Version;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.compare.Comparison;

/**
 * Compared cookers as a table, the best first, for a spreadsheet or a script. Lines that start with # say what the columns
 * are. Always in metric units, with a decimal point; an empty cell is a figure that does not exist. Texts that hold a comma
 * stand in double quotes.
 */
public final class CompareCsv {
    private static final int DIGITS = 6;

    private final Comparison comparison;
    private final VariantNames names;
    private final Set<String> keys = new LinkedHashSet<>();
    private final StringBuilder out = new StringBuilder(1 << 12);

    private CompareCsv(Comparison comparison) {
        this.comparison = comparison;
        names = new VariantNames(comparison.variants());
        comparison.variants().forEach(variant -> keys.addAll(variant.varied().keySet()));
    }

    /** The bytes of the file for {@code comparison}, in UTF-8. */
    public static byte[] bytes(Comparison comparison) {
        CompareCsv csv = new CompareCsv(comparison);
        csv.head();
        for (int k = 0; k < comparison.rows().size(); k++) {
            csv.row(k + 1, comparison.rows().get(k));
        }
        return csv.out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void head() {
        comment("Simmerpoint " + Version.text() + " compare");
        comment("title: " + CompareAnswer.title(comparison));
        comment("seed: " + comparison.seed() + "; replicates: " + comparison.replicates());
        comment("absorbed: taken up by the pan or caught by the bare disc; _se: standard error");
        comment(
                "difference: absorbed watts beyond those of the first row; from shared samples; seen: whether it passes "
                        + ComparedRow.SEEN_ERRORS + " standard errors");
        comment("boil: time for the pan's water to boil with the likely losses; empty if it never does");
        comment(
                "drift: how far the sun may drift from a dead-on aim before a tenth of the watts is lost; and how long it"
                        + " takes for that at its fastest");
        List<String> heads = new ArrayList<>(List.of("rank", "name", "file"));
        heads.addAll(keys);
        heads.addAll(List.of(
                "absorbed_W",
                "absorbed_se_W",
                "difference_W",
                "difference_se_W",
                "difference_seen",
                "caught_W",
                "caught_se_W",
                "peak_flux_W_m2",
                "peak_flux_se_W_m2",
                "boil_min",
                "panels",
                "drift_deg",
                "drift_se_deg",
                "drift_min"));
        line(heads);
    }

    private void comment(String text) {
        out.append("# ").append(text.replace(",", ";")).append('\n');
    }

    private void row(int rank, ComparedRow row) {
        List<String> cells = new ArrayList<>(List.of(
                String.valueOf(rank),
                names.name(row.variant()),
                OneLine.of(row.variant().file())));
        keys.forEach(key -> cells.add(OneLine.of(row.variant().varied().getOrDefault(key, ""))));
        both(cells, row.absorbed());
        both(cells, row.difference());
        cells.add(row.isSeenToDiffer() ? "yes" : "no");
        both(cells, row.ledger().caught());
        both(cells, row.peakFlux());
        cells.add(number(row.boil().map(DayCsv::boilSeconds).orElse(Double.NaN) / 60));
        cells.add(String.valueOf(row.panels()));
        Optional<Estimate> degrees = row.drift().map(angle -> angle.times(Math.toDegrees(1)));
        both(cells, degrees.orElse(new Estimate(Double.NaN, Double.NaN)));
        cells.add(number(row.driftSeconds().map(Estimate::value).orElse(Double.NaN) / 60));
        line(cells);
    }

    private static void both(List<String> cells, Estimate e) {
        cells.add(number(e.value()));
        cells.add(Double.isFinite(e.value()) ? number(e.standardError()) : "");
    }

    private static String number(double x) {
        return StableNumber.of(x, DIGITS);
    }

    private void line(List<String> cells) {
        out.append(cells.stream().map(CompareCsv::quoted).collect(Collectors.joining(",")))
                .append('\n');
    }

    private static String quoted(String text) {
        return text.contains(",") || text.contains("\"") ? "\"" + text.replace("\"", "\"\"") + "\"" : text;
    }
}
