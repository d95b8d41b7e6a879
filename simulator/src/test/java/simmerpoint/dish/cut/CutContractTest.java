package simmerpoint.dish.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutParameter;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.CutValues;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.PanelSize;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.dish.mesh.Polygons;
import simmerpoint.dish.points.MeasuredPoints;
import simmerpoint.dish.points.MeasuredShape;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/** What every cut keeps, the next one too: whatever is in {@link Cuts#ALL} is tried with the examples of its keys. */
class CutContractTest {
    private static final double[][] SQUARE = {{-0.2, -0.2}, {0.2, -0.2}, {0.2, 0.2}, {-0.2, 0.2}};

    /** Every parameter as its example says: 24 sectors, 6 rings, tiles of 5 cm. */
    private static final CutValues EXAMPLES = new CutValues() {
        @Override
        public int count(CutParameter parameter) {
            return Integer.parseInt(parameter.example());
        }

        @Override
        public double length(CutParameter parameter) {
            return Double.parseDouble(parameter.example().replace(" mm", "")) / 1000;
        }

        @Override
        public OptionalDouble deviation(CutParameter parameter) {
            return OptionalDouble.empty();
        }

        @Override
        public String word(CutParameter parameter) {
            return parameter.words().get(0);
        }

        @Override
        public MeasuredShape points(CutParameter file) {
            double[][] grid = new double[3][21 * 21];
            for (int i = 0; i < grid[0].length; i++) {
                grid[0][i] = (i % 21 - 10) * 0.05;
                grid[1][i] = (i / 21 - 10) * 0.05;
                grid[2][i] = (grid[0][i] * grid[0][i] + grid[1][i] * grid[1][i]) / 3;
            }
            return new MeasuredShape("grid", new MeasuredPoints(grid[0], grid[1], grid[2]));
        }

        @Override
        public Mesh mesh(CutParameter file, CutParameter unit) {
            return Polygons.inPlane(SQUARE, 0, 0);
        }
    };

    static Stream<DishPlan> plans() {
        return Cuts.ALL.stream().map(kind -> plan(kind.maker().apply(EXAMPLES)));
    }

    private static DishPlan plan(Cut cut) {
        return cut.ownSize()
                .map(size -> new DishPlan(size.diameterMetres(), size.focalLengthMetres(), 0, 0, cut))
                .orElseGet(() -> new DishPlan(1.2, 0.8, 0.1, cut.has(CutTrait.SEAMS) ? 0.002 : 0, cut));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void outlinesAreThoseOfTheSurface(DishPlan plan) {
        MirrorSurface surface = plan.surface(Direction.Z);
        List<PanelOutline> outlines = plan.outlines();
        assertEquals(surface.panels(), outlines.size());
        double area = 0;
        for (int k = 0; k < outlines.size(); k++) {
            assertEquals(k, outlines.get(k).panel());
            area += area(outlines.get(k).edge()) - area(outlines.get(k).hole());
            outlines.get(k).edge().forEach(v -> assertTrue(Math.hypot(v.x(), v.y()) < surface.radius() + 1e-9));
        }
        assertEquals(surface.apertureArea(), area, 1e-3);
    }

    /** Signed area in plan by the shoelace rule. */
    private static double area(List<Vec> edge) {
        return Polygons.area(edge.stream().map(v -> new double[] {v.x(), v.y()}).toArray(double[][]::new));
    }

    /** A place that was sampled is found again with the panel it was sampled on, or none; a rim and a slot leave none beyond them. */
    @ParameterizedTest
    @MethodSource("plans")
    void panelsAreFoundByPlace(DishPlan plan) {
        if (plan.cut().has(CutTrait.PARABOLOID) && plan.cut().ownSize().isEmpty()) {
            found(plan.surface(Direction.Z));
            Rim rim = new Rim(4, 0.9, 0.2, 0.1, Rim.Half.WHOLE, 0.05, 0.2, 2);
            found(plan.withCut(Clipped.within(plan.cut(), rim, plan.radiusMetres()))
                    .surface(Direction.Z));
        }
    }

    private static void found(MirrorSurface surface) {
        int n = 128;
        double[] u = new double[n * n];
        double[] v = new double[n * n];
        for (int i = 0; i < u.length; i++) {
            u[i] = (Math.floorDiv(i, n) + 0.377) / n;
            v[i] = (i % n + 0.613) / n;
        }
        MirrorPoints places = new MirrorPoints(u.length);
        surface.fill(u, v, u.length, places);
        for (int i = 0; i < u.length; i++) {
            int expected = Math.max(MirrorPoints.GAP, places.panel[i]);
            assertEquals(expected, surface.panelAt(places.x[i], places.y[i]), "at " + places.x[i] + ", " + places.y[i]);
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void traitsMeanWhatTheySay(DishPlan plan) {
        Cut cut = plan.cut();
        CutKind kind = cut.kind();
        assertEquals(kind, Cuts.find(kind.word()).orElseThrow());
        boolean ownSize = cut.has(CutTrait.OWN_SIZE);
        assertEquals(ownSize, cut.ownSize().isPresent());
        assertEquals(cut.has(CutTrait.PARABOLOID), cut.focalLengthMetres(plan) == plan.focalLengthMetres());
        assertEquals(
                cut.has(CutTrait.PARABOLOID),
                Math.abs(cut.reachMetres(plan) - plan.aperture().reach()) < 1e-12);
        assertEquals(cut.has(CutTrait.RIBS), cut.ribs(plan).isPresent());
        assertEquals(cut.has(CutTrait.SEAMS), cut.gapLimit(1.2, 0.1) < 1.2);
        assertEquals(
                cut.has(CutTrait.SEAMS),
                !kind.parameters().isEmpty() && cut.largestPanel(plan).isPresent());
        boolean named = kind.parameters().stream().anyMatch(p -> p.type() == CutParameter.Type.FILE);
        assertEquals(named, cut.fileName().isPresent());
        boolean bends = cut.has(CutTrait.PARABOLOID) && cut.has(CutTrait.PANELS);
        assertEquals(bends, !Perfected.curved(plan).equals(plan));
        boolean hasHub = cut.has(CutTrait.PARABOLOID) && !ownSize;
        assertEquals(hasHub, !Perfected.filled(plan).equals(plan));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void thePartsOfADescriptionAreWritten(DishPlan plan) {
        String text = plan.cut().description(plan, "many", metres -> "long");
        assertFalse(text.isBlank());
        assertFalse(text.endsWith("."), text);
        plan.largestPanel().map(PanelSize::narrowestMetres).ifPresent(size -> assertTrue(size > 0 && size < 1));
        assertTrue(plan.cut().fits(plan));
    }
}
