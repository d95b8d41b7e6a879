package simmerpoint.dish.shape;

import java.util.List;

/**
 * How far a surface lies above its plan, place by place: metres along the dish's axis, as a function of the place in plan. Of the first
 * order: small against the dish.
 */
public interface Deformation {
    /** Adds what it does at the plan point (x, y) of the dish frame, m. */
    void add(double x, double y, Displacement to);

    /** What it does at the plan point (x, y), m. */
    default Displacement at(double x, double y) {
        Displacement displacement = new Displacement();
        add(x, y, displacement);
        return displacement;
    }

    /** Greatest slope that it adds between two distances from the axis, m, found by trying. */
    default double steepest(double from, double to) {
        return DeformationProbe.steepest(this, from, to);
    }

    /** All of them together. */
    static Deformation sum(List<Deformation> parts) {
        List<Deformation> copy = List.copyOf(parts);
        return copy.size() == 1
                ? copy.get(0)
                : (x, y, to) -> {
                    for (Deformation part : copy) {
                        part.add(x, y, to);
                    }
                };
    }
}
