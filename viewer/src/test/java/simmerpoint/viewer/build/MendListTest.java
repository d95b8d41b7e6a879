package simmerpoint.viewer.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.BudgetStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;

class MendListTest {
    private static final BudgetResult RESULT = BudgetStudy.run(
            ScenarioReader.builtIn().scenario(), TraceOptions.defaults().withRays(1 << 14), Progress.NONE);

    @Test
    void whatBringsMostComesFirstAndWhatNobodyCanMendIsLeftOut() {
        MendList list = new MendList(RESULT, UnitSystem.METRIC);
        List<MendList.Row> rows = list.rows();
        assertTrue(rows.size() >= 3, rows.toString());
        for (int k = 1; k < rows.size(); k++) {
            assertTrue(rows.get(k).share() <= rows.get(k - 1).share(), rows.toString());
        }
        assertEquals(1, rows.get(0).share(), 1e-12);
        String all = rows + list.bought().toString();
        assertTrue(!all.contains("shadow"), all);
        assertTrue(rows.stream().noneMatch(row -> row.name().startsWith("reflectance")), rows.toString());
        assertTrue(
                list.bought().get(0).name().startsWith("reflectance"),
                list.bought().toString());
        rows.forEach(row -> assertTrue(!row.advice().isEmpty(), row.name()));
        assertTrue(list.first().startsWith("Mend first: " + rows.get(0).name()), list.first());
    }
}
