package simmerpoint.report;

import java.awt.image.BufferedImage;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.units.UnitSystem;

/**
 * A budget of flaws as a picture: bars that step down from a perfect cooker to the one that is built, and beside them
 * what each flaw costs when it is mended alone and when it is there alone.
 */
public final class BudgetPicture {
    private BudgetPicture() {}

    /** The bytes of a PNG file for {@code result}, its words in the units of {@code system}. */
    public static byte[] bytes(BudgetResult result, UnitSystem system) {
        return Sheets.png(image(result, system));
    }

    /** The picture itself. */
    public static BufferedImage image(BudgetResult result, UnitSystem system) {
        BudgetSheet sheet = new BudgetSheet(result, system);
        return Sheets.image(BudgetSheet.WIDTH, sheet.height(), sheet::paint);
    }
}
