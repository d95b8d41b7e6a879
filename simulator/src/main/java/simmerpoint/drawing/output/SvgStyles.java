package simmerpoint.drawing.output;

import java.util.Locale;
import java.util.Optional;
import simmerpoint.drawing.ColourScheme;
import simmerpoint.drawing.Ink;
import simmerpoint.drawing.Stroke;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextStyle;

/** The style sheet of drawings in a page: each ink a variable, each style a class. */
public final class SvgStyles {
    private static final int LARGEST = 24;
    private static final int OPAQUE = 0xFF;

    private SvgStyles() {}

    /** The whole sheet, for screens in light and dark and for paper. */
    public static String sheet() {
        StringBuilder css = new StringBuilder(1 << 13);
        css.append(":root {").append(variables(ColourScheme.LIGHT)).append(" }\n");
        css.append("@media (prefers-color-scheme: dark) { :root {")
                .append(variables(ColourScheme.DARK))
                .append(" } }\n");
        css.append("@media print { :root {")
                .append(variables(ColourScheme.PRINT))
                .append(" } }\n");
        for (Style style : Style.values()) {
            css.append(".drawing .")
                    .append(style.cssClass())
                    .append(" { ")
                    .append(rules(style))
                    .append(" }\n");
        }
        for (TextStyle style : TextStyle.values()) {
            css.append(".drawing .")
                    .append(style.cssClass())
                    .append(" { ")
                    .append(rules(style))
                    .append(" }\n");
        }
        for (int size = (int) Text.LEAST; size <= LARGEST; size++) {
            css.append(".drawing .size-")
                    .append(size)
                    .append(" { font-size: ")
                    .append(size)
                    .append("px; }\n");
        }
        return css.toString();
    }

    /** Inks that are the same in every theme are told in the first. */
    private static String variables(ColourScheme theme) {
        StringBuilder out = new StringBuilder();
        for (Ink ink : Ink.values()) {
            if (theme == ColourScheme.LIGHT || !ink.isFixed()) {
                out.append(" --")
                        .append(name(ink))
                        .append(": ")
                        .append(colour(theme.argb(ink)))
                        .append(';');
            }
        }
        return out.toString();
    }

    private static String name(Ink ink) {
        return ink.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String variable(Ink ink) {
        return "var(--" + name(ink) + ")";
    }

    private static String colour(int argb) {
        String rgb = String.format(Locale.ROOT, "#%06x", argb & 0xFFFFFF);
        int alpha = argb >>> 24;
        return alpha == OPAQUE ? rgb : rgb + String.format(Locale.ROOT, "%02x", alpha);
    }

    private static String rules(Style style) {
        String fill = style.fill().map(SvgStyles::variable).orElse("none");
        return "fill: " + fill + ";"
                + (style.fill().isPresent() ? " fill-rule: evenodd;" : "")
                + style.outline().map(SvgStyles::rules).orElse("");
    }

    private static String rules(Stroke stroke) {
        StringBuilder out = new StringBuilder(" stroke: " + variable(stroke.ink()) + "; stroke-width: "
                + plain(stroke.width()) + "; stroke-linejoin: round;");
        if (stroke.dashes().length == 0) {
            return out.append(" stroke-linecap: round;").toString();
        }
        out.append(" stroke-dasharray:");
        for (double dash : stroke.dashes()) {
            out.append(' ').append(plain(dash));
        }
        return out.append(';').toString();
    }

    private static String rules(TextStyle style) {
        Optional<String> rim =
                style.rim().map(ink -> " stroke: " + variable(ink) + "; stroke-width: " + plain(TextStyle.RIM) + ";");
        return "fill: " + variable(style.ink()) + ";" + (style.bold() ? " font-weight: 700;" : "")
                + rim.orElse(" stroke: none;");
    }

    private static String plain(double x) {
        return x == Math.rint(x) ? Long.toString((long) x) : Double.toString(x);
    }

    /** The classes of a text. */
    static String of(Text text) {
        long size = Math.max((long) Text.LEAST, Math.min(LARGEST, Math.round(text.size())));
        return text.style().cssClass() + (size == Text.SIZE ? "" : " size-" + size);
    }
}
