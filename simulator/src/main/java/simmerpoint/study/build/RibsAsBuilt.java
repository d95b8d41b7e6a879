package simmerpoint.study.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import simmerpoint.dish.cut.MeasuredRibs;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * What ribs cost that are not as planned.
 *
 * @param built watts on the ribs as they are, W
 * @param planned watts on ribs as planned, W
 * @param gain planned less built, W
 * @param ribs what mending one alone gains, the most first
 * @param slopeDifference greatest difference of the slopes of two neighbouring ribs, rad
 */
public record RibsAsBuilt(Estimate built, Estimate planned, Estimate gain, List<Rib> ribs, double slopeDifference) {
    /**
     * One rib.
     *
     * @param number counts from 1, the dish's upper edge, anticlockwise as seen from the sun
     * @param farthestOff greatest distance above or below its plan, m
     * @param gain watts that mending it alone brings, W
     */
    public record Rib(int number, double farthestOff, Estimate gain) {}

    /** Keeps a copy of the list. */
    public RibsAsBuilt {
        ribs = List.copyOf(ribs);
    }

    static RibsAsBuilt of(Scenario scenario, MeasuredRibs measured, TraceOptions options, Progress progress) {
        List<Scenario> all = new ArrayList<>();
        all.add(scenario);
        all.add(scenario.withDish(MeasuredRibs.mended(scenario.dish())));
        int count = measured.heights().size();
        for (int k = 0; k < count; k++) {
            all.add(scenario.withDish(scenario.dish().withCut(measured.withRibMended(k))));
        }
        List<PairedWatts> watts = PairedStudy.watts(all, options, progress);
        PairedWatts built = watts.get(0);
        List<Rib> ribs = IntStream.range(0, count)
                .mapToObj(k ->
                        new Rib(k + 1, measured.farthestOff(k), watts.get(k + 2).usefulBeyond(built)))
                .sorted(Comparator.comparingDouble(rib -> -rib.gain().value()))
                .toList();
        return new RibsAsBuilt(
                built.useful(),
                watts.get(1).useful(),
                watts.get(1).usefulBeyond(built),
                ribs,
                measured.slopeDifference(scenario.dish()));
    }
}
