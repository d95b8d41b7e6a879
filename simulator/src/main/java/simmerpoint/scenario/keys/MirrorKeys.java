package simmerpoint.scenario.keys;

import java.util.List;

/** What is special about the keys of {@code mirror}: a material brings its figures. */
public final class MirrorKeys {
    /** The key that chooses the material. */
    public static final String MATERIAL = "mirror.material";

    /** The word for a mirror that is no material of the catalogue. */
    public static final String OWN_FIGURES = "own figures";

    private MirrorKeys() {}

    /** The figures that come with the material where the file does not give them. */
    public static List<Key> figures() {
        return Keys.all().stream()
                .filter(key -> Key.FROM_MATERIAL.equals(key.defaultText()))
                .toList();
    }
}
