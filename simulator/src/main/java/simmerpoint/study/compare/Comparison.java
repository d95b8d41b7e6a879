package simmerpoint.study.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.study.trace.TraceResult;

/**
 * Several cookers side by side, all traced with the same samples.
 *
 * @param rows the most watts first
 * @param seed of all traces
 * @param replicates behind every standard error
 * @param precisionReached whether every cooker's watts are as sure as was asked; true if nothing was asked
 * @param quick whether only watts and boiling times were asked, for the figures exactly as given
 * @param run what differs from run to run
 */
public record Comparison(
        List<ComparedRow> rows,
        long seed,
        int replicates,
        boolean precisionReached,
        boolean quick,
        TraceResult.RunInfo run) {
    /** Keeps its own copy; refuses none. */
    public Comparison {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("nothing was compared");
        }
    }

    /** The one with the most watts. */
    public ComparedRow best() {
        return rows.get(0);
    }

    /** The one with the most watts when every pan stands where it does best; empty if that was not asked. */
    public Optional<ComparedRow> bestAtItsPlace() {
        return rows.stream()
                .filter(row -> row.atBest().isPresent())
                .max(Comparator.comparingDouble(ComparedRow::bestPlaceWatts));
    }

    /** Those that are not seen to differ from the best, itself among them. */
    public List<ComparedRow> top() {
        return rows.stream().filter(row -> !row.isSeenToDiffer()).toList();
    }

    /** What was compared, in the order of the rows. */
    public List<Variant> variants() {
        return rows.stream().map(ComparedRow::variant).toList();
    }

    /** Largest standard error of the watts, as a share of them, where there are any. */
    public double worstRelativeError() {
        return rows.stream()
                .map(ComparedRow::useful)
                .filter(watts -> watts.value() > 0)
                .mapToDouble(Estimate::relativeError)
                .max()
                .orElse(0);
    }

    /** Whether no row has clearly more than one above it, when each pan is at its best place: by more than two standard errors. */
    public boolean orderStays() {
        List<Estimate> placed = rows.stream()
                .flatMap(row -> row.atBest().stream())
                .map(best -> best.watts())
                .toList();
        for (int k = 1; k < placed.size(); k++) {
            Estimate below = placed.get(k);
            Estimate least = placed.subList(0, k).stream()
                    .min(Comparator.comparingDouble(Estimate::value))
                    .orElseThrow();
            double seen = ComparedRow.SEEN_ERRORS * Math.hypot(least.standardError(), below.standardError());
            if (below.value() - least.value() > seen) {
                return false;
            }
        }
        return true;
    }
}
