package simmerpoint.scenario.checks;

import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutParameter;
import simmerpoint.dish.CutRefusal;
import simmerpoint.dish.CutValues;
import simmerpoint.dish.cut.Cuts;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.keys.CutKeys;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.units.Dimension;
import simmerpoint.units.QuantityException;
import simmerpoint.units.QuantityParser;

/** The values of {@code dish.surface}, or the surface of a zone, and the mesh in the file that it may name. */
record SurfaceValues(ScenarioValues values, Problems problems, String section) implements CutValues {
    /** Of the dish. */
    SurfaceValues(ScenarioValues values, Problems problems) {
        this(values, problems, Key.sectionOf(CutKeys.CUT));
    }

    private String path(CutParameter parameter) {
        return section + "." + parameter.name();
    }

    /** The kind of cut that a scenario asks for. */
    static CutKind kind(ScenarioValues values) {
        return Cuts.find(values.text(CutKeys.CUT)).orElseThrow();
    }

    /** How a scenario's dish is cut; where its values do not go together, {@code problems} are told. */
    static Optional<Cut> cut(ScenarioValues values, Problems problems) {
        try {
            return Optional.of(kind(values).maker().apply(new SurfaceValues(values, problems)));
        } catch (CutRefusal e) {
            String path = "dish.surface." + e.parameter();
            problems.add(values.line(path), path, e.getMessage());
            return Optional.empty();
        }
    }

    @Override
    public int count(CutParameter parameter) {
        return values.count(path(parameter));
    }

    @Override
    public double length(CutParameter parameter) {
        return values.number(path(parameter));
    }

    @Override
    public OptionalDouble deviation(CutParameter parameter) {
        return values.deviation(CutKeys.path(parameter));
    }

    @Override
    public String word(CutParameter parameter) {
        return values.text(path(parameter));
    }

    @Override
    public Mesh mesh(CutParameter file, CutParameter unit) {
        String key = path(file);
        return NamedFile.read(values, key, problems, obj -> MeshCache.read(obj, metres(unit)))
                .orElse(null);
    }

    private double metres(CutParameter unit) {
        try {
            return QuantityParser.parse("1 " + word(unit), Dimension.LENGTH);
        } catch (QuantityException e) {
            throw new IllegalStateException(e);
        }
    }
}
