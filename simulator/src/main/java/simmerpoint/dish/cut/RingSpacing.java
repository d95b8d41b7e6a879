package simmerpoint.dish.cut;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Where the borders between rings lie along the rib, from the hub's radius to the rim's. */
public enum RingSpacing {
    /** Rings of equal width in plan; for a parabola the depth of the cut under each chord is then equal too. */
    EQUAL_WIDTH,
    /** Rings that each rise by the same height. */
    EQUAL_DEPTH_STEP,
    /** Rings of equal length measured along the curved rib. */
    EQUAL_LENGTH;

    private final String word = name().toLowerCase(Locale.ROOT).replace('_', '-');

    /** Its word in scenario files. */
    String word() {
        return word;
    }

    static List<String> words() {
        return Arrays.stream(values()).map(RingSpacing::word).toList();
    }

    static RingSpacing of(String word) {
        return Arrays.stream(values())
                .filter(spacing -> spacing.word().equals(word))
                .findFirst()
                .orElseThrow();
    }
}
