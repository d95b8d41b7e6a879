package simmerpoint.dish.built;

import java.util.List;
import simmerpoint.dish.mirror.Mirror;

/** What the mirrors of a dish make of the light on them, zone by zone. */
public final class MirrorShares {
    private final List<String> names;
    private final List<Mirror> mirrors;
    private final double[] reflected;

    /** Of the mirrors of all zones, in their order, and the names of these. */
    MirrorShares(List<String> names, List<Mirror> mirrors) {
        this.names = List.copyOf(names);
        this.mirrors = mirrors;
        reflected = mirrors.stream().mapToDouble(Mirror::reflectedShare).toArray();
    }

    /** Of one mirror all over the dish. */
    public static MirrorShares of(Mirror mirror) {
        return new MirrorShares(List.of(""), List.of(mirror));
    }

    /** Name of a zone; empty where there are none. */
    public String name(int zone) {
        return names.get(zone);
    }

    /** Number of zones. */
    public int zones() {
        return reflected.length;
    }

    /**
     * Share of unshaded light that leaves the mirrors as a beam; 1 where there are zones: each ray then carries its own, see {@link
     * #reflected}.
     */
    public double common() {
        return reflected.length == 1 ? reflected[0] : 1;
    }

    /** Share of unshaded light that leaves the mirrors of a zone as a beam. */
    public double reflected(int zone) {
        return reflected[zone];
    }

    /** That of the brightest zone. */
    public double largestReflected() {
        double largest = 0;
        for (double share : reflected) {
            largest = Math.max(largest, share);
        }
        return largest;
    }

    /** Share of unshaded light that goes into the mirrors of a zone or is lost to dust. */
    public double lost(int zone) {
        return mirrors.get(zone).lostShare();
    }

    /** Share of unshaded light that leaves the mirrors of a zone diffusely. */
    public double scattered(int zone) {
        return mirrors.get(zone).scatteredShare();
    }
}
