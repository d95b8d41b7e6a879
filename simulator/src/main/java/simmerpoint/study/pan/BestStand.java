package simmerpoint.study.pan;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Stand;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;

/**
 * Where the pans of several cookers do best, each along the axis, up and down and sideways from where it stands: a search by halved steps
 * with few rays, all cookers together so that those with one light share it. A pan at a height to cook at stays at one.
 */
public final class BestStand {
    /**
     * Where one cooker's pan does best.
     *
     * @param stand where that is
     * @param watts the {@link PairedWatts#useful watts} there
     */
    public record Found(Stand stand, Estimate watts) {}

    private static final long FEW_RAYS = 1L << 12;
    private static final int MOST_ROUNDS = 14;
    private static final double FIRST_STEP = 1.0 / 16;
    private static final double LAST_STEP = 0.005;
    private static final double SEARCHED = 0.8;
    private static final List<MoveStudy.Move> MOVES =
            List.of(MoveStudy.Move.PULL_BACK, MoveStudy.Move.RAISE, MoveStudy.Move.SIDE);

    private BestStand() {}

    /** One cooker's search. */
    private static final class Search {
        private Scenario at;
        private double watts = Double.NEGATIVE_INFINITY;
        private double step;

        Search(Scenario scenario) {
            at = scenario;
            step = FIRST_STEP * scenario.dish().focalLengthMetres();
        }

        List<Scenario> wanted() {
            List<Scenario> out = new ArrayList<>();
            if (watts == Double.NEGATIVE_INFINITY) {
                out.add(at);
            } else if (step >= LAST_STEP) {
                for (MoveStudy.Move move : MOVES) {
                    add(out, move, -step);
                    add(out, move, step);
                }
            }
            return out;
        }

        private void add(List<Scenario> out, MoveStudy.Move move, double offset) {
            Scenario there = PanStudy.moved(at, move, offset);
            boolean inReach =
                    PanStudy.isInReach(at, move, offset) || !at.heights().allows(at.panHeightMetres());
            if (inReach && ReplicateCaster.hasRoom(there)) {
                out.add(there);
            }
        }

        void take(List<PairedWatts> traced) {
            boolean moved = false;
            for (PairedWatts each : traced) {
                if (each.useful().value() > watts) {
                    moved = true;
                    watts = each.useful().value();
                    at = each.scenario();
                }
            }
            step = moved ? step : step / 2;
        }
    }

    /**
     * The cookers with their pans where they do best.
     *
     * @param scenarios each with its pan where it stands
     * @return one for each, in their order, traced with the rays of {@code options}
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static List<Found> of(List<Scenario> scenarios, TraceOptions options, Progress progress) {
        List<Search> searches = scenarios.stream().map(Search::new).toList();
        TraceOptions few = options.withRays(Math.min(options.rays(), FEW_RAYS));
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<List<Scenario>> wanted = searches.stream().map(Search::wanted).toList();
            PartialProgress part =
                    new PartialProgress(progress, SEARCHED * round / MOST_ROUNDS, SEARCHED * (round + 1) / MOST_ROUNDS);
            List<PairedWatts> traced =
                    PairedStudy.watts(wanted.stream().flatMap(List::stream).toList(), few, part);
            int from = 0;
            for (int k = 0; k < searches.size(); k++) {
                int to = from + wanted.get(k).size();
                searches.get(k).take(traced.subList(from, to));
                from = to;
            }
        }
        return PairedStudy.watts(
                        searches.stream().map(search -> search.at).toList(),
                        options,
                        new PartialProgress(progress, SEARCHED, 1))
                .stream()
                .map(traced -> new Found(traced.scenario().stand(), traced.useful()))
                .toList();
    }
}
