package simmerpoint.drawing;

/**
 * The colours of drawings by what they are for, in each {@link ColourScheme}. Words on the ground they are meant for have a contrast of 4.5
 * or more, lines that carry meaning 3 or more (WCAG 2.2, level AA).
 */
public enum Ink {
    /** What drawings lie on. */
    PAPER(0xFBFAF6, 0x14181B, 0xFFFFFF),
    /** What figures and tables lie on, and pans are filled with. */
    SHEET(0xFFFFFF, 0x1C2226, 0xFFFFFF),
    /** Words, figures, outlines. */
    INK(0x1C2126, 0xECE9E1, 0x1A1A1A),
    /** Words that can wait, frames. */
    SOFT(0x4C545B, 0xB3B8B9, 0x4A4A4A),
    /** Headings, mirrors, curves of a second kind. */
    ACCENT(0x0A5A70, 0x86CBDC, 0x0A4A5C),
    /** Sunlight on its way to the dish. */
    SUN(0xB45309, 0xF2B45C, 0xA34A06),
    /** Light on its way from mirror to pan. */
    RAY(0xB45309, 0xF2B45C, 0xA34A06),
    /** Light that goes past. */
    LOST(0x6B6475, 0xA79FB5, 0x6B6475),
    /** What is wrong. */
    WARNING(0xA31621, 0xFF9A94, 0xA31621),
    /** Things that a mouse can take hold of. */
    HANDLE(0x0B5C78, 0x7CC7E0, 0x0B5C78),
    /** Panels that look away from the light of a drawing; the next ones are paler. */
    SHADE_0(0x7C93A0, 0x41535D, 0x7C93A0),
    /** The second darkest. */
    SHADE_1(0x93A9B5, 0x506672, 0x93A9B5),
    /** The third. */
    SHADE_2(0xA9BDC8, 0x607885, 0xA9BDC8),
    /** The fourth. */
    SHADE_3(0xBFD0D9, 0x728B98, 0xBFD0D9),
    /** The fifth. */
    SHADE_4(0xD4E1E8, 0x869FAB, 0xD4E1E8),
    /** The palest. */
    SHADE_5(0xE8F0F4, 0x9CB4BF, 0xE8F0F4),
    /** Between panels. */
    PANEL_EDGE(0x4A5F6B, 0x1A2227, 0x4A5F6B),
    /** The outline of pans. */
    PAN(0x2B2B2B, 0xD8D4CA, 0x2B2B2B),
    /** The ground. */
    EARTH(0xCFC7B3, 0x4A4436, 0xCFC7B3),
    /** Scale and heading of the hottest spot. */
    FLUX_SCALE(0x0B4F9E, 0x8FBFFF, 0x0B4F9E),
    /** Ranges about curves on the paper: {@link #ACCENT}, see-through. */
    SPREAD(0x4D0A5A70, 0x4D86CBDC, 0x4D0A4A5C),
    /** Grid lines, on paper and on bands. */
    GRID(0x597F868C),
    /** What is drawn over data colours, which are the same in every theme. */
    BLACK(0x111111),
    /** The ground of charts, words on dark colours. */
    WHITE(0xFFFFFF),
    /** Keeps a dark line apart from what lies below it. */
    PALE_SEAM(0xD9FFFFFF),
    /** Keeps a pale line apart from what lies below it. */
    DARK_SEAM(0xB3000000),
    /** A plate below white words on a map. */
    PLATE(0xB324082F),
    /** What lies between heat levels. */
    BORDER(0x4C545B),
    /** Four in five pans change their level within it. */
    RANGE(0x3F464C),
    /** The curve of the hottest spot. */
    FLUX(0x0B4F9E),
    /** Too cool: lightness falls from level to level (L* 96, 84, 70, 48, 30 in CIELAB), for grey and for the colour-blind. */
    LEVEL_0(0xF3F4F6),
    /** Keeps warm. */
    LEVEL_1(0xF2CC8B),
    /** Simmers. */
    LEVEL_2(0xE69A4C),
    /** Boils. */
    LEVEL_3(0xB4561A),
    /** Boils fast. */
    LEVEL_4(0x7C2F17),
    /** Words on the three pale levels. */
    ON_PALE(0x1A1A1A),
    /** A range about a curve on bands. */
    DOUBT(0x8CFFFFFF),
    /** Watts of a whole cooker. */
    WHOLE(0x4C545B, 0xB3B8B9, 0x4A4F57),
    /** A flaw mended alone, dark (L* 38); with {@link #ALONE} told apart in grey and by the colour-blind. */
    MENDED(0x1F5A93),
    /** A flaw that is there alone, light (L* 74). */
    ALONE(0xF0A441),
    /** What flaws do together. */
    TOGETHER(0x9AA0AA),
    /** What is not seen to differ from the best. */
    LIKE_BEST(0x1F4E8C),
    /** What is worse than the best. */
    WORSE(0x9DB8DA),
    /** The first of three curves that are told apart in grey too. */
    CURVE_1(0x6E9ECF),
    /** The second, the darkest. */
    CURVE_2(0x1B4F8A),
    /** The second in a legend, which lies on the paper. */
    CURVE_2_SAMPLE(0x1B4F8A, 0x8FBFFF, 0x1B4F8A),
    /** The third. */
    CURVE_3(0xC25B12),
    /** Where a map holds no figure. */
    MISSING(0xB8B8B8);

    private static final int OPAQUE = 0xFF000000;

    private final int light;
    private final int dark;
    private final int print;
    private final boolean fixed;

    Ink(int light, int dark, int print, boolean fixed) {
        this.light = light;
        this.dark = dark;
        this.print = print;
        this.fixed = fixed;
    }

    /** 0xRRGGBB or, where it can be seen through, 0xAARRGGBB. */
    Ink(int light, int dark, int print) {
        this(light, dark, print, false);
    }

    Ink(int always) {
        this(always, always, always, true);
    }

    /** Whether every theme has the same. */
    public boolean isFixed() {
        return fixed;
    }

    /** 0xAARRGGBB in a theme. */
    int argb(ColourScheme theme) {
        int colour = switch (theme) {
            case LIGHT -> light;
            case DARK -> dark;
            case PRINT -> print;
        };
        return colour >>> 24 == 0 ? colour | OPAQUE : colour;
    }
}
