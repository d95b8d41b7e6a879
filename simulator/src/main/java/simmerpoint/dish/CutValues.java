package simmerpoint.dish;

import java.util.OptionalDouble;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.dish.points.MeasuredShape;

/** Values of a cut's parameters, whoever has read them. */
public interface CutValues {
    /** A whole number. */
    int count(CutParameter parameter);

    /** A length, m. */
    double length(CutParameter parameter);

    /** Standard deviation that is given with a length, m; empty if none is. */
    OptionalDouble deviation(CutParameter parameter);

    /** A word of its list. */
    String word(CutParameter parameter);

    /**
     * The mesh in the file that a parameter names; null if it cannot be read, which is told to the user elsewhere.
     *
     * @param file the parameter
     * @param unit the parameter with the unit of the numbers in that file
     */
    Mesh mesh(CutParameter file, CutParameter unit);

    /**
     * The shape through the points in the file that a parameter names; null if it cannot be read, which is told to the user elsewhere.
     *
     * @param file the parameter
     */
    MeasuredShape points(CutParameter file);
}
