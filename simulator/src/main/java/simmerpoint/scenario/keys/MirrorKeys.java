package simmerpoint.scenario.keys;

import java.util.List;
import java.util.stream.Stream;

/** What is special about the keys of {@code mirror}: a material brings its figures. */
public final class MirrorKeys {
    /** The key that chooses the material. */
    public static final String MATERIAL = "mirror.material";

    /** The word for a mirror that is no material of the catalogue. */
    public static final String OWN_FIGURES = "own figures";

    private MirrorKeys() {}

    /** What must be given of a mirror that is no material, in that section. */
    public static Stream<Key> needed(String section) {
        return Stream.of("reflectance", "slope-error").map(name -> Keys.get(section + "." + name));
    }

    /** What to tell where one of them is missing. */
    public static String why(Key key) {
        return "own figures need it; write for instance " + key.name() + ": " + key.example();
    }

    /** Whether a key chooses the material of the dish or of a zone. */
    public static boolean isMaterial(String path) {
        return path.equals(MATERIAL) || path.endsWith("." + MATERIAL);
    }

    /** The figures that come with the material that a key chooses. */
    public static List<Key> figuresBeside(String material) {
        String section = Key.sectionOf(material);
        return figures().stream()
                .map(key -> Keys.get(section + "." + key.name()))
                .toList();
    }

    /** The figures that come with the material where the file does not give them. */
    public static List<Key> figures() {
        return Keys.all().stream()
                .filter(key -> Key.FROM_MATERIAL.equals(key.defaultText()))
                .toList();
    }
}
