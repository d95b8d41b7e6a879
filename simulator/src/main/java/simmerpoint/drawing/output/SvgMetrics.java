package simmerpoint.drawing.output;

/**
 * How wide text gets in a browser whose fonts are not known: widths of letters in groups, those of DejaVu Sans, which is wider than the
 * other fonts that the page asks for. The same on every machine, so that a page's bytes are.
 */
final class SvgMetrics {
    private static final double BOLD = 1.1;
    private static final String NARROW = "iljI.,:;|!'()[]/ \u00a0\u2009\u2019ft-r";
    private static final String WIDE = "mwMWQOGNH%@\u2192\u2190\u2191\u2193\u2026+=\u2212\u00b1\u00d7<>~#&";

    private SvgMetrics() {}

    static double width(String words, double size, boolean bold) {
        double ems = words.codePoints().mapToDouble(SvgMetrics::ems).sum();
        return ems * size * (bold ? BOLD : 1);
    }

    private static double ems(int letter) {
        if (NARROW.indexOf(letter) >= 0) {
            return 0.36;
        }
        if (WIDE.indexOf(letter) >= 0) {
            return 0.83;
        }
        return Character.isUpperCase(letter) ? 0.68 : 0.61;
    }
}
