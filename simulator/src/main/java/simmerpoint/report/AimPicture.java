package simmerpoint.report;

import java.awt.image.BufferedImage;
import simmerpoint.study.aim.AimResult;
import simmerpoint.units.UnitSystem;

/** Aiming as a picture: watts over drift, turn and time as curves, over both axes as maps. */
public final class AimPicture {
    private AimPicture() {}

    /** The bytes of a PNG file for {@code result}, its words in the units of {@code system}. */
    public static byte[] bytes(AimResult result, UnitSystem system) {
        return Sheets.png(image(result, system));
    }

    /** The picture itself, 1400 pixels wide. */
    public static BufferedImage image(AimResult result, UnitSystem system) {
        AimSheet sheet = new AimSheet(result, system);
        return Sheets.image(AimSheet.WIDTH, AimSheet.HEIGHT, sheet::paint);
    }
}
