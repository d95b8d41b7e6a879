package simmerpoint.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.target.Ledger;

/** What holds for the light of every scenario, however odd: conservation of energy, with what the trace itself asks for. */
final class LightLaws {
    private static final TraceOptions FEW =
            TraceOptions.defaults().withRays(1024).withThreads(1);
    private static final double ROUNDING = 1e-9;

    private LightLaws() {}

    /** Traces a few rays; empty if it cannot stand as asked and says so in one sentence. */
    static Optional<TraceResult> trace(Scenario scenario) {
        try {
            TraceResult result = TraceStudy.run(scenario, FEW, Progress.NONE);
            check(result);
            return Optional.of(result);
        } catch (ImpossibleSetupException e) {
            Sentences.check(e.getMessage());
            return Optional.empty();
        }
    }

    private static void check(TraceResult result) {
        Ledger ledger = result.ledger();
        atMost("aperture", result.apertureArea(), result.outlineArea());
        atMost("incident", ledger.incident().value(), ledger.outline().value());
        atMost("reflected", ledger.reflected().value(), ledger.incident().value());
        atMost("caught", ledger.caught().value(), ledger.reflected().value());
        double light = ledger.caught().value() + ledger.directOnPan().value();
        atMost("absorbed", ledger.absorbed().value(), light);
        atMost("useful", result.useful().value(), light);
    }

    private static void atMost(String what, double value, double bound) {
        assertTrue(
                value <= bound + ROUNDING * Math.abs(bound) && !Double.isInfinite(value),
                what + " is " + value + ", which is more than " + bound);
    }
}
