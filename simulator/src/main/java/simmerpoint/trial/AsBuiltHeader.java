package simmerpoint.trial;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import simmerpoint.trial.fit.TrialFit;
import simmerpoint.trial.fit.TrialFit.KnownCause;
import simmerpoint.trial.log.TrialLog;
import simmerpoint.uncertainty.LikelyRange;

/**
 * The comment before a scenario of a cooker as its logs show it: what it holds and what it cannot hold.
 *
 * @param result what the logs say
 * @param fit the same by the model
 * @param power of the written scenario in the light and weather of the first log, W
 * @param others causes of doubt that the scenario has no figure for
 */
record AsBuiltHeader(TrialResult result, TrialFit fit, LikelyRange power, List<KnownCause> others) {
    /** A range so much wider counts as the same. */
    private static final double ALIKE = 1.15;

    /** A cause of less than this share of the doubt that came back is not named. */
    private static final double WORTH_A_WORD = 0.05;

    /** Standard deviations to each side that hold four in five by a normal law. */
    private static final double FOUR_IN_FIVE = 1.281552;

    private static final int WIDTH = 110;

    String text() {
        TrialLog first = fit.curves().get(0).log();
        double low = fit.watts() - FOUR_IN_FIVE * fit.error();
        double high = fit.watts() + FOUR_IN_FIVE * fit.error();
        return lines(
                "As built, by the logs " + names(result.logs())
                        + ": figures of the cooker as they show it. In the light and weather of "
                        + name(first) + " the cooking power of four in five such cookers is " + span(low, high)
                        + " by the logs and "
                        + span(power.low(), power.high()) + " by this file." + width(high - low)
                        + " A single figure is less well known than its ± says. Sun, wind and air are those of the scenario, with their doubts."
                        + " Lengths are counted as they truly are, so the comments of those logs, which were not, do not go with this file.");
    }

    private String width(double wanted) {
        return power.width() <= ALIKE * wanted
                ? " Every ± is narrowed until these agree."
                : " The file is less sure, since it has no key for what the logs say of " + causes()
                        + ": the usual doubts about that come back. Every other ± is narrowed, to a fifth at the most, to make up for"
                        + " it." + loss();
    }

    /** "what the pan loses, how black the pan is": those that matter, as the reader is told them. */
    private String causes() {
        double all = others.stream().mapToDouble(AsBuiltHeader::square).sum();
        List<String> names = others.stream()
                .collect(Collectors.groupingBy(
                        cause -> cause.doubt().name(), Collectors.summingDouble(AsBuiltHeader::square)))
                .entrySet()
                .stream()
                .filter(cause -> cause.getValue() > WORTH_A_WORD * all)
                .sorted((a, b) -> Double.compare(b.getValue(), a.getValue()))
                .map(cause -> cause.getKey())
                .toList();
        return names.isEmpty() ? "other causes" : String.join(", ", names);
    }

    private static double square(KnownCause cause) {
        return cause.watts() * cause.watts();
    }

    private String loss() {
        return result.protocol()
                .map(p -> String.format(
                        Locale.ROOT,
                        " By %s the pan loses %.2f W/K.",
                        p.fromCooling() ? "its cooling" : "the logs",
                        p.lossWattsPerKelvin()))
                .orElse("");
    }

    private static String span(double low, double high) {
        return String.format(Locale.ROOT, "%.0f to %.0f W", low, high);
    }

    private static String names(List<TrialLog> logs) {
        return logs.stream().map(AsBuiltHeader::name).collect(Collectors.joining(", "));
    }

    private static String name(TrialLog log) {
        return log.file().getFileName().toString().replaceAll("\\p{Cntrl}", "?");
    }

    /** As comments of a file. */
    private static String lines(String text) {
        StringBuilder out = new StringBuilder("#");
        int length = 1;
        for (String word : text.split(" ")) {
            if (length + 1 + word.length() > WIDTH) {
                out.append("\n#");
                length = 1;
            }
            out.append(' ').append(word);
            length += 1 + word.length();
        }
        return out.append('\n').toString();
    }
}
