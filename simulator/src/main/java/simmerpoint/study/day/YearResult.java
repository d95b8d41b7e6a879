package simmerpoint.study.day;

import java.util.List;
import simmerpoint.scenario.Scenario;

/**
 * A year of a cooker under clear skies: the 21st of every month stands for its month.
 *
 * @param scenario the cooker and its place
 * @param year which
 * @param days the twelve days, January first
 * @param seconds wall time
 */
public record YearResult(Scenario scenario, int year, List<DayResult> days, double seconds) {
    /** Copies the list. */
    public YearResult {
        days = List.copyOf(days);
    }

    /** Likely hours in which it simmers or better if all days of that month (0 = January) were clear. */
    public double clearMonthHours(int month) {
        DayResult day = days.get(month);
        return day.cookingHours().likely() * day.plan().date().lengthOfMonth();
    }

    /** Rays traced in all. */
    public long rays() {
        return days.stream().mapToLong(DayResult::rays).sum();
    }

    /** The flux that cautions go by, W/m²: the largest of any day. */
    public double cautionFlux() {
        return days.stream().mapToDouble(DayResult::cautionFlux).max().orElse(0);
    }

    /** Largest standard error of the watts taken up, as a share of them. */
    public double worstRelativeError() {
        return days.stream().mapToDouble(DayResult::worstRelativeError).max().orElse(0);
    }
}
