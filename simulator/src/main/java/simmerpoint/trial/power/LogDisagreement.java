package simmerpoint.trial.power;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.trial.log.TrialLog;

/**
 * Two logs of one arrangement whose lines give powers that are no chance: their 95 % intervals lie apart, and so do their figures by more than wind
 * and a different sky explain.
 *
 * @param weaker the log of the least power
 * @param least that power, W
 * @param stronger the log of the most
 * @param most that power, W
 */
public record LogDisagreement(TrialLog weaker, double least, TrialLog stronger, double most) {
    /** The standard's repeats by one cooker scatter by less than this share (our estimate). */
    private static final double REPEATED = 0.25;

    private record LogPower(TrialLog log, double watts, double half) {}

    /** The farthest apart; empty where they agree, or fewer than two have a line of their own. */
    public static Optional<LogDisagreement> of(List<TrialLog> logs, HeatedPan pan) {
        List<LogPower> powers = new ArrayList<>();
        for (TrialLog log : logs.size() > 1 ? logs : List.<TrialLog>of()) {
            Optional<StandardCookingPower.Line> line =
                    PowerTest.of(List.of(log), PowerTest.basis(logs), pan).line();
            line.ifPresent(
                    l -> powers.add(new LogPower(log, l.standardPowerWatts(), l.halfWidthWatts(PowerTest.CONFIDENCE))));
        }
        Comparator<LogPower> byWatts = Comparator.comparingDouble(LogPower::watts);
        return powers.stream()
                .min(byWatts)
                .flatMap(low -> powers.stream()
                        .max(byWatts)
                        .filter(high -> areApart(low, high))
                        .map(high -> new LogDisagreement(low.log(), low.watts(), high.log(), high.watts())));
    }

    private static boolean areApart(LogPower low, LogPower high) {
        double off = high.watts() - low.watts();
        return off > low.half() + high.half() && off > REPEATED * high.watts();
    }
}
