package simmerpoint.dish.cut;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import simmerpoint.dish.Aperture;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutParameter;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.dish.mesh.MeshFocus;
import simmerpoint.geometry.Direction;

/**
 * Flat polygons of a mesh file, in the dish frame.
 *
 * @param mesh the polygons, m
 */
public record FromFile(Mesh mesh) implements Cut {
    private static final CutParameter FILE = CutParameter.file(
            "file", "dish.obj", "Wavefront OBJ mesh of the panels, axis along z, middle of the dish at 0.");

    private static final CutParameter UNIT = CutParameter.word(
            "unit", null, List.of("mm", "cm", "m", "in", "ft"), "Unit of the numbers in the mesh file.");

    /** What is known of it beforehand. */
    public static final CutKind KIND = new CutKind(
            "from-file",
            "flat panels drawn in another program",
            List.of(FILE, UNIT),
            Set.of(CutTrait.PANELS),
            values -> new FromFile(values.mesh(FILE, UNIT)));

    @Override
    public CutKind kind() {
        return KIND;
    }

    @Override
    public MirrorSurface surface(DishPlan plan, Direction sunInDish) {
        return new MeshSurface(mesh, sunInDish);
    }

    @Override
    public List<PanelOutline> outlines(DishPlan plan) {
        return PanelOutline.numbered(IntStream.range(0, mesh.polygons()).mapToObj(mesh::polygonFromAbove));
    }

    @Override
    public String description(DishPlan plan, String panels, DoubleFunction<String> length) {
        return panels + (mesh.polygons() == 1 ? " flat panel" : " flat panels") + " from " + mesh.name();
    }

    @Override
    public double reachMetres(DishPlan plan) {
        return mesh.reach();
    }

    /** A circle about the axis, unless the mesh clearly lies beside it. */
    @Override
    public Aperture aperture(DishPlan plan) {
        double[] circle = mesh.shape().hull().circle();
        Aperture own = new Aperture(circle[0], circle[1], circle[2]);
        return own.isBesideAxis() ? own : Aperture.about(plan.radiusMetres());
    }

    @Override
    public double focalLengthMetres(DishPlan plan) {
        return MeshFocus.focalLength(mesh);
    }

    @Override
    public Optional<String> fileName() {
        return Optional.of(mesh.name());
    }
}
