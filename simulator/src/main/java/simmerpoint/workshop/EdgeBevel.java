package simmerpoint.workshop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import simmerpoint.geometry.Vec;

/**
 * By how much the edges of a flat panel are bevelled so that it meets its neighbours without a slit: half the angle between the two
 * panels.
 *
 * @param piece name of the piece
 * @param sides towards the panels beside it, rad; empty if there are none
 * @param inwards towards the panel nearer the middle, rad; empty if there is none
 * @param outwards towards the one nearer the rim, rad; empty if there is none
 */
public record EdgeBevel(String piece, OptionalDouble sides, OptionalDouble inwards, OptionalDouble outwards) {
    private static final double NEAR = 1e-4;

    /** Of one panel of each piece; {@code gap} is the slit between panels, m. */
    static List<EdgeBevel> of(List<PanelPlace> panels, double gap) {
        Map<String, PanelPlace> firsts = new LinkedHashMap<>();
        panels.forEach(panel -> firsts.putIfAbsent(panel.piece(), panel));
        List<EdgeBevel> all = new ArrayList<>();
        firsts.forEach((piece, first) -> all.add(of(first, panels, 2 * gap + NEAR)));
        return all;
    }

    private static EdgeBevel of(PanelPlace panel, List<PanelPlace> others, double near) {
        OptionalDouble sides = OptionalDouble.empty();
        OptionalDouble inwards = OptionalDouble.empty();
        OptionalDouble outwards = OptionalDouble.empty();
        for (PanelPlace other : others) {
            if (other.number() == panel.number() || sharedCorners(panel, other, near) < 2) {
                continue;
            }
            OptionalDouble half = OptionalDouble.of(angle(panel, other) / 2);
            if (other.piece().equals(panel.piece())) {
                sides = half;
            } else if (radius(other) < radius(panel)) {
                inwards = half;
            } else {
                outwards = half;
            }
        }
        return new EdgeBevel(panel.piece(), sides, inwards, outwards);
    }

    private static long sharedCorners(PanelPlace a, PanelPlace b, double near) {
        return a.edge().stream()
                .filter(p -> b.edge().stream().anyMatch(q -> p.minus(q).length() < near))
                .count();
    }

    private static double angle(PanelPlace a, PanelPlace b) {
        Vec u = Vec.area(a.edge());
        Vec v = Vec.area(b.edge());
        return Math.acos(Math.min(1, u.dot(v) / (u.length() * v.length())));
    }

    private static double radius(PanelPlace panel) {
        return Math.hypot(panel.middle().x(), panel.middle().y());
    }
}
