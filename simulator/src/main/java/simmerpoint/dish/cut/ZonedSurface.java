package simmerpoint.dish.cut;

import java.util.List;
import java.util.stream.IntStream;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelZones;
import simmerpoint.dish.Zone;

/**
 * The surface of {@link Zoned}. Each zone has a range of first numbers as long as its share of the area that is sampled, so that rays
 * lie as densely on all zones. A place that two zones sample counts once: on the mirror that lies on top there, or as a gap of the first zone.
 */
final class ZonedSurface implements MirrorSurface {
    private final List<ZoneSampler> zones;
    private final PanelZones panels;
    /** Where the range of each zone ends. */
    private final double[] end;

    private final double sampledArea;
    private final double outlineArea;

    ZonedSurface(List<Zone> planned) {
        zones = planned.stream().map(zone -> new ZoneSampler(zone, planned)).toList();
        int n = zones.size();
        int[] first = new int[n];
        for (int z = 1; z < n; z++) {
            first[z] = first[z - 1] + zones.get(z - 1).surface.panels();
        }
        panels = new PanelZones(first);
        end = new double[n];
        double sum = 0;
        for (int z = 0; z < n; z++) {
            sum += zones.get(z).sampledArea();
            end[z] = sum;
        }
        sampledArea = sum;
        for (int z = 0; z < n; z++) {
            end[z] = z == n - 1 ? 1 : end[z] / sum;
        }
        outlineArea =
                PlanRegion.unionArea(zones.stream().map(zone -> zone.region).toList());
    }

    /** Area of the mirrors of a zone that lies under those of others, m². */
    double hiddenArea(int zone) {
        List<ZoneSampler> above = zones.subList(zone + 1, zones.size()).stream()
                .filter(zones.get(zone)::mayMeet)
                .toList();
        return above.isEmpty() ? 0 : HiddenArea.of(zones.get(zone), above);
    }

    /** Area of the mirrors of a zone, m², hidden ones as well. */
    double mirrorArea(int zone) {
        return zones.get(zone).surface.apertureArea();
    }

    @Override
    public double outlineArea() {
        return outlineArea;
    }

    @Override
    public double sampledArea() {
        return sampledArea;
    }

    @Override
    public double apertureArea() {
        return IntStream.range(0, zones.size())
                .mapToDouble(z -> zones.get(z).surface.apertureArea() - hiddenArea(z))
                .sum();
    }

    @Override
    public int panels() {
        int last = zones.size() - 1;
        return panels.firstPanel(last) + zones.get(last).surface.panels();
    }

    @Override
    public PanelZones zones() {
        return panels;
    }

    @Override
    public double steepestSlope() {
        return zones.stream()
                .mapToDouble(zone -> zone.surface.steepestSlope())
                .max()
                .orElseThrow();
    }

    @Override
    public double radius() {
        return zones.stream().mapToDouble(zone -> zone.surface.radius()).max().orElseThrow();
    }

    @Override
    public double heightAt(double x, double y) {
        for (int z = zones.size() - 1; z > 0; z--) {
            if (zones.get(z).samples(x, y)) {
                return zones.get(z).surface.heightAt(x, y);
            }
        }
        return zones.get(0).surface.heightAt(x, y);
    }

    @Override
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        double least = 1;
        double most = 0;
        for (int i = 0; i < n; i++) {
            least = Math.min(least, u[i]);
            most = Math.max(most, u[i]);
        }
        int first = zoneAt(least);
        int last = zoneAt(most);
        out.zone = first == last ? first : -1;
        if (first == last) {
            fillZone(first, u.clone(), v.clone(), n, out);
            return;
        }
        int[] zone = new int[n];
        for (int i = 0; i < n; i++) {
            zone[i] = zoneAt(u[i]);
        }
        for (int z = first; z <= last; z++) {
            fillSome(z, zone, u, v, n, out);
        }
    }

    private int zoneAt(double u) {
        int zone = 0;
        while (zone < end.length - 1 && u >= end[zone]) {
            zone++;
        }
        return zone;
    }

    /** Fills the places of one zone among those of others. */
    private void fillSome(int z, int[] zone, double[] u, double[] v, int n, MirrorPoints out) {
        int[] which = IntStream.range(0, n).filter(i -> zone[i] == z).toArray();
        if (which.length == 0) {
            return;
        }
        double[] someU = new double[which.length];
        double[] someV = new double[which.length];
        for (int k = 0; k < which.length; k++) {
            someU[k] = u[which[k]];
            someV[k] = v[which[k]];
        }
        MirrorPoints some = new MirrorPoints(which.length);
        fillZone(z, someU, someV, which.length, some);
        for (int k = 0; k < which.length; k++) {
            some.copy(k, out, which[k]);
        }
    }

    private void fillZone(int z, double[] u, double[] v, int n, MirrorPoints out) {
        ZoneSampler zone = zones.get(z);
        double from = z == 0 ? 0 : end[z - 1];
        double share = end[z] - from;
        for (int i = 0; i < n; i++) {
            u[i] = Math.max(0, Math.min(Math.nextDown(1.0), (u[i] - from) / share));
        }
        zone.fill(u, v, n, out);
        double scale = sampledArea / zone.surface.sampledArea();
        int firstPanel = panels.firstPanel(z);
        // Numbers below 0 stand for ~k, so they go down by as much: without a branch, since a gap comes unforeseen.
        for (int i = 0; i < n; i++) {
            int sign = out.panel[i] >> 31;
            out.panel[i] += (firstPanel ^ sign) - sign;
        }
        for (int i = 0; i < n; i++) {
            out.area[i] *= scale;
        }
        for (int other = 0; other < zones.size(); other++) {
            if (other != z && zones.get(other).mayMeet(zone)) {
                leaveOutCounted(z, other, v, n, out);
            }
        }
    }

    /** Takes the area off places of a zone that count on another. */
    private void leaveOutCounted(int z, int other, double[] v, int n, MirrorPoints out) {
        ZoneSampler sampler = zones.get(other);
        ZoneSampler own = zones.get(z);
        boolean alike = sampler.isLike(own);
        for (int i = 0; i < n; i++) {
            double x = out.x[i];
            double y = out.y[i];
            if (alike ? sampler.mayHoldLike(own, v[i]) : sampler.mayHold(x * x + y * y)) {
                boolean gap = out.panel[i] < 0;
                boolean covered = (gap || other > z) && sampler.covers(x, y);
                if (covered || (gap && other < z && sampler.samples(x, y))) {
                    out.area[i] = 0;
                }
            }
        }
    }
}
