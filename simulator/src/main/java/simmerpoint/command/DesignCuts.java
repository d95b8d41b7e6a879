package simmerpoint.command;

import java.util.List;
import java.util.stream.Stream;
import simmerpoint.dish.CutKind;
import simmerpoint.study.design.PanelLayout;

/**
 * Cuts that a design may have.
 *
 * @param word as typed
 * @param kinds one, or all that can be designed
 */
record DesignCuts(String word, List<CutKind> kinds) {
    /** Each kind alone, and last all of them. */
    static final List<DesignCuts> CHOICES = Stream.concat(
                    PanelLayout.CUTS.stream().map(kind -> new DesignCuts(kind.word(), List.of(kind))),
                    Stream.of(new DesignCuts("both", PanelLayout.CUTS)))
            .toList();
}
