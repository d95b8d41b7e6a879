package simmerpoint.truth;

import java.util.List;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.geometry.Vec;

/** Small flat mirrors as corner lists and meshes, dish frame, m. */
final class Tile {
    private Tile() {}

    /** Square of side w that touches z = r²/4f at its middle, which the focus sees {@code psiDegrees} off the axis, at +x. */
    static Vec[] tangent(double focal, double psiDegrees, double w) {
        double half = Math.toRadians(psiDegrees) / 2;
        double r = 2 * focal * Math.tan(half);
        Vec middle = new Vec(r, 0, r * r / (4 * focal));
        Vec outward = new Vec(Math.cos(half), 0, Math.sin(half)).times(w / 2);
        Vec across = new Vec(0, w / 2, 0);
        return new Vec[] {
            middle.minus(outward).minus(across),
            middle.plus(outward).minus(across),
            middle.plus(outward).plus(across),
            middle.minus(outward).plus(across)
        };
    }

    /** Square of side w in the plane z = 0 about the vertex. */
    static Vec[] atVertex(double w) {
        return tangent(1, 0, w);
    }

    /** Polygons as one mesh; each has corners of its own. */
    static Mesh mesh(List<Vec[]> polygons) {
        int corners = polygons.stream().mapToInt(p -> p.length).sum();
        double[] vertices = new double[3 * corners];
        int[] numbers = new int[corners];
        int[] first = new int[polygons.size() + 1];
        int at = 0;
        for (int k = 0; k < polygons.size(); k++) {
            for (Vec v : polygons.get(k)) {
                vertices[3 * at] = v.x();
                vertices[3 * at + 1] = v.y();
                vertices[3 * at + 2] = v.z();
                numbers[at] = at;
                at++;
            }
            first[k + 1] = at;
        }
        return new Mesh("test mesh", vertices, numbers, first);
    }

    static Mesh mesh(Vec[] polygon) {
        return mesh(List.<Vec[]>of(polygon));
    }

    /** The same mesh, {@code k} times as large. */
    static Mesh scaled(Mesh mesh, double k) {
        double[] vertices = mesh.vertices().clone();
        for (int i = 0; i < vertices.length; i++) {
            vertices[i] *= k;
        }
        return new Mesh(mesh.name(), vertices, mesh.corners(), mesh.firstCorner());
    }

    /** The polygon turned about the axis, from +x towards +y. */
    static Vec[] turned(Vec[] polygon, double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        Vec[] out = new Vec[polygon.length];
        for (int k = 0; k < out.length; k++) {
            Vec v = polygon[k];
            out[k] = new Vec(c * v.x() - s * v.y(), s * v.x() + c * v.y(), v.z());
        }
        return out;
    }

    /** A quadrangle cut in two across its first and third sides, {@code share} of the way along them. */
    static List<Vec[]> cut(Vec[] q, double share) {
        Vec a = q[0].plus(q[1].minus(q[0]).times(share));
        Vec b = q[3].plus(q[2].minus(q[3]).times(share));
        return List.of(new Vec[] {q[0], a, b, q[3]}, new Vec[] {a, q[1], q[2], b});
    }
}
