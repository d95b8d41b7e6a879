package simmerpoint.study.likely;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import simmerpoint.scenario.doubts.Doubt;
import simmerpoint.scenario.doubts.DoubtSize;
import simmerpoint.study.trace.DoubtShare;
import simmerpoint.uncertainty.VarianceShares;

/** Which doubt the range of the power comes from. */
final class DoubtShares {
    private DoubtShares() {}

    /** Causes of one name are one. Cookers that cannot stand count as the mean, so that the draws stay as even as they are. */
    static List<DoubtShare> of(CookerDraws draws, List<Optional<Double>> powers) {
        double mean = powers.stream()
                .flatMap(Optional::stream)
                .mapToDouble(watts -> watts)
                .average()
                .orElse(0);
        double[] results =
                powers.stream().mapToDouble(watts -> watts.orElse(mean)).toArray();
        VarianceShares of = VarianceShares.of(draws.draws(), results);
        List<Doubt> doubts = draws.doubts().all();
        Map<String, DoubtShare> byName = new LinkedHashMap<>();
        IntStream.range(0, doubts.size())
                .forEach(k -> byName.merge(doubts.get(k).name(), share(doubts.get(k), of.of(k)), DoubtShares::sum));
        List<DoubtShare> sorted = new ArrayList<>(byName.values().stream()
                .sorted(Comparator.comparingDouble((DoubtShare s) -> -s.share()))
                .toList());
        sorted.add(leftOver(of.rest()));
        return sorted;
    }

    private static DoubtShare leftOver(double share) {
        return new DoubtShare(
                "luck in gluing, and what causes do together",
                share,
                DoubtSize.NONE,
                false,
                "drawn anew for every cooker",
                "");
    }

    private static DoubtShare share(Doubt doubt, double share) {
        return new DoubtShare(doubt.name(), share, doubt.size(), doubt.given(), doubt.source(), doubt.measurement());
    }

    /** Of causes of one name the size of that which brings most is told. */
    private static DoubtShare sum(DoubtShare one, DoubtShare other) {
        DoubtSize size = other.share() > one.share() ? other.size() : one.size();
        return new DoubtShare(
                one.name(),
                one.share() + other.share(),
                size,
                one.given() || other.given(),
                one.source(),
                one.measurement());
    }
}
