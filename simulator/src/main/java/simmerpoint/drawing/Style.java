package simmerpoint.drawing;

import java.util.Locale;
import java.util.Optional;
import simmerpoint.heat.HeatLevel;

/** How shapes look, by what they mean: an ink to fill with, a stroke for the outline, or both. */
@SuppressWarnings("ImmutableEnumChecker") // Dashes of a stroke are never written after it is made.
public enum Style {
    /** Below dark curves. */
    PALE_SEAM(stroke(Ink.PALE_SEAM, 4.8)),
    /** Below thin dark lines and small marks. */
    THIN_PALE_SEAM(stroke(Ink.PALE_SEAM, 3.4)),
    /** Below pale lines on a map. */
    DARK_SEAM(stroke(Ink.DARK_SEAM, 3.2)),
    /** Below marks on the cooker. */
    SHEET_SEAM(stroke(Ink.SHEET, 4)),

    /** The ground of a chart whose curves are dark in every theme. */
    CHART_GROUND(Ink.WHITE),
    /** Lines of a grid. */
    GRID(stroke(Ink.GRID, 0.7)),
    /** The line of a grid at 0. */
    ZERO(stroke(Ink.SOFT, 0.9)),
    /** Marks on an axis. */
    TICK(stroke(Ink.INK, 0.8)),
    /** Marks on the axis of the hottest spot. */
    FLUX_TICK(stroke(Ink.FLUX_SCALE, 0.8)),
    /** The edge of a chart or map. */
    FRAME(stroke(Ink.SOFT, 0.9)),
    /** The edge of a sample of colour. */
    SWATCH(stroke(Ink.SOFT, 0.6)),

    /** The cooking power of a pan. */
    WATTS_CURVE(PALE_SEAM, stroke(Ink.BLACK, 2.2)),
    /** The hottest spot, or a second curve beside the watts. */
    FLUX_CURVE(PALE_SEAM, stroke(Ink.FLUX, 1.9, 7, 4.5)),
    /** The first of three curves. */
    CURVE_1(stroke(Ink.CURVE_1, 2.2, 2, 4)),
    /** The second. */
    CURVE_2(stroke(Ink.CURVE_2, 2)),
    /** The third. */
    CURVE_3(stroke(Ink.CURVE_3, 2, 9, 4.5)),
    /** A dot on the second. */
    CURVE_DOT(Ink.CURVE_2),
    /** A curve on the drawing's own paper. */
    PLAIN_CURVE(stroke(Ink.INK, 2.1)),
    /** A sample of the curve of watts on paper. */
    WATTS_SAMPLE(stroke(Ink.INK, 2.2)),
    /** A sample of the second of three curves on paper. */
    CURVE_2_SAMPLE(stroke(Ink.CURVE_2_SAMPLE, 2)),
    /** A sample of the curve of the hottest spot on paper. */
    FLUX_SAMPLE(stroke(Ink.FLUX_SCALE, 1.9, 7, 4.5)),
    /** A range about a curve on bands. */
    DOUBT(Ink.DOUBT),
    /** A range about a curve on paper. */
    SPREAD(Ink.SPREAD),

    /** The band of the coolest heat level. */
    LEVEL_0(Ink.LEVEL_0),
    /** The band of the second. */
    LEVEL_1(Ink.LEVEL_1),
    /** The band of the third. */
    LEVEL_2(Ink.LEVEL_2),
    /** The band of the fourth. */
    LEVEL_3(Ink.LEVEL_3),
    /** The band of the hottest. */
    LEVEL_4(Ink.LEVEL_4),
    /** Between bands. */
    BORDER(stroke(Ink.BORDER, 0.7)),
    /** Within it four in five pans change their level. */
    RANGE(PALE_SEAM, stroke(Ink.RANGE, 2.6)),
    /** The likeliest place within a range. */
    KNOT(Ink.RANGE),

    /** A place that is shown, such as where the pan stands. */
    PRESENT(THIN_PALE_SEAM, stroke(Ink.BLACK, 1.1, 2, 3.4)),
    /** The same where it can be dragged. */
    PRESENT_HELD(PALE_SEAM, stroke(Ink.BLACK, 1.8)),
    /** A place that is pointed at. */
    POINTED(stroke(Ink.BLACK, 1, 2, 3)),
    /** A dot on a curve. */
    CURVE_MARK(Ink.BLACK),
    /** A dot on a curve on paper. */
    PLAIN_MARK(Ink.INK),
    /** A black mark on data. */
    MARK(THIN_PALE_SEAM, Ink.BLACK),
    /** The pole of a flag. */
    FLAG_POLE(PALE_SEAM, stroke(Ink.BLACK, 1.6)),
    /** Its cloth. */
    FLAG_CLOTH(PALE_SEAM, Ink.WHITE, stroke(Ink.BLACK, 1.4)),
    /** The white rim of a knob. */
    KNOB_RIM(Ink.WHITE),
    /** A knob. */
    KNOB(Ink.BLACK),
    /** What a mouse can take hold of. */
    HANDLE(Ink.HANDLE, stroke(Ink.PAPER, 1)),

    /** A pale outline on a map. */
    OUTLINE(DARK_SEAM, stroke(Ink.WHITE, 1.5)),
    /** The same in dashes. */
    OUTLINE_DASHED(DARK_SEAM, stroke(Ink.WHITE, 1.5, 8, 5)),
    /** The same in dots. */
    OUTLINE_DOTTED(DARK_SEAM, stroke(Ink.WHITE, 1.5, 2, 3.5)),
    /** A white dot with a dark edge. */
    DOT(Ink.WHITE, stroke(Ink.BLACK, 1.2)),
    /** Below white words on a map. */
    PLATE(Ink.PLATE),
    /** White on a plate. */
    ON_PLATE(Ink.WHITE),

    /** A panel that looks away from the light of the drawing. */
    SHADE_0(Ink.SHADE_0, stroke(Ink.PANEL_EDGE, 0.5)),
    /** A panel of the second darkest shade. */
    SHADE_1(Ink.SHADE_1, stroke(Ink.PANEL_EDGE, 0.5)),
    /** A panel of the third. */
    SHADE_2(Ink.SHADE_2, stroke(Ink.PANEL_EDGE, 0.5)),
    /** A panel of the fourth. */
    SHADE_3(Ink.SHADE_3, stroke(Ink.PANEL_EDGE, 0.5)),
    /** A panel of the fifth. */
    SHADE_4(Ink.SHADE_4, stroke(Ink.PANEL_EDGE, 0.5)),
    /** A panel of the palest. */
    SHADE_5(Ink.SHADE_5, stroke(Ink.PANEL_EDGE, 0.5)),
    /** Below the outline of a panel that is pointed at. */
    POINTED_SEAM(stroke(Ink.SHEET, 7)),
    /** The outline of a panel that is pointed at. */
    POINTED_PANEL(POINTED_SEAM, stroke(Ink.HANDLE, 3.2)),
    /** The outline of a shadow. */
    SHADOW(SHEET_SEAM, stroke(Ink.INK, 1.8, 6, 3)),
    /** The edge of a panel that is spoken of. */
    CHOSEN(stroke(Ink.SUN, 2)),
    /** A section of the mirror. */
    PROFILE(stroke(Ink.ACCENT, 2.3)),
    /** Pans from their side: knobs, handles. */
    SOLID(Ink.PAN),
    /** The rim of a pan. */
    RIM(stroke(Ink.PAN, 1.8)),
    /** The focus. */
    FOCUS(SHEET_SEAM, stroke(Ink.INK, 1.6)),
    /** Pan or disc. */
    TARGET(Ink.SHEET, stroke(Ink.PAN, 1.6)),
    /** Pan or disc where it is wrong. */
    TARGET_WRONG(Ink.SHEET, stroke(Ink.WARNING, 2.6)),
    /** A disc seen from its edge. */
    DISC(stroke(Ink.PAN, 3)),
    /** The ground. */
    GROUND(Ink.EARTH),
    /** The edge of the ground. */
    GROUND_EDGE(stroke(Ink.INK, 1)),
    /** Legs and stands, which are sketched. */
    STAND(stroke(Ink.SOFT, 2)),
    /** What holds the pan. */
    HOLDER(stroke(Ink.SOFT, 1.4, 3, 4)),
    /** What the dish turns about. */
    MOUNT(Ink.INK),
    /** The axis of the dish. */
    AXIS(stroke(Ink.SOFT, 0.9, 8, 3, 2, 3)),
    /** Sunlight on its way to the mirror. */
    SUNLIGHT(stroke(Ink.SUN, 1)),
    /** Sun and heads of arrows. */
    SUN(Ink.SUN),
    /** Light on its way from mirror to pan. */
    LIGHT_PATH(stroke(Ink.RAY, 1.2)),
    /** Light that goes past. */
    LOST_PATH(stroke(Ink.LOST, 1.4, 5, 4)),
    /** Heads of arrows of such light. */
    LOST(Ink.LOST),
    /** What is wrong. */
    WARNING(stroke(Ink.WARNING, 2)),
    /** Below words about a handle or a panel. */
    CALLOUT(Ink.SHEET, stroke(Ink.HANDLE, 1.5)),
    /** Below words about what is wrong. */
    CALLOUT_WRONG(Ink.SHEET, stroke(Ink.WARNING, 1.5)),

    /** The line of a length. */
    DIMENSION(stroke(Ink.INK, 0.8)),
    /** From a thing to the line of its length. */
    EXTENSION(stroke(Ink.SOFT, 0.6, 2, 2)),
    /** The bar of a scale. */
    SCALE_BAR(Ink.INK),

    /** Where to cut, at full size. */
    CUT(stroke(Ink.INK, 1)),
    /** A line to draw on a piece. */
    PATTERN_MARK(stroke(Ink.ACCENT, 0.8)),
    /** Where to trim a page. */
    TRIM(stroke(Ink.SOFT, 0.4)),
    /** Where a page's neighbour begins. */
    JOIN(stroke(Ink.SOFT, 0.4, 5, 4)),
    /** A ruler to check the printer by. */
    RULER(stroke(Ink.INK, 0.6)),
    /** A piece on a sheet. */
    PIECE(Ink.SHADE_4, stroke(Ink.INK, 0.6)),

    /** Watts of a whole cooker. */
    WHOLE(Ink.WHOLE),
    /** A flaw mended alone. */
    MENDED(Ink.MENDED, stroke(Ink.SOFT, 0.6)),
    /** A flaw that is there alone. */
    ALONE(Ink.ALONE, stroke(Ink.SOFT, 0.6)),
    /** What flaws do together. */
    TOGETHER(Ink.TOGETHER),
    /** A bar that is not seen to differ from the best. */
    LIKE_BEST(Ink.LIKE_BEST),
    /** A bar that is worse. */
    WORSE(Ink.WORSE),
    /** A dot that is not seen to differ from the best. */
    LIKE_BEST_DOT(Ink.LIKE_BEST, stroke(Ink.INK, 0.8)),
    /** A dot that is worse. */
    WORSE_DOT(Ink.WORSE, stroke(Ink.INK, 0.8)),
    /** The range of an estimate. */
    WHISKER(stroke(Ink.INK, 1.1)),
    /** From a step to the next. */
    STEP(stroke(Ink.SOFT, 0.8, 3, 3));

    private static final Style[] CURVES = {CURVE_1, CURVE_2, CURVE_3};
    private static final Style[] SHADES = {SHADE_0, SHADE_1, SHADE_2, SHADE_3, SHADE_4, SHADE_5};

    private final Optional<Style> under;
    private final Optional<Ink> fill;
    private final Optional<Stroke> outline;

    Style(Style under, Ink fill, Stroke outline) {
        this.under = Optional.ofNullable(under);
        this.fill = Optional.ofNullable(fill);
        this.outline = Optional.ofNullable(outline);
    }

    Style(Ink fill) {
        this(null, fill, null);
    }

    Style(Stroke outline) {
        this(null, null, outline);
    }

    Style(Ink fill, Stroke outline) {
        this(null, fill, outline);
    }

    Style(Style under, Stroke outline) {
        this(under, null, outline);
    }

    Style(Style under, Ink fill) {
        this(under, fill, null);
    }

    private static Stroke stroke(Ink ink, double width, double... dashes) {
        return new Stroke(ink, width, dashes);
    }

    /** The band of a heat level. */
    public static Style of(HeatLevel level) {
        return switch (level) {
            case TOO_COOL -> LEVEL_0;
            case KEEP_WARM -> LEVEL_1;
            case SIMMER -> LEVEL_2;
            case BOIL -> LEVEL_3;
            case FAST_BOIL -> LEVEL_4;
        };
    }

    /** A panel by the share of light that it gets in a drawing, 0 to 1. */
    public static Style shade(double share) {
        return SHADES[(int) Math.max(0, Math.min(SHADES.length - 1, Math.floor(share * SHADES.length)))];
    }

    /** One of three curves that are told apart in grey too. */
    public static Style curve(int k) {
        return CURVES[k % CURVES.length];
    }

    /** How a sample of a curve looks beside it, on the drawing's own paper. */
    public Style sample() {
        return switch (this) {
            case WATTS_CURVE -> WATTS_SAMPLE;
            case FLUX_CURVE -> FLUX_SAMPLE;
            case CURVE_2 -> CURVE_2_SAMPLE;
            default -> this;
        };
    }

    /** What the same shape is drawn with before. */
    public Optional<Style> under() {
        return under;
    }

    /** What it is filled with. */
    public Optional<Ink> fill() {
        return fill;
    }

    /** Its outline. */
    public Optional<Stroke> outline() {
        return outline;
    }

    /** Its name in style sheets. */
    public String cssClass() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
