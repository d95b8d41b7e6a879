package simmerpoint.target;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.dish.built.MirrorShares;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.Replicates;

/** Radii about the target's centre within which given shares of the reflected light cross its plane, with errors. */
final class SpotRadii {
    private final int n;
    private final double reflected;
    private final double[] reflectedWithout;
    private final RadialHistogram all;
    private final RadialHistogram[] allWithout;

    /** From the tallies of all replicates; {@code shares} of the unshaded light are reflected as a beam. */
    SpotRadii(List<Tally> tallies, MirrorShares shares) {
        n = tallies.size();
        reflected = tallies.stream().mapToDouble(t -> t.reflected(shares)).sum();
        reflectedWithout = tallies.stream()
                .mapToDouble(t -> reflected - t.reflected(shares))
                .toArray();
        all = new RadialHistogram(tallies.get(0).grids.radius());
        tallies.forEach(t -> all.add(t.crossing, 1));
        allWithout = tallies.stream().map(t -> all.plus(t.crossing, -1)).toArray(RadialHistogram[]::new);
    }

    /** Radius that contains {@code share} of the reflected light, m; empty if less than that crosses the plane. */
    Optional<Estimate> containing(double share) {
        OptionalDouble whole = all.radiusContaining(share * reflected);
        if (whole.isEmpty() || reflected == 0) {
            return Optional.empty();
        }
        return Optional.of(Replicates.jackknife(
                n,
                whole.getAsDouble(),
                r -> allWithout[r].radiusContaining(share * reflectedWithout[r]).orElse(whole.getAsDouble())));
    }
}
