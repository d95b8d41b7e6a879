package simmerpoint.trial;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.trial.fit.FlawLikelihood;
import simmerpoint.trial.power.PowerTest;

/**
 * Several cookers built by one scenario, ranked.
 *
 * @param scenario of all of them
 * @param basis what all figures are standardised by
 * @param cookers the best first; those without a figure last
 * @param leftOut why a cooker is not among them, by its name
 * @param seed of the traces
 */
public record ClassResult(
        CheckedScenario scenario, PowerTest.Basis basis, List<Cooker> cookers, Map<String, String> leftOut, long seed) {
    /** Keeps its own. */
    public ClassResult {
        cookers = List.copyOf(cookers);
        leftOut = Collections.unmodifiableMap(new LinkedHashMap<>(leftOut));
    }

    /**
     * One cooker.
     *
     * @param rank from 1; 0 without a figure
     * @param name of its log or folder
     * @param trial what its logs say
     */
    public record Cooker(int rank, String name, TrialResult trial) {
        /** Watts of the standard's line with their standard error; that they are comparable says {@link ClassResult#basis}. */
        public Optional<Estimate> watts() {
            return trial.line()
                    .map(line -> new Estimate(
                            line.standardPowerWatts(), line.fit().errorAt(StandardCookingPower.STANDARD_DIFFERENCE)));
        }

        /** Half of the 95 % interval, W. */
        public OptionalDouble halfWidth() {
            return trial.line().stream()
                    .mapToDouble(line -> line.halfWidthWatts(PowerTest.CONFIDENCE))
                    .findFirst();
        }

        /** Its likeliest flaw, if it alone is likelier than none. */
        public Optional<FlawLikelihood> flaw() {
            return trial.fit().flatMap(fit -> fit.likeliest());
        }
    }
}
