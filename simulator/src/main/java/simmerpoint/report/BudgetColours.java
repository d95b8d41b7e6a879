package simmerpoint.report;

import java.awt.Color;

/**
 * Colours of a budget's bars: a dark blue and a light orange, which keep their contrast of light and dark in grey and for
 * the colour-blind (L* 38 and 74 in CIELAB).
 */
final class BudgetColours {
    /** Watts of a whole cooker. */
    static final Color WHOLE = new Color(0x4A4F57);

    /** A flaw mended alone. */
    static final Color IN_TURN = new Color(0x1F5A93);

    /** A flaw that is there alone. */
    static final Color ALONE = new Color(0xF0A441);

    /** What flaws do together. */
    static final Color LEFT = new Color(0x9AA0AA);

    private BudgetColours() {}
}
