package simmerpoint.report;

import java.util.function.Supplier;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.output.PngFile;
import simmerpoint.quantities.AimQuantities;
import simmerpoint.quantities.BudgetQuantities;
import simmerpoint.quantities.CardQuantities;
import simmerpoint.quantities.ClassQuantities;
import simmerpoint.quantities.CompareQuantities;
import simmerpoint.quantities.CutQuantities;
import simmerpoint.quantities.DayQuantities;
import simmerpoint.quantities.DesignQuantities;
import simmerpoint.quantities.Document;
import simmerpoint.quantities.PanQuantities;
import simmerpoint.quantities.PanelsQuantities;
import simmerpoint.quantities.SafetyQuantities;
import simmerpoint.quantities.TraceQuantities;
import simmerpoint.quantities.TrialQuantities;
import simmerpoint.quantities.WarmingQuantities;
import simmerpoint.safety.SafetyResult;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.compare.Comparison;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.YearResult;
import simmerpoint.study.design.DesignResult;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.panels.PanelsResult;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.WarmingResult;
import simmerpoint.trial.ClassResult;
import simmerpoint.trial.TrialResult;
import simmerpoint.trial.spot.CardResult;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CutPlan;

/**
 * What of a result can be written as files.
 *
 * @param json all figures
 * @param csv the table behind the answer
 * @param png the answer's picture
 */
public record ResultFiles(Supplier<byte[]> json, Supplier<byte[]> csv, Supplier<byte[]> png) {
    /** Of where the light goes. */
    public static ResultFiles of(TraceResult result, UnitSystem units) {
        return of(() -> TraceQuantities.DOCUMENT, result, () -> PngReport.sheet(result, units));
    }

    /** Of the warming curve. */
    public static ResultFiles of(WarmingResult result, UnitSystem units) {
        return of(() -> WarmingQuantities.DOCUMENT, result, () -> WarmingPicture.sheet(result, units));
    }

    /** Of the place of the pan. */
    public static ResultFiles of(PanResult result, UnitSystem units) {
        return of(() -> PanQuantities.DOCUMENT, result, () -> PanPicture.sheet(result, units));
    }

    /** Of a day. */
    public static ResultFiles of(DayResult result, UnitSystem units) {
        return of(() -> DayQuantities.DOCUMENT, result, () -> DayPicture.sheet(result, units));
    }

    /** Of a year. */
    public static ResultFiles of(YearResult result, UnitSystem units) {
        return of(() -> DayQuantities.YEAR, result, () -> YearPicture.sheet(result, units));
    }

    /** Of aiming. */
    public static ResultFiles of(AimResult result, UnitSystem units) {
        return of(() -> AimQuantities.DOCUMENT, result, () -> AimPicture.sheet(result, units));
    }

    /** Of compared cookers. */
    public static ResultFiles of(Comparison result, UnitSystem units) {
        return of(() -> CompareQuantities.DOCUMENT, result, () -> ComparePicture.sheet(result, units));
    }

    /** Of a budget of flaws. */
    public static ResultFiles of(BudgetResult result, UnitSystem units) {
        return of(() -> BudgetQuantities.DOCUMENT, result, () -> BudgetPicture.sheet(result, units));
    }

    /** Of the light of each panel. */
    public static ResultFiles of(PanelsResult result, UnitSystem units) {
        return of(() -> PanelsQuantities.DOCUMENT, result, () -> PanelsPicture.sheet(result, units));
    }

    /** Of a search for a design. */
    public static ResultFiles of(DesignResult result, UnitSystem units) {
        return of(() -> DesignQuantities.DOCUMENT, result, () -> DesignPicture.sheet(result, units));
    }

    /** Of what is to be cut. */
    public static ResultFiles of(CutPlan plan, UnitSystem units) {
        return of(() -> CutQuantities.DOCUMENT, plan, () -> CutFiles.picture(plan, units));
    }

    /** Of what the light can burn. */
    public static ResultFiles of(SafetyResult result, UnitSystem units) {
        return of(() -> SafetyQuantities.DOCUMENT, result, () -> SafetyPicture.sheet(result, units));
    }

    /** Of a trial. */
    public static ResultFiles of(TrialResult result, UnitSystem units) {
        return of(() -> TrialQuantities.DOCUMENT, result, () -> TrialPicture.sheet(result, units));
    }

    /** Of a class of cookers. */
    public static ResultFiles of(ClassResult result, UnitSystem units) {
        return of(() -> ClassQuantities.DOCUMENT, result, () -> ClassPicture.sheet(result, units));
    }

    /** Of a spot on a card. */
    public static ResultFiles of(CardResult result, UnitSystem units) {
        return of(() -> CardQuantities.DOCUMENT, result, () -> CardPicture.sheet(result, units));
    }

    /** A document has hundreds of fields: it is laid out only for a file that is wanted. */
    private static <R> ResultFiles of(Supplier<Document<R>> document, R result, Supplier<Sheet> png) {
        return new ResultFiles(
                () -> document.get().json(result), () -> document.get().csv(result), () -> PngFile.bytes(png.get()));
    }
}
