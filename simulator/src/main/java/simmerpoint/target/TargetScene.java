package simmerpoint.target;

import java.util.List;
import java.util.Optional;
import simmerpoint.dish.built.BuiltDish;
import simmerpoint.dish.built.MirrorShares;
import simmerpoint.geometry.Direction;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;
import simmerpoint.setup.Setup;
import simmerpoint.sun.Sunlight;
import simmerpoint.tracing.LightCaster;

/** A target with sun and mirror as one trace sees them, shared by all replicates. Immutable. */
public final class TargetScene {
    private final Target target;
    private final Direction sun;
    private final Sunlight sunlight;
    private final MirrorShares shares;
    private final TargetGrids grids;

    /**
     * For one target.
     *
     * @param target the pan or disc
     * @param setup where it stands
     * @param sunlight the sun
     * @param dish as it was built: its mirrors keep part of the light
     * @param peakDiscRadius asked radius of the peak disc, m; kept between a fiftieth of the target's radius and all of it
     */
    public TargetScene(Target target, Setup setup, Sunlight sunlight, BuiltDish dish, double peakDiscRadius) {
        this(target, setup, sunlight, dish.shares(), TargetGrids.of(target, peakDiscRadius));
    }

    private TargetScene(Target target, Setup setup, Sunlight sunlight, MirrorShares shares, TargetGrids grids) {
        this.target = target;
        this.sunlight = sunlight;
        this.shares = shares;
        sun = setup.sunInTarget();
        this.grids = grids;
    }

    /** For watts by face alone; {@link TallyStatistics} then has neither maps nor spot. */
    public static TargetScene forWatts(Target target, Setup setup, Sunlight sunlight, BuiltDish dish) {
        return new TargetScene(target, setup, sunlight, dish.shares(), TargetGrids.forWatts(target));
    }

    /** The tally of one replicate. Not thread-safe. */
    public final class Replicate {
        private final Tally tally = new Tally(grids, shares.zones());

        /** A catcher for batches of {@code batch} rays that adds to this replicate. */
        public LightCatcher catcher(LightCaster caster, int batch) {
            return catcher(caster, batch, Optional.empty());
        }

        /** Makes {@code catcher}, which another replicate of this scene made, add to this one from now on. */
        public void receive(LightCatcher catcher) {
            catcher.addTo(tally);
        }

        /** A catcher for batches that adds to this replicate and to the tally by panel. */
        public LightCatcher catcher(LightCaster caster, int batch, PanelTally panels) {
            return catcher(caster, batch, Optional.of(panels));
        }

        private LightCatcher catcher(LightCaster caster, int batch, Optional<PanelTally> panels) {
            double sunAngle = sunlight.shape().largestAngle();
            return new LightCatcher(target, sun.vec(), sunAngle, shares, caster, batch, tally, panels);
        }

        /** A catcher for stored rays that adds to this replicate. */
        public StoredRayCatcher storedRayCatcher() {
            return storedRayCatcher(Optional.empty());
        }

        /** A catcher for stored rays that adds to this replicate and to the tally by panel. */
        public StoredRayCatcher storedRayCatcher(PanelTally panels) {
            return storedRayCatcher(Optional.of(panels));
        }

        private StoredRayCatcher storedRayCatcher(Optional<PanelTally> panels) {
            return new StoredRayCatcher(target, sun.vec(), sunlight.shape().largestAngle(), shares, tally, panels);
        }

        Tally tally() {
            return tally;
        }
    }

    /** Statistics over the replicates, which must have traced equally many rays. */
    public TallyStatistics statistics(List<Replicate> replicates) {
        double direct = target instanceof Pan pan ? sunlight.beamWattsPerSquareMetre() * Setup.silhouette(pan, sun) : 0;
        return new TallyStatistics(
                replicates.stream().map(Replicate::tally).toList(),
                shares,
                target,
                sunlight.beamWattsPerSquareMetre(),
                direct);
    }
}
