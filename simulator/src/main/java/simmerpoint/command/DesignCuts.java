package simmerpoint.command;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import simmerpoint.dish.Cut;

/** Cuts that a design may have. */
enum DesignCuts {
    FLAT_RINGS("flat-rings", true, false),
    BENT_STRIPS("bent-strips", false, true),
    BOTH("both", true, true);

    private final String word;
    private final boolean rings;
    private final boolean strips;

    DesignCuts(String word, boolean rings, boolean strips) {
        this.word = word;
        this.rings = rings;
        this.strips = strips;
    }

    /** As typed. */
    String word() {
        return word;
    }

    /** For {@link simmerpoint.study.design.DesignLimits}. */
    List<Boolean> bent() {
        return Stream.of(false, true).filter(b -> b ? strips : rings).toList();
    }

    /** That of a scenario, or both where it is neither. */
    static DesignCuts of(Cut cut) {
        return Arrays.stream(values())
                .filter(cuts -> cuts.word.equals(cut.kind().word()))
                .findFirst()
                .orElse(BOTH);
    }
}
