package simmerpoint.scenario;

import static simmerpoint.units.Dimension.ANGLE;
import static simmerpoint.units.Dimension.IRRADIANCE;
import static simmerpoint.units.Dimension.LENGTH;
import static simmerpoint.units.Dimension.SHARE;

import java.util.List;

/** The keys of {@code sun} and {@code aim}. */
final class SunAndAimKeys {
    static final String UNIFORM_DISC = "uniform-disc";
    static final String LIMB_DARKENED = "limb-darkened";
    static final String GAUSSIAN = "gaussian";
    static final String CIRCUMSOLAR = "circumsolar";
    static final String TABLE = "table";
    static final List<String> SHAPES = List.of(UNIFORM_DISC, LIMB_DARKENED, GAUSSIAN, CIRCUMSOLAR, TABLE);
    static final List<String> CARRIERS = List.of("stand", "dish");

    private static final Range MISAIMED = Range.between(ANGLE, "-30°", "30°");
    private static final Range SUN_WIDTH = Range.above(ANGLE, "0 mrad", "50 mrad");

    private SunAndAimKeys() {}

    static List<Key> keys() {
        KeyMaker sun = KeyMaker.in("sun");
        KeyMaker shape = KeyMaker.in("sun.shape");
        KeyMaker aim = KeyMaker.in("aim");
        KeyMaker turn = KeyMaker.in("aim.turn");
        KeyMaker drift = KeyMaker.in("aim.drift");
        return List.of(
                sun.angle(
                        "elevation",
                        "50°",
                        "50°",
                        Range.above(ANGLE, "0°", "90°"),
                        "Height of the sun above the horizon when the dish was aimed."),
                sun.quantity(
                        IRRADIANCE,
                        "beam",
                        "850 W/m²",
                        "850 W/m²",
                        Range.above(IRRADIANCE, "0 W/m²", "1500 W/m²"),
                        "Direct sunlight on a surface that faces the sun."),
                shape.word("kind", UNIFORM_DISC, SHAPES, "How brightness is spread over the sun."),
                shape.onlyFor(UNIFORM_DISC, LIMB_DARKENED)
                        .angle("half-angle", "4.65 mrad", "4.65 mrad", SUN_WIDTH, "Half the sun's width."),
                shape.onlyFor(GAUSSIAN)
                        .angle(
                                "sigma",
                                "2.3 mrad",
                                "2.3 mrad",
                                SUN_WIDTH,
                                "Standard deviation per axis of the sun's rays."),
                shape.onlyFor(CIRCUMSOLAR)
                        .share(
                                "ratio",
                                "0.05",
                                "0.05",
                                Range.between(SHARE, "0.01", "0.6"),
                                "Share of the direct light that comes from the haze around the sun."),
                shape.onlyFor(TABLE)
                        .file(
                                "file",
                                "sun.csv",
                                "CSV table of the sun's brightness from its centre outwards: first the line angle_mrad,relative_radiance (or angle_deg, angle_arcmin), then an angle and a brightness on each line, angles rising from 0."),
                turn.angle("up", "0°", "0.5°", MISAIMED, "The dish points too high by this angle."),
                turn.angle(
                        "side",
                        "0°",
                        "0.5°",
                        MISAIMED,
                        "The dish points sideways by this angle on the sky; positive to the right of whoever stands behind it and faces the sun."),
                drift.angle(
                        "up", "0°", "0.5°", MISAIMED, "The sun has climbed by this angle since the dish was aimed."),
                drift.angle(
                        "side",
                        "0°",
                        "0.5°",
                        MISAIMED,
                        "The sun has moved sideways by this angle on the sky since the dish was aimed; positive to the right of whoever faces it."),
                aim.angle(
                        "jitter",
                        "0 mrad",
                        "2 mrad",
                        Range.between(ANGLE, "0 mrad", "200 mrad"),
                        "How much the dish shakes (standard deviation per axis)."),
                aim.length(
                        "mount",
                        "0 cm",
                        "5 cm",
                        Range.between(LENGTH, "-10 m", "10 m"),
                        "How far behind the dish the point lies about which it is turned."),
                aim.word(
                        "pan-carried-by",
                        "stand",
                        CARRIERS,
                        "Whether the pan stands on its own or moves with the dish."));
    }
}
