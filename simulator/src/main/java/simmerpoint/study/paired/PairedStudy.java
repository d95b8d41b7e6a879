package simmerpoint.study.paired;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.light.LightKey;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.ReplicateWorkers;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceStudy;

/**
 * Many scenarios under one seed, so that their figures can be compared in pairs. Light is cast once for all scenarios
 * whose mirrors and sun are the same ({@link LightKey}), and caught anew for each. A wanted precision is not looked at:
 * pairs need equally many rays.
 */
public final class PairedStudy {
    /** Members of one group that are caught at once: bounds the memory for maps. */
    private static final int MOST_WITH_MAPS = 8;

    /** Scenarios that are traced at once with maps if every thread has a group of its own: bounds the memory, too. */
    private static final int MOST_MAPS_AT_ONCE = 32;

    /** From so many groups for each thread on, and where there are as many for each, threads take whole groups: none waits for another. */
    private static final int GROUPS_PER_THREAD = 2;

    private PairedStudy() {}

    /**
     * Watts alone, without maps and spot: the cheap way.
     *
     * @return one for each scenario, in their order
     * @throws ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static List<PairedWatts> watts(List<Scenario> scenarios, TraceOptions options, Progress progress) {
        PairedWatts[] out = new PairedWatts[scenarios.size()];
        run(scenarios, options, progress, Integer.MAX_VALUE, (k, group) -> out[k.index()] = group.watts(k.member()));
        return Arrays.asList(out);
    }

    /**
     * Whole traces with maps and spot. Each equals what {@link TraceStudy} gives for its scenario but for rounding, which may turn what is chosen by
     * chance for a ray in a hundred thousand.
     *
     * @return one for each scenario, in their order
     * @throws ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static List<PairedTrace> traces(List<Scenario> scenarios, TraceOptions options, Progress progress) {
        PairedTrace[] out = new PairedTrace[scenarios.size()];
        run(scenarios, options, progress, MOST_WITH_MAPS, (k, group) -> out[k.index()] = group.trace(k.member()));
        return Arrays.asList(out);
    }

    /** Which scenario of all, and which of its group. */
    private record Place(int index, int member) {}

    /** Takes the figures of one scenario out of its group. */
    private interface Reader {
        void read(Place place, SharedLight group);
    }

    private static void run(
            List<Scenario> scenarios, TraceOptions options, Progress progress, int mostAtOnce, Reader reader) {
        if (scenarios.isEmpty()) {
            return;
        }
        boolean maps = mostAtOnce == MOST_WITH_MAPS;
        List<List<Integer>> groups = groups(scenarios, mostAtOnce);
        int threads = Math.min(options.threads(), ReplicateCaster.REPLICATES);
        int largest = groups.stream().mapToInt(List::size).max().orElseThrow();
        boolean fits = !maps || threads * largest <= MOST_MAPS_AT_ONCE;
        Work work = new Work(scenarios, options, maps, ReplicateCaster.bitsFor(options.rays()), reader);
        boolean even = groups.size() % threads == 0 || groups.size() >= GROUPS_PER_THREAD * threads;
        if (fits && even) {
            work.byGroup(groups, threads, progress);
        } else {
            work.byReplicate(groups, threads, progress);
        }
    }

    /** What is done with every group. */
    private record Work(List<Scenario> scenarios, TraceOptions options, boolean maps, int bits, Reader reader) {
        /** Threads share the replicates of one group after the other. */
        void byReplicate(List<List<Integer>> groups, int threads, Progress progress) {
            int done = 0;
            try (ReplicateWorkers workers = new ReplicateWorkers(threads, ReplicateCaster.REPLICATES, progress)) {
                for (List<Integer> group : groups) {
                    SharedLight light = light(group);
                    double from = (double) done / scenarios.size();
                    done += group.size();
                    light.cast(workers, from, (double) done / scenarios.size());
                    read(group, light);
                }
            }
        }

        /** Every thread takes a group with all its replicates. */
        void byGroup(List<List<Integer>> groups, int threads, Progress progress) {
            try (ReplicateWorkers workers = new ReplicateWorkers(threads, groups.size(), progress)) {
                workers.run(0, 1, (k, watch) -> {
                    SharedLight light = light(groups.get(k));
                    light.cast(watch);
                    read(groups.get(k), light);
                });
            }
        }

        private SharedLight light(List<Integer> group) {
            return new SharedLight(group.stream().map(scenarios::get).toList(), options, maps, bits);
        }

        private void read(List<Integer> group, SharedLight light) {
            IntStream.range(0, group.size()).forEach(m -> reader.read(new Place(group.get(m), m), light));
        }
    }

    /** Indices of scenarios that share their light, in order of their first member. */
    private static List<List<Integer>> groups(List<Scenario> scenarios, int mostAtOnce) {
        Map<LightKey, List<Integer>> open = new LinkedHashMap<>();
        List<List<Integer>> groups = new ArrayList<>();
        for (int k = 0; k < scenarios.size(); k++) {
            LightKey key = LightKey.of(scenarios.get(k));
            List<Integer> group = open.get(key);
            if (group == null || group.size() >= mostAtOnce) {
                group = new ArrayList<>();
                open.put(key, group);
                groups.add(group);
            }
            group.add(k);
        }
        return groups;
    }
}
