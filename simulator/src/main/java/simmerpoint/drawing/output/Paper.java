package simmerpoint.drawing.output;

import simmerpoint.units.UnitSystem;

/**
 * A size of paper.
 *
 * @param widthMillimetres of the upright sheet
 * @param heightMillimetres of the upright sheet
 */
public record Paper(double widthMillimetres, double heightMillimetres) {
    /** ISO 216. */
    public static final Paper A4 = new Paper(210, 297);

    /** 8.5 by 11 inches (ANSI/ASME Y14.1, size A). */
    public static final Paper LETTER = new Paper(215.9, 279.4);

    /** What printers hold where those units are used. */
    public static Paper usual(UnitSystem units) {
        return units == UnitSystem.INCH ? LETTER : A4;
    }

    /** The same sheet lying. */
    public Paper landscape() {
        return new Paper(heightMillimetres, widthMillimetres);
    }
}
