package simmerpoint.study.trace;

import java.util.Optional;
import simmerpoint.scenario.Scenario;
import simmerpoint.target.CaughtByFace;
import simmerpoint.target.FluxMaps;
import simmerpoint.target.Ledger;
import simmerpoint.target.Spot;

/**
 * What one traced scenario says.
 *
 * @param scenario what was traced
 * @param outlineArea area of the dish's outline projected along the axis, m²
 * @param apertureArea area of the mirrors alone projected along the axis, m²
 * @param panels number of panels
 * @param ledger where the light went
 * @param spot the spot figures
 * @param maps the flux maps
 * @param faces caught light by face
 * @param heat what that light does to the pan's water; empty for a bare disc
 * @param seed of the random scrambles and of the build errors
 * @param replicates number of independent replicates behind every standard error
 * @param precisionReached whether the asked precision was reached before the bound on rays; true if none was asked
 * @param run what differs from run to run
 */
public record TraceResult(
        Scenario scenario,
        double outlineArea,
        double apertureArea,
        int panels,
        Ledger ledger,
        Spot spot,
        FluxMaps maps,
        CaughtByFace faces,
        Optional<HeatResult> heat,
        long seed,
        int replicates,
        boolean precisionReached,
        RunInfo run) {
    /**
     * What differs from run to run and is kept out of comparisons.
     *
     * @param rays traced
     * @param threads used
     * @param traceSeconds wall time of the ray loop
     */
    public record RunInfo(long rays, int threads, double traceSeconds) {}
}
