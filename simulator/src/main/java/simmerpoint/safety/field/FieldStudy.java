package simmerpoint.safety.field;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CancellationException;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.ReplicateWorkers;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.tracing.LightCaster;

/**
 * Casts light into boxes of the yard. Each of the 16 replicates has a tally of its own, so that every cell has a standard error. At
 * most {@value #MOST_THREADS} threads work, since each needs a tally of all cells: 16 bytes a cell and thread, 20 for the
 * sums and as many for the field; for a million cells in all and two threads 72 MB, and twice that with and without the pan.
 */
public final class FieldStudy {
    private static final int MOST_THREADS = 4;

    private final Scenario scenario;
    private final ReplicateCaster casting;
    private final List<FieldBox> boxes;
    private final List<Boolean> pans;
    private final List<FieldSums> sums = new ArrayList<>();
    private final Deque<List<FieldTally>> spare = new ArrayDeque<>();
    private final int bits;
    private int next;

    private FieldStudy(Scenario scenario, TraceOptions options, List<FieldBox> boxes, List<Boolean> pans) {
        this.scenario = scenario;
        this.boxes = boxes;
        this.pans = pans;
        casting = new ReplicateCaster(scenario, options.withThreads(Math.min(MOST_THREADS, options.threads())));
        bits = ReplicateCaster.bitsFor(options.rays());
        for (int k = 0; k < boxes.size() * pans.size(); k++) {
            sums.add(new FieldSums(boxes.get(k % boxes.size())));
        }
    }

    /**
     * The light of {@code scenario} in boxes, from the finest to the coarsest, for each of {@code pans}: true with the pan in
     * place, false without.
     *
     * @throws simmerpoint.study.trace.ImpossibleSetupException if the pan would stand in the mirror
     * @throws CancellationException if {@code progress} says stop
     */
    public static List<YardLight> run(
            Scenario scenario, TraceOptions options, List<FieldBox> boxes, List<Boolean> pans, Progress progress) {
        return new FieldStudy(scenario, options, boxes, pans).run(progress);
    }

    private List<YardLight> run(Progress progress) {
        try (ReplicateWorkers workers = casting.workers(progress)) {
            workers.run(0, 1, this::replicate);
        }
        List<YardLight> lights = new ArrayList<>();
        for (int pan = 0; pan < pans.size(); pan++) {
            List<LightField> fields = new ArrayList<>();
            for (int box = 0; box < boxes.size(); box++) {
                fields.add(sums.get(pan * boxes.size() + box).field(boxes.get(box)));
            }
            lights.add(new YardLight(scenario, pans.get(pan), fields));
        }
        return lights;
    }

    private void replicate(int number, ReplicateWorkers.Watch watch) {
        List<FieldTally> tallies = borrow();
        tallies.forEach(tally -> tally.begin(number));
        FieldCast cast = new FieldCast(scenario, casting, of(true, tallies), of(false, tallies), bits);
        long batches = Math.max(1, (1L << bits) / LightCaster.BATCH);
        long[] done = {0};
        casting.castOne(number, bits, light -> {
            cast.add(light);
            watch.step(++done[0], batches);
        });
        if (pans.contains(true)) {
            // The light that is there with the pan is there without it.
            List<FieldTally> without = of(false, tallies);
            for (int k = 0; k < without.size(); k++) {
                without.get(k).add(of(true, tallies).get(k));
            }
        }
        addInOrder(number, tallies);
    }

    /** The tallies with or without the pan; none if that is not wanted. */
    private <T> List<T> of(boolean pan, List<T> all) {
        int k = pans.indexOf(pan);
        return k < 0 ? List.of() : all.subList(k * boxes.size(), (k + 1) * boxes.size());
    }

    private synchronized List<FieldTally> borrow() {
        if (!spare.isEmpty()) {
            return spare.pop();
        }
        List<FieldTally> tallies = new ArrayList<>();
        for (int k = 0; k < sums.size(); k++) {
            tallies.add(new FieldTally(boxes.get(k % boxes.size())));
        }
        return tallies;
    }

    /** Sums must not depend on which thread is first. */
    private synchronized void addInOrder(int number, List<FieldTally> tallies) {
        while (next < number) {
            try {
                wait();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new CancellationException("interrupted");
            }
        }
        for (int k = 0; k < tallies.size(); k++) {
            sums.get(k).add(tallies.get(k));
            tallies.get(k).clear();
        }
        spare.push(tallies);
        next++;
        notifyAll();
    }
}
