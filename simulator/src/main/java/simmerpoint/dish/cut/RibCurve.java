package simmerpoint.dish.cut;

import simmerpoint.dish.Curve;
import simmerpoint.dish.CutParameter;
import simmerpoint.dish.CutValues;

/** The key that says what curve ribs are cut to, and what is said of it. */
final class RibCurve {
    static final CutParameter CURVE = CutParameter.word(
            "curve",
            Curve.PARABOLA.word(),
            Curve.words(),
            "What curve the ribs are cut to: the parabola of the focal length; a circle of twice that radius; or a chain hung from both"
                    + " ends of the rim, as deep as the parabola.");

    private RibCurve() {}

    static Curve of(CutValues values) {
        return Curve.of(values.word(CURVE));
    }

    /** End of a description. */
    static String words(Curve curve) {
        return switch (curve) {
            case PARABOLA -> "";
            case CIRCLE -> ", curved as a circle";
            case HANGING_CHAIN -> ", curved as a hanging chain";
        };
    }
}
