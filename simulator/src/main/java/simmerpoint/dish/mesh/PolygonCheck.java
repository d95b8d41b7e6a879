package simmerpoint.dish.mesh;

import java.nio.file.Path;
import java.util.Locale;
import simmerpoint.input.InputFileException;

/** Checks the polygons of a mesh just read and turns each to face +z. */
final class PolygonCheck {
    /**
     * How far a corner may lie off its polygon's plane, as a share of the distance from the mean of the corners to the
     * furthest: 1/10000. That tilts a panel by about 0.1 mrad, a fortieth of the sun's half-angle.
     */
    static final double PLANE = 1e-4;

    /** Smaller deviations are never an error, m: that is the rounding of six decimals of a metre. */
    static final double PLANE_METRES = 2e-6;

    /** Area below this share of the squared distance to the furthest corner is no area. */
    static final double NO_AREA = 1e-6;

    /** A normal whose z is within this of 0 belongs to an upright polygon. */
    static final double UPRIGHT = 1e-6;

    private final Path file;
    private final Mesh mesh;
    private final MeshBuilder builder;

    /** Takes a mesh as read; its corners are still in the file's order. */
    PolygonCheck(Path file, Mesh mesh, MeshBuilder builder) {
        this.file = file;
        this.mesh = mesh;
        this.builder = builder;
    }

    /** Checks polygon {@code k} and turns it, changing {@code mesh.corners()}. */
    void checkAndTurn(int k) throws InputFileException {
        checkNumbers(k);
        PolygonOutline outline = new PolygonOutline(mesh, k);
        checkPoints(k, outline);
        double radius = outline.radius();
        if (!(outline.area() > NO_AREA * radius * radius)) {
            throw wrong(k, "found a polygon without area; the corners of a polygon do not lie on one line.");
        }
        checkPlane(k, outline, Math.max(PLANE * radius, PLANE_METRES));
        if (!(Math.abs(outline.normalZ()) > UPRIGHT)) {
            throw wrong(
                    k,
                    "found a polygon that stands upright, along the dish's axis, and reflects nothing; "
                            + "polygons that face +z are allowed.");
        }
        if (!outline.isConvex() && outline.meetsItself()) {
            throw wrong(k, "found a polygon whose outline meets or crosses itself; dents are allowed, crossings not.");
        }
        if (outline.normalZ() < 0) {
            turn(mesh.firstCorner()[k] + 1, mesh.firstCorner()[k + 1] - 1);
        }
    }

    private void checkNumbers(int k) throws InputFileException {
        int vertices = builder.vertices();
        for (int i = mesh.firstCorner()[k]; i < mesh.firstCorner()[k + 1]; i++) {
            if (mesh.corners()[i] >= vertices) {
                throw wrong(
                        k,
                        "found corner " + (mesh.corners()[i] + 1) + " in a file of " + vertices + " vertices; 1 to "
                                + vertices + " are allowed.");
            }
        }
    }

    private void checkPoints(int k, PolygonOutline outline) throws InputFileException {
        for (int i = 0; i < outline.size(); i++) {
            for (int j = i + 1; j < outline.size(); j++) {
                if (outline.samePoint(i, j)) {
                    throw wrong(
                            k,
                            "found corners " + (i + 1) + " and " + (j + 1)
                                    + " of a polygon at one point; every corner has its own.");
                }
            }
        }
    }

    private void checkPlane(int k, PolygonOutline outline, double allowed) throws InputFileException {
        int worst = 0;
        for (int i = 1; i < outline.size(); i++) {
            worst = outline.offPlane(i) > outline.offPlane(worst) ? i : worst;
        }
        double off = outline.offPlane(worst);
        if (!(off <= allowed)) {
            throw wrong(
                    k,
                    String.format(
                            Locale.ROOT,
                            "found corner %d of a polygon %.3g mm off its plane; "
                                    + "%.3g mm (1/10000 of the polygon's size) is allowed.",
                            worst + 1,
                            1e3 * off,
                            1e3 * allowed));
        }
    }

    private void turn(int from, int to) {
        int[] corners = mesh.corners();
        for (int i = from, j = to; i < j; i++, j--) {
            int keep = corners[i];
            corners[i] = corners[j];
            corners[j] = keep;
        }
    }

    private InputFileException wrong(int k, String sentence) {
        return new InputFileException(file, builder.line(k), sentence);
    }
}
