package simmerpoint.command;

import java.util.List;
import simmerpoint.dish.Cut;

/** Cuts that a design may have. */
enum DesignCuts {
    FLAT_RINGS("flat-rings", List.of(false)),
    BENT_STRIPS("bent-strips", List.of(true)),
    BOTH("both", List.of(false, true));

    private final String word;
    private final List<Boolean> bent;

    DesignCuts(String word, List<Boolean> bent) {
        this.word = word;
        this.bent = bent;
    }

    /** As typed. */
    String word() {
        return word;
    }

    /** For {@link simmerpoint.study.DesignLimits}. */
    List<Boolean> bent() {
        return bent;
    }

    /** That of a scenario, or both where it is neither. */
    static DesignCuts of(Cut cut) {
        if (cut instanceof Cut.FlatRings) {
            return FLAT_RINGS;
        }
        return cut instanceof Cut.BentStrips ? BENT_STRIPS : BOTH;
    }
}
