package simmerpoint.quantities;

import java.util.List;

/** What every command writes. */
public final class Documents {
    /** One for each sort of result. */
    public static final List<Document<?>> ALL = List.of(
            TraceQuantities.DOCUMENT,
            PanQuantities.DOCUMENT,
            DayQuantities.DOCUMENT,
            DayQuantities.YEAR,
            AimQuantities.DOCUMENT,
            CompareQuantities.DOCUMENT,
            BudgetQuantities.DOCUMENT,
            PanelsQuantities.DOCUMENT,
            DesignQuantities.DOCUMENT,
            CutQuantities.DOCUMENT,
            SafetyQuantities.DOCUMENT,
            TrialQuantities.DOCUMENT,
            ClassQuantities.DOCUMENT,
            CardQuantities.DOCUMENT);

    private Documents() {}
}
