package simmerpoint.dish.mesh;

import java.io.IOException;
import java.nio.file.Path;
import simmerpoint.input.InputFileException;

/**
 * Reads the flat panels of a dish from a Wavefront OBJ file, in the dish frame: vertices {@code v x y z} and polygons
 * {@code f}, whose corners are written v, v/vt, v//vn or v/vt/vn, counted from 1 or backwards from −1. Keywords of
 * appearance and grouping (vn vt o g s usemtl mtllib) are ignored, others are refused.
 *
 * <p><b>Which side is the mirror.</b> The winding of polygons varies between programs and is ignored: the mirror is the
 * side that faces +z. In the resulting mesh every polygon runs counter-clockwise seen from +z, its normal has z above 0
 * and its first corner is the one the file names first. A polygon that stands upright (normal's z within 1e-6 of 0)
 * reflects nothing along the axis and is refused.
 *
 * <p>Polygons may be concave. Every corner lies in the polygon's plane, which goes through the mean of the
 * corners, to within 1/10000 of the distance from there to the furthest (or 2 µm, if that is more: files round). They
 * have area and an outline that does not meet itself, and none lies on another. Memory depends on the mesh, not on the file's other lines.
 */
public final class ObjReader {
    /** Most polygons in a file. */
    public static final int MOST_POLYGONS = 1_000_000;

    /** Most vertices in a file: four for each polygon. */
    public static final int MOST_VERTICES = 4 * MOST_POLYGONS;

    /** Most corners of one polygon. */
    public static final int MOST_CORNERS = 256;

    /** Furthest vertex from the origin, m. */
    public static final double FURTHEST_METRES = 1000;

    private static final String CORNER = "a corner is a vertex number, as in 7, 7/2, 7//3, 7/2/3 or -1";

    private final Path file;
    private final double metresPerUnit;
    private final MeshBuilder builder = new MeshBuilder();
    private final ObjWords words = new ObjWords();
    private int line;

    private ObjReader(Path file, double metresPerUnit) {
        this.file = file;
        this.metresPerUnit = metresPerUnit;
    }

    /**
     * Reads one file.
     *
     * @param file a Wavefront OBJ file of at most 200 MB
     * @param metresPerUnit length of the file's unit, m, above 0; 0.001 for a file in mm
     * @return the polygons, m, dish frame, turned to face +z; vertices that no polygon uses are kept. Called after the
     *     file's name
     * @throws InputFileException with one sentence for the file's author if it is no such file or holds no such polygons
     */
    public static Mesh read(Path file, double metresPerUnit) throws InputFileException {
        if (!(metresPerUnit > 0 && metresPerUnit < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("unit of " + metresPerUnit + " m is not above 0 and finite");
        }
        return new ObjReader(file, metresPerUnit).read();
    }

    private Mesh read() throws InputFileException {
        try (ObjLines lines = ObjLines.open(file)) {
            for (String text = lines.next(); text != null; text = lines.next()) {
                line = lines.lineNumber();
                words.split(text);
                take();
            }
        } catch (IOException e) {
            throw new InputFileException(file, e);
        }
        if (builder.polygons() == 0) {
            throw new InputFileException(file, "found no polygons; one or more lines that start with f are allowed.");
        }
        Mesh mesh = builder.mesh(String.valueOf(file.getFileName()));
        PolygonCheck check = new PolygonCheck(file, mesh, builder);
        for (int k = 0; k < mesh.polygons(); k++) {
            check.checkAndTurn(k);
        }
        new OverlapCheck(file, mesh, builder).check();
        return mesh;
    }

    private void take() throws InputFileException {
        switch (words.get(0)) {
            case "v" -> vertex();
            case "f" -> polygon();
            case "vn", "vt", "o", "g", "s", "usemtl", "mtllib" -> {
                // looks and groups
            }
            default -> throw wrong(words.get(0), "a line starts with v, f, vn, vt, o, g, s, usemtl, mtllib or #");
        }
    }

    /** Three coordinates; a weight or a colour after them, as some programs write, is ignored. */
    private void vertex() throws InputFileException {
        int numbers = words.count() - 1;
        if (numbers != 3 && numbers != 4 && numbers != 6 && numbers != 7) {
            throw wrong(numbers + " numbers after v", "a vertex has three: x, y and z");
        }
        if (builder.vertices() == MOST_VERTICES) {
            throw wrong("one more vertex than 4,000,000", "at most 4,000,000 are allowed");
        }
        double x = coordinate(1);
        double y = coordinate(2);
        double z = coordinate(3);
        if (!(Math.sqrt(x * x + y * y + z * z) <= FURTHEST_METRES)) {
            throw wrong(
                    words.get(1) + " " + words.get(2) + " " + words.get(3),
                    "a vertex lies within 1 km of the origin; is the unit right");
        }
        builder.vertex(x, y, z);
    }

    private double coordinate(int word) throws InputFileException {
        double value = words.number(word);
        if (Double.isNaN(value)) {
            throw wrong(words.get(word), "a coordinate is a plain number with a decimal point, such as -12.5");
        }
        return value * metresPerUnit;
    }

    private void polygon() throws InputFileException {
        int corners = words.count() - 1;
        if (corners < 3 || corners > MOST_CORNERS) {
            throw wrong("a polygon of " + corners + " corners", "3 to " + MOST_CORNERS + " corners are allowed");
        }
        if (builder.polygons() == MOST_POLYGONS) {
            throw wrong("one more polygon than 1,000,000", "at most 1,000,000 are allowed");
        }
        for (int i = 1; i <= corners; i++) {
            builder.corner(vertexOf(i));
        }
        builder.endPolygon(line);
    }

    /** Vertex number from 0. Those counted forwards may come later in the file and are checked at its end. */
    private int vertexOf(int word) throws InputFileException {
        long number = words.corner(word);
        if (number == ObjWords.NONE) {
            throw wrong(words.get(word), CORNER);
        }
        if (number == 0 || number < -builder.vertices() || number > MOST_VERTICES) {
            throw wrong(
                    "corner " + words.get(word) + " after " + builder.vertices() + " vertices",
                    "vertices count from 1, or from -1 back to the first");
        }
        return (int) (number < 0 ? builder.vertices() + number : number - 1);
    }

    private InputFileException wrong(String found, String allowed) {
        return new InputFileException(file, line, found, allowed);
    }
}
