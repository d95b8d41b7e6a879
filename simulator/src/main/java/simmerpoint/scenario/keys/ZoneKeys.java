package simmerpoint.scenario.keys;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.cut.Cuts;
import simmerpoint.units.Dimension;

/**
 * The keys of {@code dish.zones}: for each zone where it lies, and the keys of gap, surface and mirror that the dish has, with those of the
 * dish for their defaults.
 */
public final class ZoneKeys {
    /** The section of all zones. */
    public static final String SECTION = "dish.zones";

    /** What a zone can be called; where mirrors of two lie over one another, those of the later one lie on top. */
    public static final List<String> NAMES = List.of("middle", "ring", "rim", "upper", "lower", "patches");

    /** Cuts that are a dish of their own and no zone of one. */
    private static final Set<String> WHOLE =
            Cuts.ALL.stream().filter(kind -> !isZone(kind)).map(CutKind::word).collect(Collectors.toSet());

    private ZoneKeys() {}

    /** Whether a zone can be cut so. */
    public static boolean isZone(CutKind kind) {
        return kind.has(CutTrait.PARABOLOID) && !kind.has(CutTrait.OWN_SIZE);
    }

    /** Path of the section of a zone. */
    public static String section(String zone) {
        return SECTION + "." + zone;
    }

    /** Path of a key of a zone that is like one of the dish: gap, surface.… or mirror.…. */
    public static String path(String zone, String key) {
        return section(zone) + "." + (key.startsWith("dish.") ? key.substring("dish.".length()) : key);
    }

    /** The zone that a key or section belongs to; empty if it belongs to none. */
    public static Optional<String> zoneOf(String path) {
        if (!path.startsWith(SECTION + ".")) {
            return Optional.empty();
        }
        String rest = path.substring(SECTION.length() + 1);
        int dot = rest.indexOf('.');
        return Optional.of(dot < 0 ? rest : rest.substring(0, dot));
    }

    /** The sections of all zones and those in them: all of them may be left out. */
    static Set<String> sections() {
        Set<String> all = new LinkedHashSet<>(List.of(SECTION));
        NAMES.forEach(zone -> all.addAll(List.of(section(zone), path(zone, "surface"), path(zone, "mirror"))));
        return all;
    }

    /** The keys of all zones, made from those of the dish and its mirror. */
    static List<Key> of(List<Key> dish) {
        List<Key> all = new ArrayList<>();
        for (String zone : NAMES) {
            all.add(
                    place(
                            zone,
                            "inner-diameter",
                            Dimension.LENGTH,
                            "80 cm",
                            "0 mm to 100 m",
                            "0 cm to 200 cm",
                            Key.FROM_DISH,
                            "Where a zone begins: width of the hole in it, across its innermost corners; usually the hub of the dish."));
            all.add(place(
                    zone,
                    "outer-diameter",
                    Dimension.LENGTH,
                    "80 cm",
                    "1 cm to 100 m",
                    "10 cm to 250 cm",
                    Key.FROM_DISH,
                    "Where a zone ends, across its outer corners; usually the diameter of the dish."));
            all.add(
                    place(
                            zone,
                            "from-angle",
                            Dimension.ANGLE,
                            "0°",
                            "-360° to 360°",
                            "-180° to 180°",
                            "0°",
                            "Angle from the upper edge of the dish, to the right, at which a zone begins that does not go all round."));
            all.add(place(
                    zone,
                    "to-angle",
                    Dimension.ANGLE,
                    "90°",
                    "-360° to 360°",
                    "0° to 360°",
                    "360°",
                    "Angle from the upper edge of the dish, to the right, at which such a zone ends."));
            dish.stream().filter(ZoneKeys::isCopied).map(key -> copy(zone, key)).forEach(all::add);
        }
        return all;
    }

    private static Key place(
            String zone,
            String name,
            Dimension dimension,
            String example,
            String allowed,
            String usual,
            String byDefault,
            String sentence) {
        return new Key(
                section(zone) + "." + name,
                Key.Kind.QUANTITY,
                dimension,
                example,
                new KeyRange(dimension, allowed),
                new KeyRange(dimension, usual),
                List.of(),
                byDefault,
                Set.of(),
                sentence);
    }

    private static boolean isCopied(Key key) {
        return key.path().equals("dish.gap")
                || key.section().equals("mirror")
                || (key.section().equals("dish.surface") && (key.onlyFor().isEmpty() || isForOwnCut(key)));
    }

    private static boolean isForOwnCut(Key key) {
        return !WHOLE.containsAll(key.onlyFor());
    }

    private static Key copy(String zone, Key key) {
        boolean surface = key.section().equals("dish.surface");
        return new Key(
                path(zone, key.path()),
                key.kind(),
                key.dimension(),
                key.example(),
                key.range(),
                key.usual(),
                without(key.words().stream()),
                surface ? key.defaultText() : Key.FROM_DISH,
                Set.copyOf(without(key.onlyFor().stream())),
                "In one zone: " + Character.toLowerCase(key.sentence().charAt(0))
                        + key.sentence().substring(1));
    }

    private static List<String> without(Stream<String> words) {
        return words.filter(word -> !WHOLE.contains(word)).toList();
    }
}
