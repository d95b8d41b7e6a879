package simmerpoint.workshop;

import java.util.List;
import simmerpoint.geometry.Vec;

/** Adds up masses and the heights of their middles above the dish's vertex. Each part is as thick all over. */
final class MassCentre {
    private double mass;
    private double moment;

    void add(double kilograms, double height) {
        mass += kilograms;
        moment += kilograms * height;
    }

    /** A panel of that mass. */
    void addPanel(double kilograms, PanelPlace panel) {
        add(kilograms, height(panel.edge()));
    }

    /** Height of everything's middle, m; 0 for nothing. */
    double height() {
        return mass > 0 ? moment / mass : 0;
    }

    /** Of the surface between the two halves of an edge, cut into pairs of triangles from one end to the other. */
    private static double height(List<Vec> edge) {
        double sum = 0;
        double area = 0;
        int last = edge.size() - 1;
        for (int k = 0; k < last - k; k++) {
            for (List<Vec> triangle : List.of(
                    List.of(edge.get(k), edge.get(k + 1), edge.get(last - k)),
                    List.of(edge.get(k + 1), edge.get(Math.max(k + 1, last - k - 1)), edge.get(last - k)))) {
                double size = Vec.area(triangle).length();
                area += size;
                sum += size * Vec.mean(triangle).z();
            }
        }
        return area > 0 ? sum / area : Vec.mean(edge).z();
    }
}
