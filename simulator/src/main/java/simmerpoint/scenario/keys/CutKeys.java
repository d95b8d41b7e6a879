package simmerpoint.scenario.keys;

import static simmerpoint.dish.CutTrait.OWN_SIZE;
import static simmerpoint.dish.CutTrait.PANELS;
import static simmerpoint.dish.CutTrait.PARABOLOID;
import static simmerpoint.dish.CutTrait.RIBS;
import static simmerpoint.dish.CutTrait.SEAMS;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutParameter;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.cut.Cuts;
import simmerpoint.dish.shape.ShapeError;

/** Keys outside {@code dish.surface} that apply only to cuts with a certain trait. */
public final class CutKeys {
    /** The key that chooses the cut. */
    public static final String CUT = "dish.surface.cut";

    /** Start of the keys of {@link ShapeError}. */
    public static final String SHAPE = "shape.";

    /** Which trait a cut must have, or must not have, for a key to apply to it, and what to tell whoever gives the key all the same. */
    private record Need(String path, CutTrait trait, boolean wanted, Function<CutKind, String> refusal) {
        Need(String path, CutTrait trait, Function<CutKind, String> refusal) {
            this(path, trait, true, refusal);
        }

        boolean isMetBy(CutKind cut) {
            return cut.has(trait) == wanted;
        }
    }

    private static final List<Need> NEEDS = Stream.concat(
                    fixed(), Arrays.stream(ShapeError.values()).flatMap(CutKeys::ofShape))
            .toList();

    private CutKeys() {}

    private static Stream<Need> fixed() {
        return Stream.of(
                ofPlannedSize("dish.diameter"),
                ofPlannedSize("dish.focal-length"),
                ofPlannedSize("dish.hub"),
                new Need("dish.hub", PARABOLOID, cut -> "the mesh itself says where there is no mirror; leave hub out"),
                new Need(
                        "dish.gap",
                        SEAMS,
                        cut -> cut.has(PANELS)
                                ? "the gaps of a mesh are drawn in its file; leave gap out"
                                : "a smooth dish has no panels with gaps between them; leave gap out"),
                new Need(
                        "mirror.panel-tilt",
                        PANELS,
                        cut -> "a smooth dish has no panels that could be glued crooked; leave panel-tilt out"),
                ofRibs("workmanship.rib-cut"),
                ofRibs("workmanship.rib-set"),
                ofRibs("workmanship.sag"),
                ofRibs(SHAPE + "film-tension"),
                ofRibs(SHAPE + "film-pressure"),
                new Need(
                        "workmanship.panel-edge",
                        SEAMS,
                        cut -> "a dish cut as " + cut.word() + " has no panels that somebody cuts; leave it out"));
    }

    private static Stream<Need> ofShape(ShapeError error) {
        String path = SHAPE + error.key();
        return error.isBetweenRibs()
                ? Stream.of(ofRibs(path))
                : Stream.of(
                        new Need(path, PARABOLOID, cut -> "the mesh itself says what shape the dish has; leave it out"),
                        new Need(
                                path,
                                OWN_SIZE,
                                false,
                                cut -> "a dish cut as " + cut.word()
                                        + " has its shape by its own measures; leave it out"));
    }

    private static Need ofPlannedSize(String path) {
        String name = path.substring(path.indexOf('.') + 1);
        return new Need(
                path,
                OWN_SIZE,
                false,
                cut -> "a dish cut as " + cut.word() + " knows it by its own measures; leave " + name + " out");
    }

    private static Need ofRibs(String path) {
        return new Need(path, RIBS, cut -> "a dish cut as " + cut.word() + " has no ribs; leave it out");
    }

    private static List<Need> missing(CutKind cut) {
        return NEEDS.stream().filter(need -> !need.isMetBy(cut)).toList();
    }

    /** Full path of the key of a cut's parameter. */
    public static String path(CutParameter parameter) {
        return "dish.surface." + parameter.name();
    }

    /** Keys that must not be given beside a cut; none if there is no such cut. */
    public static List<String> inapplicable(String cutWord) {
        return Cuts.find(cutWord)
                .map(cut -> missing(cut).stream().map(Need::path).toList())
                .orElse(List.of());
    }

    /** Whether a key says how large a dish is, where its cut does not. */
    public static boolean isOfPlannedSize(String path) {
        return NEEDS.stream()
                .anyMatch(need -> need.path.equals(path) && need.trait == OWN_SIZE && path.startsWith("dish."));
    }

    /** Whether a key says something of ribs. */
    public static boolean isOfRibs(String path) {
        return NEEDS.stream().anyMatch(need -> need.path.equals(path) && need.trait == RIBS);
    }

    /** What to tell whoever gives a key that does not apply to the cut, by its full path. */
    public static Map<String, String> refusals(CutKind cut) {
        Map<String, String> refusals = new LinkedHashMap<>();
        missing(cut).forEach(need -> refusals.put(need.path, need.refusal.apply(cut)));
        return refusals;
    }
}
