package simmerpoint.trial;

import java.util.List;
import java.util.Optional;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.trial.fit.TrialFit;
import simmerpoint.trial.log.TrialLog;
import simmerpoint.trial.power.HeatedPan;
import simmerpoint.trial.power.LogDisagreement;
import simmerpoint.trial.power.PowerTest;
import simmerpoint.trial.power.ProtocolTest;

/**
 * What logs say about one cooker.
 *
 * @param scenario of the cooker as it was meant
 * @param logs all of them
 * @param pan what was heated
 * @param power the standard's cooking power; empty without a heating log
 * @param disagreement heating logs of one arrangement that give too different powers; empty where all agree
 * @param protocol loss and optical factor; empty where the logs tell nothing of losses
 * @param boil time to boil in the first heating log; empty without one
 * @param fit by the model; empty without a heating log
 * @param notes what to know about the logs
 * @param seed of the traces
 */
public record TrialResult(
        CheckedScenario scenario,
        List<TrialLog> logs,
        HeatedPan pan,
        Optional<PowerTest> power,
        Optional<LogDisagreement> disagreement,
        Optional<ProtocolTest> protocol,
        Optional<BoilTrial> boil,
        Optional<TrialFit> fit,
        List<TrialNote> notes,
        long seed) {
    /** Keeps its own lists. */
    public TrialResult {
        logs = List.copyOf(logs);
        notes = List.copyOf(notes);
    }

    /** The line of the standard's test, if there is one. */
    public Optional<StandardCookingPower.Line> line() {
        return power.flatMap(PowerTest::line);
    }

    /** The same where powers were standardised by that. */
    public Optional<StandardCookingPower.Line> line(PowerTest.Basis basis) {
        return power.filter(p -> p.basis() == basis).flatMap(PowerTest::line);
    }
}
