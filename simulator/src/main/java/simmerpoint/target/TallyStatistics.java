package simmerpoint.target;

import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import simmerpoint.dish.built.MirrorShares;
import simmerpoint.pan.Target;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.Replicates;

/** Ledger, spot figures and flux maps, with standard errors, from the tallies of independent replicates. */
public final class TallyStatistics {
    private final List<Tally> tallies;
    private final MirrorShares shares;
    private final Target target;
    private final double beam;
    private final double directWatts;
    private final double inverseRays;

    TallyStatistics(List<Tally> tallies, MirrorShares shares, Target target, double beam, double directWatts) {
        this.tallies = tallies;
        this.shares = shares;
        this.target = target;
        this.beam = beam;
        this.directWatts = directWatts;
        inverseRays = 1.0 / tallies.get(0).rays;
    }

    private Estimate mean(ToDoubleFunction<Tally> value) {
        return Replicates.mean(tallies.size(), r -> value.applyAsDouble(tallies.get(r)) * inverseRays);
    }

    private double sum(ToDoubleFunction<Tally> value) {
        return sum(tallies, value);
    }

    private static double sum(List<Tally> of, ToDoubleFunction<Tally> value) {
        return of.size() == 1
                ? value.applyAsDouble(of.get(0))
                : of.stream().mapToDouble(value).sum();
    }

    /** Sunlight straight from the sun onto lid and wall, W. */
    public double directWatts() {
        return directWatts;
    }

    /** Rays of all replicates together. */
    public long rays() {
        return tallies.stream().mapToLong(t -> t.rays).sum();
    }

    /** Caught watts of each replicate, for paired comparison of scenarios with the same seed. */
    public double[] caughtByReplicate() {
        return tallies.stream().mapToDouble(t -> t.caught() * inverseRays).toArray();
    }

    /** Caught watts. */
    public Estimate caught() {
        return mean(Tally::caught);
    }

    /**
     * The ledger.
     *
     * @param absorbedShare share of caught and direct light that the target absorbs, 0 to 1
     */
    public Ledger ledger(double absorbedShare) {
        Estimate caught = caught();
        return new Ledger(
                mean(t -> t.gap + t.incident),
                mean(t -> t.gap),
                mean(t -> t.incident),
                mean(t -> t.shaded),
                ofUnshaded(shares::lost),
                ofUnshaded(shares::scattered),
                ofUnshaded(shares::reflected),
                mean(t -> t.missed),
                mean(t -> t.underside),
                mean(t -> t.wall),
                mean(t -> t.lid),
                caught,
                Estimate.exact(directWatts),
                new Estimate(absorbedShare * (caught.value() + directWatts), absorbedShare * caught.standardError()),
                mean(t -> t.stopped),
                mean(t -> t.covered),
                zones());
    }

    private Estimate ofUnshaded(IntToDoubleFunction share) {
        return tallies.get(0).zones.isKept()
                ? mean(t -> t.zones.unshaded(share))
                : mean(t -> t.unshaded).times(share.applyAsDouble(0));
    }

    /** What becomes of the light on each zone, in their order; empty for a dish of one zone. */
    private List<ZoneLight> zones() {
        int zones = tallies.get(0).zones.isKept() ? shares.zones() : 0;
        return IntStream.range(0, zones)
                .mapToObj(zone -> new ZoneLight(
                        shares.name(zone),
                        mean(t -> t.zones.incident[zone]),
                        mean(t -> t.zones.unshaded[zone]).times(shares.reflected(zone)),
                        mean(t -> t.zones.caught[zone])))
                .toList();
    }

    /** Ratio of two sums over all replicates, with its jackknife error; 0 where the lower sum is 0. */
    private Estimate ratio(ToDoubleFunction<Tally> upper, ToDoubleFunction<Tally> lower) {
        double a = sum(upper);
        double b = sum(lower);
        return Replicates.jackknife(tallies.size(), quotient(a, b), r -> {
            Tally t = tallies.get(r);
            return quotient(a - upper.applyAsDouble(t), b - lower.applyAsDouble(t));
        });
    }

    private static double quotient(double a, double b) {
        return b > 0 ? a / b : 0;
    }

    /** The spot figures; not available for {@link TargetScene#forWatts}. */
    public Spot spot() {
        double area = Math.PI * target.radiusMetres() * target.radiusMetres();
        TargetGrids grids = tallies.get(0).grids;
        PeakSearch.Peak peak = new PeakSearch(grids).find(tallies);
        SpotRadii radii = new SpotRadii(tallies, shares);
        return new Spot(
                ratio(Tally::caught, t -> t.reflected(shares)),
                mean(t -> t.underside).times(1 / (area * beam)),
                Evenness.of(tallies),
                peak.flux(),
                grids.peakDiscRadius(),
                peak.x(),
                peak.y(),
                ratio(t -> t.moments[0], t -> t.underside),
                ratio(t -> t.moments[1], t -> t.underside),
                radii.containing(0.50),
                radii.containing(0.90),
                radii.containing(0.95),
                ellipse());
    }

    private Optional<SpotEllipse> ellipse() {
        double light = sum(t -> t.underside);
        if (!(light > 0)) {
            return Optional.empty();
        }
        double[] m = new double[5];
        for (int k = 0; k < m.length; k++) {
            int moment = k;
            m[k] = sum(t -> t.moments[moment]) / light;
        }
        return Optional.of(SpotEllipse.ofMoments(m[2] - m[0] * m[0], m[3] - m[0] * m[1], m[4] - m[1] * m[1]));
    }

    /** Caught light by face. */
    public CaughtByFace caughtByFace() {
        return caughtByFace(tallies);
    }

    /** The same for each replicate alone. */
    public List<CaughtByFace> caughtByFaceOfReplicates() {
        return tallies.stream().map(t -> caughtByFace(List.of(t))).toList();
    }

    private CaughtByFace caughtByFace(List<Tally> of) {
        double each = inverseRays / of.size();
        Grid wall = of.get(0).grids.wall();
        double[] bands = new double[wall == null ? 0 : wall.rows()];
        double[] absorbable = new double[bands.length];
        for (Tally t : of) {
            for (int j = 0; j < bands.length; j++) {
                bands[j] += each * t.onWall(j);
                absorbable[j] += t.wallAbsorbableByRow[j] * each;
            }
        }
        return new CaughtByFace(
                each * sum(of, t -> t.underside),
                absorptance(of, t -> t.undersideAbsorbable, t -> t.underside),
                bands,
                absorbable,
                each * sum(of, t -> t.lid),
                absorptance(of, t -> t.lidAbsorbable, t -> t.lid));
    }

    private static double absorptance(
            List<Tally> of, ToDoubleFunction<Tally> absorbable, ToDoubleFunction<Tally> watts) {
        double light = sum(of, watts);
        return light > 0 ? Math.max(0, Math.min(1, sum(of, absorbable) / light)) : 1;
    }

    /** The flux maps; not available for {@link TargetScene#forWatts}. */
    public FluxMaps maps() {
        TargetGrids grids = tallies.get(0).grids;
        FluxMap caught = FluxMapBuilder.of(grids.plane(), tallies, t -> t.planeMap);
        FluxMap crossing = FluxMapBuilder.ofCrossing(grids.plane(), tallies);
        Optional<FluxMap> wall =
                Optional.ofNullable(grids.wall()).map(g -> FluxMapBuilder.of(g, tallies, t -> t.wallMap));
        Optional<FluxMap> lid = Optional.ofNullable(grids.lid()).map(g -> FluxMapBuilder.of(g, tallies, t -> t.lidMap));
        return new FluxMaps(crossing, caught, wall, lid);
    }
}
