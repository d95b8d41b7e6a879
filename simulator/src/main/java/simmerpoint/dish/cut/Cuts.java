package simmerpoint.dish.cut;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutParameter;

/** All kinds of cut that a scenario file can ask for. */
public final class Cuts {
    /** In the order in which files and lists name them: a new cut is one more line. */
    public static final List<CutKind> ALL = List.of(
            FlatRings.KIND,
            BentStrips.KIND,
            Tiles.SQUARE_KIND,
            Tiles.HEXAGON_KIND,
            Smooth.KIND,
            OffAxisShell.KIND,
            MeasuredMirror.KIND,
            FromFile.KIND);

    private Cuts() {}

    /** The kind of that word, as it stands in {@link CutKind#word}. */
    public static Optional<CutKind> find(String word) {
        return ALL.stream().filter(kind -> kind.word().equals(word)).findFirst();
    }

    /** All parameters of all kinds, each once. */
    public static List<CutParameter> parameters() {
        Map<String, CutParameter> byName = new LinkedHashMap<>();
        ALL.forEach(kind -> kind.parameters().forEach(p -> byName.putIfAbsent(p.name(), p)));
        return List.copyOf(byName.values());
    }
}
